package dev.thinair.ducts;

import dev.thinair.ducts.kernel.DuctLoss;
import dev.thinair.ducts.kernel.Friction;
import dev.thinair.ducts.kernel.FrictionChart;
import dev.thinair.ducts.kernel.StandardAir;
import dev.thinair.ducts.kernel.VelocityPressure;
import dev.thinair.units.Density;
import dev.thinair.units.DynamicViscosity;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import dev.thinair.working.Working;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/** Shown work for friction, fittings, equivalent diameters, the operating point and derating. */
public final class DuctWorkings {

    private static final String DARCY =
            "Darcy-Weisbach; ASHRAE Handbook - Fundamentals, chapter Duct Design";
    private static final String COLEBROOK = "Colebrook (1939), J. Inst. Civ. Eng. 11, 133-156";

    private DuctWorkings() {}

    /**
     * Friction rate of a duct at a flow.
     *
     * @param shape cross section
     * @param material what it is made of
     * @param flow actual volume flow, above 0
     * @param density air density
     * @param viscosity dynamic viscosity of the air
     * @return working whose result is the friction rate, Pa/m
     * @throws IllegalArgumentException if an argument is null or out of range
     */
    public static Working friction(
            DuctShape shape,
            DuctMaterial material,
            Quantity<VolumeFlow> flow,
            Quantity<Density> density,
            Quantity<DynamicViscosity> viscosity) {
        if (shape == null || material == null) {
            throw new IllegalArgumentException("shape and material are needed");
        }
        double q = Si.cubicMetresPerSecond(flow, "airflow");
        double rho = Si.kilogramsPerCubicMetre(density, "air density");
        double mu = Si.pascalSeconds(viscosity, "dynamic viscosity");
        double a = shape.areaSi();
        double d = shape.hydraulicDiameterSi();
        double v = VelocityPressure.meanVelocity(q, a);
        double re = Friction.reynolds(v, d, rho, mu);
        double e = material.roughnessSi();
        double f = Friction.darcy(re, e / d);
        double rate = Friction.lossPerLength(v, d, e, rho, mu);
        return Working.titled("Friction rate of a duct: " + shape)
                .given("Q", "airflow", Units.quantity(q, Units.CUBIC_METRE_PER_SECOND))
                .given("A", "cross section", shape.area())
                .given(
                        "D_h",
                        "hydraulic diameter, four areas over perimeter",
                        shape.hydraulicDiameter())
                .given(
                        "epsilon",
                        "roughness of " + material.name(),
                        material.roughness(),
                        material.source())
                .given("rho", "air density", Units.quantity(rho, Units.KILOGRAM_PER_CUBIC_METRE))
                .given("mu", "dynamic viscosity", Units.quantity(mu, Units.PASCAL_SECOND))
                .step("mean velocity", "V = Q / A", Units.metresPerSecond(v), "continuity")
                .step("Reynolds number", "Re = rho V D_h / mu", Units.ratio(re), "definition")
                .stepInWords(
                        "f",
                        "Darcy friction factor",
                        re >= Friction.TURBULENT_LIMIT
                                ? "root of 1/sqrt(f) = -2 log10(epsilon/(3.7 D_h) + 2.51/(Re sqrt(f)))"
                                : re <= Friction.LAMINAR_LIMIT
                                        ? "laminar: 64/Re"
                                        : "bridge between 64/Re and Colebrook-White, cubic in logarithms",
                        List.of("Re", "epsilon", "D_h"),
                        Units.ratio(f),
                        COLEBROOK)
                .step(
                        "friction rate",
                        "r = f / D_h rho V^2 / 2",
                        Units.quantity(rate, Units.PASCAL_PER_METRE),
                        DARCY)
                .build();
    }

    /**
     * Loss of a fitting.
     *
     * @param fitting a fitting with a loss coefficient
     * @param shape cross section whose velocity pressure the coefficient belongs to
     * @param flow actual volume flow, at least 0
     * @param density air density
     * @return working whose result is the pressure loss, Pa
     * @throws IllegalArgumentException if an argument is null or out of range
     */
    public static Working fittingLoss(
            Fitting fitting,
            DuctShape shape,
            Quantity<VolumeFlow> flow,
            Quantity<Density> density) {
        if (fitting == null || shape == null) {
            throw new IllegalArgumentException("fitting and shape are needed");
        }
        double q = Si.cubicMetresPerSecond(flow, "airflow");
        double rho = Si.kilogramsPerCubicMetre(density, "air density");
        double v = VelocityPressure.meanVelocity(q, shape.areaSi());
        double pv = VelocityPressure.pressure(v, rho);
        return Working.titled("Loss of a fitting: " + fitting.name())
                .given("Q", "airflow", Units.quantity(q, Units.CUBIC_METRE_PER_SECOND))
                .given("A", "cross section", shape.area())
                .given("rho", "air density", Units.quantity(rho, Units.KILOGRAM_PER_CUBIC_METRE))
                .given(
                        "C",
                        "loss coefficient",
                        Units.ratio(fitting.coefficient()),
                        fitting.source())
                .step("mean velocity", "V = Q / A", Units.metresPerSecond(v), "continuity")
                .step("velocity pressure", "p_v = rho V^2 / 2", Units.pascals(pv), "definition")
                .step(
                        "loss of the fitting",
                        "dp = C p_v",
                        Units.pascals(DuctLoss.fitting(fitting.coefficient(), v, rho)),
                        DARCY)
                .build();
    }

    /**
     * Circular equivalent of a duct that is not round.
     *
     * @param shape a rectangular or flat oval duct
     * @return working whose result is the equivalent diameter, m
     * @throws IllegalArgumentException if the shape is null or round
     */
    public static Working equivalentDiameter(DuctShape shape) {
        if (shape instanceof DuctShape.Rectangular r) {
            return Working.titled("Circular equivalent of a duct: " + shape)
                    .given("a", "one side", r.width())
                    .given("b", "other side", r.height())
                    .step(
                            "circular equivalent for the same airflow",
                            "D_e = 1.30 (a b)^0.625 / (a + b)^0.25",
                            r.equivalentDiameter(),
                            "Huebscher (1948); ASHRAE Handbook - Fundamentals, chapter Duct Design")
                    .note(
                            "It goes with the same airflow; the hydraulic diameter with the true velocity.")
                    .build();
        }
        if (shape instanceof DuctShape.FlatOval) {
            return Working.titled("Circular equivalent of a duct: " + shape)
                    .given("A", "cross section", shape.area())
                    .given("P", "perimeter", shape.perimeter())
                    .step(
                            "circular equivalent for the same airflow",
                            "D_e = 1.55 A^0.625 / P^0.25",
                            shape.equivalentDiameter(),
                            "Heyt and Diaz (1975); ASHRAE Handbook - Fundamentals, chapter Duct Design")
                    .build();
        }
        throw new IllegalArgumentException(
                shape == null ? "shape is null" : "a round duct is its own equivalent");
    }

    /**
     * What one duct carries at the same pressure drop in thinner air.
     *
     * @param diameter diameter of a round duct
     * @param material what it is made of
     * @param standardFlow volume flow with standard air, above 0
     * @param density the thinner (or denser) air
     * @param viscosity its dynamic viscosity
     * @return working whose result is the mass flow over that with standard air
     * @throws IllegalArgumentException if an argument is null or out of range
     */
    public static Working deratingAtSamePressureDrop(
            Quantity<Length> diameter,
            DuctMaterial material,
            Quantity<VolumeFlow> standardFlow,
            Quantity<Density> density,
            Quantity<DynamicViscosity> viscosity) {
        if (material == null) {
            throw new IllegalArgumentException("material is needed");
        }
        double d = Si.metres(diameter, "duct diameter");
        double q0 = Si.cubicMetresPerSecond(standardFlow, "airflow");
        double rho = Si.kilogramsPerCubicMetre(density, "air density");
        double mu = Si.pascalSeconds(viscosity, "dynamic viscosity");
        DuctShape round = DuctShape.round(diameter);
        double v0 = VelocityPressure.meanVelocity(q0, round.areaSi());
        double rate =
                Friction.lossPerLength(
                        v0, d, material.roughnessSi(), StandardAir.DENSITY, StandardAir.VISCOSITY);
        double q = FrictionChart.flow(d, rate, material.roughnessSi(), rho, mu);
        double ratio = rho / StandardAir.DENSITY;
        return Working.titled("Derating of a duct at the same pressure drop: " + round)
                .given(
                        "Q_0",
                        "airflow with standard air",
                        Units.quantity(q0, Units.CUBIC_METRE_PER_SECOND))
                .given("D", "diameter", Units.metres(d))
                .given("epsilon", "roughness", material.roughness(), material.source())
                .given(
                        "rho_0",
                        "density of standard air",
                        Units.quantity(StandardAir.DENSITY, Units.KILOGRAM_PER_CUBIC_METRE))
                .given("rho", "air density", Units.quantity(rho, Units.KILOGRAM_PER_CUBIC_METRE))
                .given("mu", "dynamic viscosity", Units.quantity(mu, Units.PASCAL_SECOND))
                .stepInWords(
                        "r",
                        "friction rate with standard air",
                        "Darcy-Weisbach with Colebrook-White",
                        List.of("Q_0", "D", "epsilon", "rho_0"),
                        Units.quantity(rate, Units.PASCAL_PER_METRE),
                        DARCY)
                .stepInWords(
                        "Q",
                        "airflow at the same friction rate in the other air",
                        "Colebrook-White turned round",
                        List.of("r", "D", "epsilon", "rho", "mu"),
                        Units.quantity(q, Units.CUBIC_METRE_PER_SECOND),
                        COLEBROOK)
                .step("volume ratio", "x = Q / Q_0", Units.ratio(q / q0), "definition")
                .step(
                        "mass ratio",
                        "y = x rho / rho_0",
                        Units.ratio(q / q0 * ratio),
                        "definition; heat at the same temperature difference goes with it")
                .note(
                        "At the same pressure drop the volume rises and the mass falls; with the same"
                                + " blower at the same speed the volume stays nearly and the mass falls about"
                                + " with density.")
                .build();
    }

    /** Balance of pressures at a solved operating point. */
    static Working operatingPoint(Airflow a) {
        double ducts = a.rise - a.filterDrop - a.coilDrop;
        return Working.titled("Operating point of the blower on its ducts")
                .given("rho", "air density", a.density())
                .given(
                        "rho_0",
                        "density of standard air",
                        Units.quantity(StandardAir.DENSITY, Units.KILOGRAM_PER_CUBIC_METRE))
                .given("dp_f", "filter drop at the solution", a.filterDrop(), "solved network")
                .given("dp_c", "coil drop at the solution", a.coilDrop(), "solved network")
                .given(
                        "dp_d",
                        "ducts, fittings and registers at the solution",
                        Units.pascals(ducts),
                        "solved network")
                .step(
                        "external static pressure",
                        "dp = dp_f + dp_c + dp_d",
                        a.externalStaticPressure(),
                        "pressures round the loop")
                .stepInWords(
                        "Q",
                        "actual airflow",
                        "flow at which the blower's curve, its pressure scaled by rho/rho_0, meets the"
                                + " system; Newton on all node pressures and branch flows",
                        List.of("dp", "rho", "rho_0"),
                        a.actual(),
                        "fan laws; Darcy-Weisbach with Colebrook-White")
                .step("mass flow", "m = rho Q", a.mass(), "definition")
                .step("standard airflow", "Q_s = m / rho_0", a.standard(), "definition")
                .build();
    }
}
