package dev.thinair.examples.job;

import dev.thinair.ducts.Blower;
import dev.thinair.ducts.Duct;
import dev.thinair.ducts.DuctLeak;
import dev.thinair.ducts.DuctMaterial;
import dev.thinair.ducts.DuctShape;
import dev.thinair.ducts.DuctSystem;
import dev.thinair.ducts.Filter;
import dev.thinair.ducts.Fitting;
import dev.thinair.ducts.Register;
import dev.thinair.ducts.WetCoil;
import dev.thinair.units.Si;
import dev.thinair.units.ThermalResistance;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;

/** Builds the duct system from a checked job file. */
final class JobDucts {
    private final Part job;

    JobDucts(Part job) {
        this.job = job;
    }

    DuctSystem ducts() throws JobFileException {
        Part p = job.part("ducts");
        DuctSystem.Builder b = DuctSystem.builder();
        b.blower(Model.at(p.part("blower"), () -> blower(p.part("blower"))));
        b.filter(Model.at(p.part("filter"), () -> filter(p.part("filter"))));
        Part c = p.part("coil");
        b.coil(
                Model.at(
                        c,
                        () ->
                                WetCoil.of(
                                        c.amount("at-airflow", VolumeFlow.class),
                                        c.amount("dry-drop", Pressure.class),
                                        c.amount("wet-drop", Pressure.class))));
        for (Part t : p.parts("trunks")) {
            Model.at(
                    t,
                    () ->
                            b.trunk(
                                    t.text("name"),
                                    node(t.text("from")),
                                    node(t.text("name")),
                                    duct(t, p)));
        }
        for (Part r : p.parts("runs")) {
            Model.at(
                    r,
                    () ->
                            b.supplyRun(
                                    r.text("name"),
                                    node(r.text("from")),
                                    r.text("room"),
                                    duct(r, p),
                                    register(r.part("register"))));
        }
        for (Part r : p.parts("returns")) {
            Model.at(
                    r,
                    () ->
                            b.returnRun(
                                    r.text("name"),
                                    r.text("room"),
                                    DuctSystem.RETURN_PLENUM,
                                    duct(r, p),
                                    register(r.part("grille"))));
        }
        if (p.has("supply-leakage-at-25-pascals")) {
            Model.at(
                    p,
                    () ->
                            b.leak(
                                    DuctSystem.SUPPLY_PLENUM,
                                    leak(p, "supply-leakage-at-25-pascals")));
        }
        if (p.has("return-leakage-at-25-pascals")) {
            Model.at(
                    p,
                    () ->
                            b.leak(
                                    DuctSystem.RETURN_PLENUM,
                                    leak(p, "return-leakage-at-25-pascals")));
        }
        return Model.at(p, b::build);
    }

    /**
     * A trunk's far end bears the trunk's name, but must not be mistaken for a run of that name.
     */
    private static String node(String name) {
        return name.equals(JobLinks.SUPPLY_PLENUM) ? DuctSystem.SUPPLY_PLENUM : "end of " + name;
    }

    private static DuctLeak leak(Part p, String key) {
        return DuctLeak.at25Pascals(p.amount(key, VolumeFlow.class), place(p));
    }

    private static dev.thinair.ducts.Place place(Part ducts) {
        return switch (ducts.text("place")) {
            case "inside" -> dev.thinair.ducts.Place.CONDITIONED_SPACE;
            case "attic" -> dev.thinair.ducts.Place.ATTIC;
            case "crawlspace" -> dev.thinair.ducts.Place.CRAWL_SPACE;
            case "basement" -> dev.thinair.ducts.Place.BASEMENT;
            case "garage" -> dev.thinair.ducts.Place.GARAGE;
            default -> dev.thinair.ducts.Place.OUTDOORS;
        };
    }

    private static Blower blower(Part p) {
        Blower.Builder b = Blower.builder();
        for (Part s : p.parts("speeds")) {
            b.speed(s.text("name"));
            for (Part x : s.parts("points")) {
                b.point(
                        x.amount("static-pressure", Pressure.class),
                        x.amount("airflow", VolumeFlow.class),
                        x.amount("power", Power.class));
            }
        }
        return b.build().withSpeed(p.text("running-speed"));
    }

    private static Filter filter(Part p) {
        double share = p.has("viscous-share") ? p.ratio("viscous-share") : 0.5;
        Filter clean =
                Filter.of(
                        p.amount("at-airflow", VolumeFlow.class),
                        p.amount("clean-drop", Pressure.class),
                        Units.ratio(share));
        double times =
                Si.pascals(p.amount("found-drop", Pressure.class), "found drop")
                        / Si.pascals(p.amount("clean-drop", Pressure.class), "clean drop");
        // Dust raises the viscous part; the whole drop at the rated airflow becomes the found one.
        return clean.loaded((times - (1 - share)) / share);
    }

    private static Register register(Part p) {
        Register r = Register.of(p.amount("width", Length.class), p.amount("height", Length.class));
        if (p.has("rated-loss")) {
            Part loss = p.part("rated-loss");
            r =
                    r.withPressureDrop(
                            loss.amount("airflow", VolumeFlow.class),
                            loss.amount("drop", Pressure.class));
        }
        return switch (p.text("position", "open")) {
            case "shut" -> r.shut();
            case "partly" ->
                    r.partlyOpen(p.amount("open-share", Dimensionless.class, Units.percent(50)));
            default -> r;
        };
    }

    private static Duct duct(Part p, Part ducts) {
        DuctShape shape =
                p.has("diameter")
                        ? DuctShape.round(p.amount("diameter", Length.class))
                        : DuctShape.rectangular(
                                p.amount("width", Length.class), p.amount("height", Length.class));
        DuctMaterial material =
                switch (p.text("material")) {
                    case "flexible" -> DuctMaterial.FLEXIBLE;
                    case "duct-board" -> DuctMaterial.DUCT_BOARD;
                    case "smooth" -> DuctMaterial.SMOOTH;
                    default -> DuctMaterial.GALVANIZED;
                };
        Duct d = Duct.of(shape, p.amount("length", Length.class), material).in(place(ducts));
        if (ducts.has("insulation")) {
            d = d.withInsulation(ducts.amount("insulation", ThermalResistance.class));
        }
        if (material == DuctMaterial.FLEXIBLE) {
            d = d.withCompression(p.amount("compression", Dimensionless.class, Units.percent(4)));
        }
        for (Part f : p.parts("fittings")) {
            for (int i = 0; i < f.count("count", 1); i++) {
                d =
                        d.withFitting(
                                f.has("loss-coefficient")
                                        ? Fitting.ofCoefficient(
                                                f.text("what"),
                                                f.ratio("loss-coefficient"),
                                                "job file")
                                        : Fitting.ofEquivalentLength(
                                                f.text("what"),
                                                f.amount("equivalent-length", Length.class),
                                                "job file"));
            }
        }
        return d;
    }
}
