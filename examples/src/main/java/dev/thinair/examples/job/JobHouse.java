package dev.thinair.examples.job;

import dev.thinair.loads.Appliances;
import dev.thinair.loads.Assembly;
import dev.thinair.loads.CoolingDesignDay;
import dev.thinair.loads.Door;
import dev.thinair.loads.Exposure;
import dev.thinair.loads.FramedAssembly;
import dev.thinair.loads.Glazing;
import dev.thinair.loads.Ground;
import dev.thinair.loads.HeatingDesignDay;
import dev.thinair.loads.HourlyWeather;
import dev.thinair.loads.House;
import dev.thinair.loads.Infiltration;
import dev.thinair.loads.Layer;
import dev.thinair.loads.Material;
import dev.thinair.loads.Occupants;
import dev.thinair.loads.Overhang;
import dev.thinair.loads.Room;
import dev.thinair.loads.Shade;
import dev.thinair.loads.Site;
import dev.thinair.loads.Surface;
import dev.thinair.loads.Window;
import dev.thinair.loads.kernel.InfiltrationModel;
import dev.thinair.psychro.MoistAir;
import dev.thinair.units.AirChangeRate;
import dev.thinair.units.Density;
import dev.thinair.units.Si;
import dev.thinair.units.SpecificHeat;
import dev.thinair.units.TemperatureDifference;
import dev.thinair.units.ThermalConductivity;
import dev.thinair.units.ThermalResistance;
import dev.thinair.units.ThermalTransmittance;
import dev.thinair.units.Units;
import java.nio.file.Path;
import java.time.Month;
import java.time.ZoneOffset;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/** Builds site, design days and house from a checked job file. */
final class JobHouse {
    /** Any year does: the sun of a day differs by less than a quarter of a degree between years. */
    private static final int YEAR = 2025;

    private final Part job;

    JobHouse(Part job) {
        this.job = job;
    }

    Site site() throws JobFileException {
        Part p = job.part("site");
        return Model.at(
                p,
                () -> {
                    Site site =
                            Site.of(
                                    p.text("name"),
                                    p.amount("latitude", Angle.class),
                                    p.amount("longitude", Angle.class),
                                    ZoneOffset.ofTotalSeconds(
                                            (int)
                                                    Math.round(
                                                            Si.seconds(
                                                                    p.amount(
                                                                            "utc-offset",
                                                                            Time.class),
                                                                    "offset"))),
                                    p.amount("elevation", Length.class));
                    if (p.has("station-pressure")) {
                        site = site.withPressure(p.amount("station-pressure", Pressure.class));
                    }
                    if (p.has("ground-reflectance")) {
                        site =
                                site.withGroundReflectance(
                                        p.amount("ground-reflectance", Dimensionless.class));
                    }
                    return site;
                });
    }

    CoolingDesignDay coolingDay(Site site) throws JobFileException {
        Part p = job.part("cooling-day");
        return Model.at(
                p,
                () -> {
                    CoolingDesignDay.Builder b =
                            CoolingDesignDay.at(site)
                                    .date(p.day("date").atYear(YEAR))
                                    .dryBulb(p.amount("dry-bulb", Temperature.class))
                                    .dailyRange(
                                            p.amount("daily-range", TemperatureDifference.class))
                                    .wetBulb(p.amount("wet-bulb", Temperature.class))
                                    .opticalDepths(
                                            p.ratio("beam-optical-depth"),
                                            p.ratio("diffuse-optical-depth"));
                    if (p.has("wind-speed")) {
                        b = b.wind(p.amount("wind-speed", Speed.class));
                    }
                    return b.build();
                });
    }

    HeatingDesignDay heatingDay(Site site) throws JobFileException {
        Part p = job.part("heating-day");
        return Model.at(
                p,
                () -> {
                    HeatingDesignDay d =
                            HeatingDesignDay.of(site, p.amount("dry-bulb", Temperature.class));
                    return p.has("wind-speed")
                            ? d.withWind(p.amount("wind-speed", Speed.class))
                            : d;
                });
    }

    /** A typical year made from the months' means; sun and wind as on the cooling day. */
    HourlyWeather weather(Site site, Path folder) throws JobFileException {
        Part day = job.part("cooling-day");
        if (job.has("weather-file")) {
            return WeatherFile.read(folder.resolve(job.text("weather-file")), site);
        }
        if (!job.has("climate")) {
            CoolingDesignDay summer = coolingDay(site);
            HeatingDesignDay winter = heatingDay(site);
            return Model.at(
                    day,
                    () ->
                            HourlyWeather.between(
                                    summer,
                                    winter,
                                    day.ratio("beam-optical-depth"),
                                    day.ratio("diffuse-optical-depth")));
        }
        Part p = job.part("climate");
        HourlyWeather.Year year = HourlyWeather.yearAt(site).calendarYear(YEAR);
        for (Part m : p.parts("months")) {
            Model.at(
                    m,
                    () ->
                            year.month(
                                    Month.of(m.count("month")),
                                    m.amount("mean-dry-bulb", Temperature.class),
                                    m.amount("daily-range", TemperatureDifference.class),
                                    MoistAir.ofDryBulbAndDewPoint(
                                                    m.amount("mean-dry-bulb", Temperature.class),
                                                    m.amount("dew-point", Temperature.class),
                                                    site.pressure())
                                            .humidityRatio(),
                                    day.amount(
                                            "wind-speed",
                                            Speed.class,
                                            Units.metresPerSecond(CoolingDesignDay.USUAL_WIND)),
                                    m.amount("cloud-cover", Dimensionless.class),
                                    day.ratio("beam-optical-depth"),
                                    day.ratio("diffuse-optical-depth")));
        }
        return Model.at(
                p,
                () ->
                        year.deviation(p.amount("day-to-day-spread", TemperatureDifference.class))
                                .build());
    }

    House house() throws JobFileException {
        Part p = job.part("house");
        Map<String, Material> materials = new HashMap<>();
        for (Part m : p.parts("materials")) {
            materials.put(
                    m.text("name"),
                    Model.at(
                            m,
                            () ->
                                    Material.of(
                                            m.text("name"),
                                            m.amount("conductivity", ThermalConductivity.class),
                                            m.amount("density", Density.class),
                                            m.amount("specific-heat", SpecificHeat.class),
                                            "job file")));
        }
        Map<String, Assembly> assemblies = new HashMap<>();
        Map<String, Quantity<Dimensionless>> absorptances = new HashMap<>();
        for (Part a : p.parts("assemblies")) {
            assemblies.put(a.text("name"), Model.at(a, () -> assembly(a, materials)));
            absorptances.put(
                    a.text("name"), a.amount("absorptance", Dimensionless.class, Units.ratio(0.7)));
        }
        Map<String, Part> glazings = new HashMap<>();
        p.parts("glazings").forEach(g -> glazings.put(g.text("name"), g));
        Envelope envelope = new Envelope(assemblies, absorptances, glazings);
        House.Builder house = House.named(job.text("title"));
        double volume = 0;
        for (Part r : p.parts("rooms")) {
            Room room = Model.at(r, () -> envelope.room(r));
            volume += room.volumeCubicMetres();
            house.room(room);
        }
        for (Part s : p.parts("spaces")) {
            house.room(Model.at(s, () -> envelope.space(s)));
        }
        Part leaks = p.part("infiltration");
        double cubicMetres = volume;
        house.infiltration(
                Model.at(
                        leaks,
                        () -> {
                            if (leaks.has("air-changes")) {
                                return Infiltration.airChanges(
                                        leaks.amount("air-changes", AirChangeRate.class),
                                        Units.cubicMetres(cubicMetres));
                            }
                            Exposure exposure = exposure(p);
                            if (leaks.has("leakage-area")) {
                                return Infiltration.leakageArea(
                                        leaks.amount("leakage-area", Area.class), exposure);
                            }
                            return Infiltration.blowerDoor(
                                    leaks.amount("air-changes-at-50-pascals", AirChangeRate.class),
                                    Units.cubicMetres(cubicMetres),
                                    Units.ratio(Infiltration.USUAL_EXPONENT),
                                    exposure);
                        }));
        return Model.at(p, house::build);
    }

    private static Exposure exposure(Part house) {
        Part leaks = house.part("infiltration");
        InfiltrationModel.Shelter shelter =
                switch (leaks.text("shelter", "some")) {
                    case "none" -> InfiltrationModel.Shelter.NONE;
                    case "light" -> InfiltrationModel.Shelter.LIGHT;
                    case "heavy" -> InfiltrationModel.Shelter.HEAVY;
                    case "very-heavy" -> InfiltrationModel.Shelter.VERY_HEAVY;
                    default -> InfiltrationModel.Shelter.MODERATE;
                };
        Exposure exposure = Exposure.of(house.count("storeys"), shelter);
        boolean crawlspace =
                house.parts("rooms").stream()
                        .filter(r -> r.has("floor"))
                        .anyMatch(r -> r.part("floor").has("over"));
        return crawlspace ? exposure.overCrawlSpace() : exposure;
    }

    private static Assembly assembly(Part a, Map<String, Material> materials) {
        boolean framed = a.has("framing-fraction");
        FramedAssembly.Builder builder = FramedAssembly.named(a.text("name"));
        List<Part> layers = a.parts("layers");
        Layer[] plain = new Layer[layers.size()];
        for (int i = 0; i < plain.length; i++) {
            Part l = layers.get(i);
            if (l.has("resistance")) {
                plain[i] =
                        Layer.ofResistance(
                                "layer " + (i + 1),
                                l.amount("resistance", ThermalResistance.class));
            } else {
                Quantity<Length> thickness = l.amount("thickness", Length.class);
                plain[i] = Layer.of(materials.get(l.text("material")), thickness);
                if (l.has("framing")) {
                    builder.bridged(
                            plain[i], Layer.of(materials.get(l.text("framing")), thickness));
                    continue;
                }
            }
            builder.layer(plain[i]);
        }
        return framed
                ? builder.framing(a.amount("framing-fraction", Dimensionless.class)).build()
                : Assembly.outsideIn(a.text("name"), plain);
    }

    /** What the rooms are made of, by name. */
    private record Envelope(
            Map<String, Assembly> assemblies,
            Map<String, Quantity<Dimensionless>> absorptances,
            Map<String, Part> glazings) {

        Room room(Part r) {
            Room.Builder b =
                    Room.named(r.text("name"))
                            .floorArea(r.amount("floor-area", Area.class))
                            .height(r.amount("ceiling-height", Length.class));
            enclose(b, r);
            if (r.has("ceiling")) {
                Part c = r.part("ceiling");
                b.surface(
                        Surface.ceiling("ceiling", assemblies.get(c.text("assembly")))
                                .area(r.amount("floor-area", Area.class))
                                .under(c.text("under")));
            }
            if (r.has("floor")) {
                Part f = r.part("floor");
                Surface.Builder floor =
                        Surface.floor("floor", assemblies.get(f.text("assembly")))
                                .area(r.amount("floor-area", Area.class));
                if (f.has("slab-edge")) {
                    floor.onGround(
                            Ground.slabOnGround(
                                    f.amount("slab-edge", Length.class),
                                    Units.metres(0.2),
                                    Units.quantity(1.5, Units.WATT_PER_METRE_KELVIN)));
                } else if (!f.text("over").equals(JobLinks.OUTDOORS)) {
                    floor.over(f.text("over"));
                }
                b.surface(floor);
            }
            int people = r.count("people", 0);
            if (people > 0) {
                b.gain(Occupants.of(people, Occupants.Activity.SEATED_LIGHT_WORK));
            }
            if (r.has("appliances") || r.has("appliance-moisture")) {
                b.gain(
                        Appliances.of(
                                "lights and appliances",
                                r.amount("appliances", Power.class, Units.watts(0)),
                                r.amount("appliance-moisture", Power.class, Units.watts(0))));
            }
            return b.build();
        }

        Room space(Part s) {
            Room.Builder b =
                    Room.unconditioned(s.text("name"))
                            .floorArea(s.amount("floor-area", Area.class))
                            .height(s.amount("height", Length.class))
                            .outdoorAir(s.amount("air-changes", AirChangeRate.class));
            enclose(b, s);
            return b.build();
        }

        private void enclose(Room.Builder b, Part r) {
            int n = 1;
            for (Part w : r.parts("walls")) {
                Surface.Builder wall =
                        Surface.wall(
                                        w.text("facing") + " wall " + n++,
                                        assemblies.get(w.text("assembly")))
                                .area(w.amount("area", Area.class))
                                .facing(azimuth(w.text("facing")))
                                .absorptance(absorptances.get(w.text("assembly")));
                for (Part v : w.parts("windows")) {
                    for (int i = 0; i < v.count("count", 1); i++) {
                        wall.window(window(v));
                    }
                }
                for (Part d : w.parts("doors")) {
                    wall.door(
                            Door.of(
                                    "door",
                                    d.amount("area", Area.class),
                                    d.amount("u-factor", ThermalTransmittance.class)));
                }
                b.surface(wall);
            }
            n = 1;
            for (Part f : r.parts("roofs")) {
                b.surface(
                        Surface.roof("roof " + n++, assemblies.get(f.text("assembly")))
                                .area(f.amount("area", Area.class))
                                .tilt(f.amount("tilt", Angle.class, Units.degrees(0)))
                                .facing(azimuth(f.text("facing", "south")))
                                .absorptance(absorptances.get(f.text("assembly"))));
            }
        }

        private Window window(Part v) {
            Part g = glazings.get(v.text("glazing"));
            Window window =
                    Window.of(
                            g.text("name"),
                            v.amount("width", Length.class),
                            v.amount("height", Length.class),
                            g.amount("u-factor", ThermalTransmittance.class),
                            Glazing.clearDouble().scaledTo(g.ratio("solar-heat-gain-coefficient")));
            if (g.has("shade-factor")) {
                window =
                        window.withShade(
                                Shade.interior(
                                        "inside shade",
                                        g.amount("shade-factor", Dimensionless.class),
                                        Units.ratio(1)));
            }
            if (v.has("overhang-depth")) {
                window =
                        window.withOverhang(
                                Overhang.alongWall(
                                        v.amount("overhang-depth", Length.class),
                                        v.amount("overhang-gap", Length.class, Units.feet(0.5))));
            }
            return window;
        }

        private static Quantity<Angle> azimuth(String facing) {
            return Units.degrees(45.0 * JobSchema.COMPASS.indexOf(facing));
        }
    }
}
