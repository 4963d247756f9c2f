package dev.thinair.cycling;

import dev.thinair.cycling.kernel.UnitModel;
import dev.thinair.cycling.kernel.UnitResponse;
import dev.thinair.psychro.kernel.IdealMoistAir;

/**
 * The unit as it works on these ducts: the balance of coil and compressor at the air that really
 * flows, less the heat of the blower, less what leaks and gains on the way. Holds scratch memory:
 * one per run.
 */
final class InstalledUnit implements UnitResponse {

    /**
     * The least share of full airflow at a low stage. Common practice, no source: controls hold the
     * airflow per ton roughly, but not below half.
     */
    static final double LEAST_AIRFLOW_SHARE = 0.5;

    /**
     * Air that finds its way past a choked coil, as a share of the rated airflow: the balance of
     * coil and compressor is not asked below it. Assumption.
     */
    private static final double LEAST_ICED_AIRFLOW = 0.06;

    private final UnitModel model;
    private final double dryAirMassFlow;
    private final double pressure;
    private final double blowerPower;
    private final double supplyLeak;
    private final double returnLeak;
    private final IceBook ice; // null for a coil that is always clear
    private final double[] steady = new double[UnitModel.RESULTS];

    InstalledUnit(
            UnitModel model,
            double dryAirMassFlow,
            double pressure,
            double blowerPower,
            double supplyLeak,
            double returnLeak,
            IceBook ice) {
        this.model = model;
        this.ice = ice;

        this.dryAirMassFlow = dryAirMassFlow;
        this.pressure = pressure;
        this.blowerPower = blowerPower;
        this.supplyLeak = supplyLeak;
        this.returnLeak = returnLeak;
    }

    /** Dry-air mass flow through a coil that ice leaves this share of it. */
    static double through(UnitModel model, double flow, double share) {
        double least = LEAST_ICED_AIRFLOW * model.ratedDryAirMassFlow();
        return Math.max(Math.min(flow, least), flow * share);
    }

    static double airflowShare(double stage) {
        return stage >= 1 ? 1 : Math.max(LEAST_AIRFLOW_SHARE, stage);
    }

    @Override
    public void at(
            double stage,
            double outdoorDryBulb,
            double outdoorHumidityRatio,
            double returnDryBulb,
            double returnHumidityRatio,
            double[] out) {
        double share = airflowShare(stage);
        double flow = dryAirMassFlow * share;
        // Same ducts, same fan: power goes with the cube of the flow.
        double fan = blowerPower * share * share * share;
        if (ice != null && ice.share() < 1) {
            flow = through(model, flow, ice.share());
            fan = ice.watts() * share * share * share;
        }
        double excess = outdoorDryBulb - returnDryBulb;
        double wExcess = outdoorHumidityRatio - returnHumidityRatio;
        double entering = returnDryBulb + returnLeak * excess;
        double enteringW = Math.max(0, returnHumidityRatio + returnLeak * wExcess);
        double saturated = IdealMoistAir.saturationHumidityRatio(entering, pressure);
        enteringW = Math.min(enteringW, saturated);
        model.steady(entering, enteringW, flow, outdoorDryBulb, pressure, stage, steady);
        double cp = 1006 + 1860 * returnHumidityRatio;
        double lost = Math.max(0, supplyLeak - returnLeak) * flow;
        double net = steady[UnitModel.SENSIBLE] - fan;
        out[SENSIBLE] =
                (1 - supplyLeak) * (net - flow * cp * returnLeak * excess) - lost * cp * excess;
        out[MOISTURE] =
                (1 - supplyLeak) * (steady[UnitModel.CONDENSATE] - flow * returnLeak * wExcess)
                        - lost * wExcess;
        out[MOISTURE_SLOPE] =
                steady[UnitModel.DRY] == 1
                        ? 0
                        : (1 - supplyLeak) * flow * (1 - steady[UnitModel.BYPASS_FACTOR]);
        out[POWER] = steady[UnitModel.POWER] + fan;
        out[COIL] = steady[UnitModel.APPARATUS_DEW_POINT];
        out[SUCTION] = steady[UnitModel.SATURATED_SUCTION];
        out[CONDENSATE] = Math.max(0, steady[UnitModel.CONDENSATE]);
    }

    @Override
    public void passed(
            double seconds, double[] state, double startUpFactor, double airTemperature) {
        if (ice != null) {
            ice.passed(seconds, state, startUpFactor, airTemperature);
        }
    }

    /** The balance of the last call, in the order of {@link UnitModel}. */
    double[] last() {
        return steady.clone();
    }
}
