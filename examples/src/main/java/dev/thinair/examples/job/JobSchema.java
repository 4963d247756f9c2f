package dev.thinair.examples.job;

import dev.thinair.examples.job.Shape.Amount;
import dev.thinair.examples.job.Shape.Choice;
import dev.thinair.examples.job.Shape.Count;
import dev.thinair.examples.job.Shape.DayOfYear;
import dev.thinair.examples.job.Shape.Fields;
import dev.thinair.examples.job.Shape.Items;
import dev.thinair.examples.job.Shape.Key;
import dev.thinair.examples.job.Shape.Name;
import dev.thinair.examples.job.Shape.Price;
import dev.thinair.examples.job.Shape.Words;
import dev.thinair.units.AirChangeRate;
import dev.thinair.units.Density;
import dev.thinair.units.SpecificHeat;
import dev.thinair.units.TemperatureDifference;
import dev.thinair.units.ThermalConductivity;
import dev.thinair.units.ThermalResistance;
import dev.thinair.units.ThermalTransmittance;
import dev.thinair.units.VolumeFlow;
import java.util.List;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;

/**
 * Every key of the job file, in the order of its page ({@code examples/job-file.md}, whose tables
 * are written from here). The limits are wide: they catch slips of the pen and of the unit, not
 * unusual houses.
 */
final class JobSchema {
    static final List<String> COMPASS =
            List.of(
                    "north",
                    "north-east",
                    "east",
                    "south-east",
                    "south",
                    "south-west",
                    "west",
                    "north-west");

    private static final Amount<Length> DIAMETER = length("a duct diameter", "3 in", "48 in");
    private static final Amount<Length> SIDE = length("a duct side", "2 in", "60 in");
    private static final Amount<Length> DUCT_LENGTH = length("a length", "0.5 ft", "300 ft");
    private static final Amount<VolumeFlow> AIRFLOW = flow("an airflow", "10 cfm", "6000 cfm");
    private static final Amount<Pressure> DROP =
            Amount.between(Pressure.class, "a pressure drop", "0.001 in. w.g.", "3 in. w.g.");
    private static final Choice DUCT_MATERIAL =
            new Choice(List.of("galvanized", "flexible", "duct-board", "smooth"));

    private static final Fields FITTING =
            Fields.of(
                            need("what", new Name(), "elbow, take-off, boot, ..."),
                            may("count", new Count(1, 20), "how many alike; 1 if left out"),
                            may(
                                    "loss-coefficient",
                                    ratio("a loss coefficient", "0 1", "20 1"),
                                    "on the velocity pressure in this duct"),
                            may(
                                    "equivalent-length",
                                    length("an equivalent length", "1 ft", "200 ft"),
                                    "straight duct with the same loss"))
                    .exactlyOneOf(
                            List.of(List.of("loss-coefficient"), List.of("equivalent-length")));

    private static Fields duct(Key... more) {
        Key[] common = {
            may("diameter", DIAMETER, "of a round duct"),
            may("width", SIDE, "of a rectangular duct"),
            may("height", SIDE, "of a rectangular duct"),
            need("material", DUCT_MATERIAL, "inner surface"),
            need("length", DUCT_LENGTH, "along the centre line"),
            may(
                    "compression",
                    ratio("a share", "0 %", "45 %"),
                    "flexible duct only: how much shorter than pulled tight; 4 % if left out"),
            may("fittings", new Items(FITTING, 1, 30), "losses besides straight friction"),
        };
        Key[] all = new Key[common.length + more.length];
        System.arraycopy(more, 0, all, 0, more.length);
        System.arraycopy(common, 0, all, more.length, common.length);
        return Fields.of(all)
                .exactlyOneOf(List.of(List.of("diameter"), List.of("width", "height")));
    }

    private static final Fields RATED_LOSS =
            Fields.of(
                    need("drop", DROP, "when fully open"),
                    need("airflow", AIRFLOW, "at which it was measured (standard air)"));

    private static Fields grille(Key... more) {
        Key[] common = {
            need("width", SIDE, "of the face"),
            need("height", SIDE, "of the face"),
            may(
                    "rated-loss",
                    RATED_LOSS,
                    "from a catalogue; usual values of a stamped face if left out"),
        };
        Key[] all = new Key[common.length + more.length];
        System.arraycopy(common, 0, all, 0, common.length);
        System.arraycopy(more, 0, all, common.length, more.length);
        return Fields.of(all);
    }

    private static final Fields CUSTOMER =
            Fields.of(
                    need("complaint", new Words(800), "in the customer's words"),
                    need(
                            "cooling-setpoint",
                            temperature("an indoor temperature", "60 degF", "85 degF"),
                            "what the customer wants in summer"),
                    need(
                            "heating-setpoint",
                            temperature("an indoor temperature", "50 degF", "80 degF"),
                            "what the customer wants in winter"),
                    may(
                            "usual-cooling-setpoint",
                            temperature("an indoor temperature", "68 degF", "80 degF"),
                            "for comparison; 74 degF if left out"),
                    may(
                            "usual-heating-setpoint",
                            temperature("an indoor temperature", "60 degF", "75 degF"),
                            "for comparison; 70 degF if left out"),
                    need(
                            "indoor-relative-humidity",
                            ratio("a relative humidity", "15 %", "65 %"),
                            "in summer, for the design load"));

    private static final Fields SITE =
            Fields.of(
                    need("name", new Name(), "of the place"),
                    need(
                            "elevation",
                            length("an elevation", "-1400 ft", "15000 ft"),
                            "above sea level; its unit decides which system the review prints first"),
                    may(
                            "station-pressure",
                            Amount.between(Pressure.class, "an air pressure", "50 kPa", "110 kPa"),
                            "measured on site, not reduced to sea level; else standard atmosphere"),
                    need("latitude", angle("a latitude", "-66 deg", "66 deg"), "north positive"),
                    need("longitude", angle("a longitude", "-180 deg", "180 deg"), "east positive"),
                    need(
                            "utc-offset",
                            Amount.between(Time.class, "an offset from UTC", "-12 h", "14 h"),
                            "local standard time, not summer time"),
                    may(
                            "ground-reflectance",
                            ratio("a reflectance", "0.05 1", "0.9 1"),
                            "of the ground around; 0.2 if left out"));

    private static final Fields COOLING_DAY =
            Fields.of(
                    need("date", new DayOfYear(), "for the sun"),
                    need(
                            "dry-bulb",
                            temperature("a summer dry bulb", "60 degF", "125 degF"),
                            "highest of the design day"),
                    need(
                            "daily-range",
                            Amount.between(
                                    TemperatureDifference.class,
                                    "a temperature difference",
                                    "2 degF_diff",
                                    "50 degF_diff"),
                            "from the afternoon's highest to the night's lowest"),
                    need(
                            "wet-bulb",
                            temperature("a wet bulb", "35 degF", "90 degF"),
                            "coincident with the highest dry bulb"),
                    need(
                            "beam-optical-depth",
                            ratio("an optical depth", "0.1 1", "1.5 1"),
                            "clear sky, this site and month"),
                    need(
                            "diffuse-optical-depth",
                            ratio("an optical depth", "1 1", "3.5 1"),
                            "clear sky, this site and month"),
                    may(
                            "wind-speed",
                            Amount.between(Speed.class, "a wind speed", "0 mph", "60 mph"),
                            "7.5 mph if left out"));

    private static final Fields HEATING_DAY =
            Fields.of(
                    need(
                            "dry-bulb",
                            temperature("a winter dry bulb", "-70 degF", "60 degF"),
                            "of the heating design day"),
                    may(
                            "wind-speed",
                            Amount.between(Speed.class, "a wind speed", "0 mph", "60 mph"),
                            "15 mph if left out"));

    private static final Fields MONTH =
            Fields.of(
                    need("month", new Count(1, 12), ""),
                    need(
                            "mean-dry-bulb",
                            temperature("a monthly mean", "-40 degF", "105 degF"),
                            "mean over all hours"),
                    need(
                            "daily-range",
                            Amount.between(
                                    TemperatureDifference.class,
                                    "a temperature difference",
                                    "2 degF_diff",
                                    "50 degF_diff"),
                            "mean from a day's highest to its lowest"),
                    need("dew-point", temperature("a dew point", "-45 degF", "80 degF"), "mean"),
                    need("cloud-cover", ratio("a share", "0 %", "100 %"), "of the sky, mean"));

    private static final Fields CLIMATE =
            Fields.of(
                    need(
                            "day-to-day-spread",
                            Amount.between(
                                    TemperatureDifference.class,
                                    "a temperature difference",
                                    "0 degF_diff",
                                    "20 degF_diff"),
                            "standard deviation of the daily means about their month"),
                    need("months", new Items(MONTH, 12, 12), "January to December"));

    private static final Fields MATERIAL =
            Fields.of(
                    need("name", new Name(), "used in the layers below"),
                    need(
                            "conductivity",
                            Amount.between(
                                    ThermalConductivity.class,
                                    "a conductivity",
                                    "0.015 W/(m*K)",
                                    "400 W/(m*K)"),
                            ""),
                    need(
                            "density",
                            Amount.between(Density.class, "a density", "1 kg/m3", "9000 kg/m3"),
                            ""),
                    need(
                            "specific-heat",
                            Amount.between(
                                    SpecificHeat.class,
                                    "a specific heat",
                                    "200 J/(kg*K)",
                                    "5000 J/(kg*K)"),
                            ""));

    private static final Fields LAYER =
            Fields.of(
                            may("material", new Name(), "a name from materials"),
                            may(
                                    "thickness",
                                    length("a thickness", "0.01 in", "48 in"),
                                    "of that material"),
                            may(
                                    "framing",
                                    new Name(),
                                    "material of the studs or joists that cross this layer"),
                            may(
                                    "resistance",
                                    Amount.between(
                                            ThermalResistance.class,
                                            "a thermal resistance",
                                            "R-0.01",
                                            "R-100"),
                                    "of an air space or other layer without mass"))
                    .exactlyOneOf(List.of(List.of("material", "thickness"), List.of("resistance")));

    private static final Fields ASSEMBLY =
            Fields.of(
                    need("name", new Name(), "used by the rooms below"),
                    may(
                            "absorptance",
                            ratio("a solar absorptance", "0.1 1", "1 1"),
                            "of the outer face; 0.7 if left out"),
                    may(
                            "framing-fraction",
                            ratio("a share", "1 %", "60 %"),
                            "of the area that is framing; needed with framing in a layer"),
                    need(
                            "layers",
                            new Items(LAYER, 1, 12),
                            "from outside to inside, air films excluded"));

    private static final Fields GLAZING =
            Fields.of(
                    need("name", new Name(), "used by the windows below"),
                    need(
                            "u-factor",
                            Amount.between(
                                    ThermalTransmittance.class,
                                    "a U-factor",
                                    "0.1 BTU/(h*ft2*degF)",
                                    "1.5 BTU/(h*ft2*degF)"),
                            "whole window, with frame"),
                    need(
                            "solar-heat-gain-coefficient",
                            ratio("a solar heat gain coefficient", "0.05 1", "0.9 1"),
                            "whole window, at normal incidence"),
                    may(
                            "shade-factor",
                            ratio("a share", "0.1 1", "1 1"),
                            "share of the sun's gain that an inside shade lets through; 1 if left out"));

    private static final Fields WINDOW =
            Fields.of(
                    need("glazing", new Name(), "a name from glazings"),
                    need("width", length("a window width", "0.5 ft", "20 ft"), ""),
                    need("height", length("a window height", "0.5 ft", "20 ft"), ""),
                    may("count", new Count(1, 20), "how many alike; 1 if left out"),
                    may(
                            "overhang-depth",
                            length("an overhang", "0.1 ft", "20 ft"),
                            "of the eave above; none if left out"),
                    may(
                            "overhang-gap",
                            length("a height", "0 ft", "10 ft"),
                            "from window head to eave; 0.5 ft if left out"));

    private static final Fields DOOR =
            Fields.of(
                    need("area", area("a door area", "5 ft2", "200 ft2"), ""),
                    need(
                            "u-factor",
                            Amount.between(
                                    ThermalTransmittance.class,
                                    "a U-factor",
                                    "0.05 BTU/(h*ft2*degF)",
                                    "1.5 BTU/(h*ft2*degF)"),
                            ""));

    private static final Fields WALL =
            Fields.of(
                    need("assembly", new Name(), "a name from assemblies"),
                    need(
                            "area",
                            area("a wall area", "5 ft2", "3000 ft2"),
                            "with the windows and doors in it"),
                    need("facing", new Choice(COMPASS), "which way the outside looks"),
                    may("windows", new Items(WINDOW, 1, 20), "in this wall"),
                    may("doors", new Items(DOOR, 1, 5), "in this wall"));

    private static final Fields ROOF =
            Fields.of(
                    need("assembly", new Name(), "a name from assemblies"),
                    need("area", area("a roof area", "10 ft2", "10000 ft2"), "along the slope"),
                    may(
                            "tilt",
                            angle("a tilt", "0 deg", "60 deg"),
                            "from level; level if left out"),
                    may(
                            "facing",
                            new Choice(COMPASS),
                            "which way a tilted roof looks; south if left out"));

    private static final Fields CEILING =
            Fields.of(
                    need("assembly", new Name(), "a name from assemblies"),
                    need("under", new Name(), "the space above it, a name from spaces"));

    private static final Fields FLOOR =
            Fields.of(
                            need("assembly", new Name(), "a name from assemblies"),
                            may(
                                    "over",
                                    new Name(),
                                    "the space below it, a name from spaces; or outdoors"),
                            may(
                                    "slab-edge",
                                    length("a length", "1 ft", "500 ft"),
                                    "of a slab on the ground: its outer edge"))
                    .exactlyOneOf(List.of(List.of("over"), List.of("slab-edge")));

    private static final Fields SPACE =
            Fields.of(
                    need("name", new Name(), "attic, crawlspace, garage, ..."),
                    need("floor-area", area("a floor area", "10 ft2", "10000 ft2"), ""),
                    need("height", length("a mean height", "0.5 ft", "20 ft"), ""),
                    need(
                            "air-changes",
                            Amount.between(
                                    AirChangeRate.class, "an air change rate", "0 1/h", "60 1/h"),
                            "of outdoor air through its vents and cracks"),
                    may("walls", new Items(WALL, 1, 12), "to outdoors"),
                    may("roofs", new Items(ROOF, 1, 8), "to outdoors"));

    private static final Fields ROOM =
            Fields.of(
                    need("name", new Name(), "used by registers and returns"),
                    need("floor-area", area("a floor area", "10 ft2", "10000 ft2"), ""),
                    need("ceiling-height", length("a ceiling height", "6 ft", "20 ft"), ""),
                    may("people", new Count(0, 30), "counted all day; none if left out"),
                    may(
                            "appliances",
                            power("a heat gain", "0 W", "5000 W"),
                            "sensible heat of lights and appliances, daily mean; none if left out"),
                    may(
                            "appliance-moisture",
                            power("a heat gain", "0 W", "3000 W"),
                            "latent heat of cooking and washing, daily mean; none if left out"),
                    may("walls", new Items(WALL, 1, 12), "to outdoors"),
                    may("roofs", new Items(ROOF, 1, 8), "right above the room, without an attic"),
                    may(
                            "ceiling",
                            CEILING,
                            "over the whole floor area, under an attic; none if left out"),
                    may("floor", FLOOR, "over the whole floor area; none if left out"));

    private static final Fields INFILTRATION =
            Fields.of(
                            may(
                                    "air-changes-at-50-pascals",
                                    Amount.between(
                                            AirChangeRate.class,
                                            "an air change rate",
                                            "0.3 1/h",
                                            "40 1/h"),
                                    "blower-door test"),
                            may(
                                    "leakage-area",
                                    area("an effective leakage area", "5 in2", "1500 in2"),
                                    "at 4 Pa"),
                            may(
                                    "air-changes",
                                    Amount.between(
                                            AirChangeRate.class,
                                            "an air change rate",
                                            "0.02 1/h",
                                            "5 1/h"),
                                    "held all the time"),
                            may(
                                    "shelter",
                                    new Choice(
                                            List.of(
                                                    "none",
                                                    "light",
                                                    "moderate",
                                                    "heavy",
                                                    "very-heavy")),
                                    "from wind, by trees and houses around; moderate if left out"))
                    .exactlyOneOf(
                            List.of(
                                    List.of("air-changes-at-50-pascals"),
                                    List.of("leakage-area"),
                                    List.of("air-changes")));

    private static final Fields HOUSE =
            Fields.of(
                    need("storeys", new Count(1, 3), "for stack effect"),
                    need("materials", new Items(MATERIAL, 1, 60), ""),
                    need("assemblies", new Items(ASSEMBLY, 1, 40), ""),
                    need("glazings", new Items(GLAZING, 1, 20), ""),
                    need("rooms", new Items(ROOM, 1, 40), "heated and cooled"),
                    may("spaces", new Items(SPACE, 1, 10), "neither heated nor cooled"),
                    need("infiltration", INFILTRATION, ""));

    private static final Fields BLOWER_POINT =
            Fields.of(
                    need("airflow", AIRFLOW, "standard air"),
                    need(
                            "static-pressure",
                            Amount.between(
                                    Pressure.class,
                                    "a static pressure",
                                    "0 in. w.g.",
                                    "3 in. w.g."),
                            "external, as the table states it (standard air)"),
                    need("power", power("an electric power", "20 W", "2500 W"), "of the motor"));

    private static final Fields BLOWER_SPEED =
            Fields.of(
                    need("name", new Name(), "of the speed tap"),
                    need(
                            "points",
                            new Items(BLOWER_POINT, 3, 20),
                            "rising airflow, falling pressure"));

    private static final Fields BLOWER =
            Fields.of(
                    need("running-speed", new Name(), "the tap used for cooling"),
                    need("speeds", new Items(BLOWER_SPEED, 1, 6), ""));

    private static final Fields FILTER =
            Fields.of(
                    need("what", new Words(100), "kind and size"),
                    need("clean-drop", DROP, "when new"),
                    need("found-drop", DROP, "as found, at the same airflow"),
                    may(
                            "viscous-share",
                            ratio("a share", "5 %", "100 %"),
                            "of the clean drop that is viscous; 50 % if left out, more for deep pleats"),
                    need("at-airflow", AIRFLOW, "airflow of both drops (standard air)"));

    private static final Fields COIL =
            Fields.of(
                    need("dry-drop", DROP, "with the coil dry"),
                    need("wet-drop", DROP, "with the coil wet"),
                    need("at-airflow", AIRFLOW, "airflow of both drops (standard air)"));

    private static final Fields TRUNK =
            duct(
                    need("name", new Name(), "used by what is fed from it"),
                    need("from", new Name(), "supply plenum, or the trunk piece before"));

    private static final Fields RUN =
            duct(
                    need("name", new Name(), ""),
                    need("from", new Name(), "supply plenum, or a trunk piece (its far end)"),
                    need("room", new Name(), "a name from house.rooms"),
                    need(
                            "register",
                            grille(
                                    need(
                                            "position",
                                            new Choice(List.of("open", "partly", "shut")),
                                            "as found"),
                                    may(
                                            "open-share",
                                            ratio("a share", "5 %", "95 %"),
                                            "of a partly open register; 50 % if left out")),
                            ""));

    private static final Fields RETURN =
            duct(
                    need("name", new Name(), ""),
                    need("room", new Name(), "a name from house.rooms: where its grille is"),
                    need("grille", grille(), ""));

    private static final Fields DUCTS =
            Fields.of(
                    need("blower", BLOWER, ""),
                    need("filter", FILTER, ""),
                    need("coil", COIL, ""),
                    need("trunks", new Items(TRUNK, 0, 40), "from the plenum outward; [] for none"),
                    need("runs", new Items(RUN, 1, 60), "each ends at one register"),
                    need("returns", new Items(RETURN, 1, 20), ""),
                    may(
                            "supply-leakage-at-25-pascals",
                            flow("an airflow", "1 cfm", "2000 cfm"),
                            "duct test; none if left out"),
                    may(
                            "return-leakage-at-25-pascals",
                            flow("an airflow", "1 cfm", "2000 cfm"),
                            "duct test; none if left out"),
                    may(
                            "insulation",
                            Amount.between(
                                    ThermalResistance.class,
                                    "a thermal resistance",
                                    "R-0.1",
                                    "R-20"),
                            "around the ducts; none if left out"),
                    need(
                            "place",
                            new Choice(
                                    List.of(
                                            "inside",
                                            "attic",
                                            "crawlspace",
                                            "basement",
                                            "garage",
                                            "outdoors")),
                            "where most of the ducts run"));

    private static final Fields PERFORMANCE_POINT =
            Fields.of(
                    need(
                            "entering-dry-bulb",
                            temperature("an entering dry bulb", "60 degF", "100 degF"),
                            "of the air entering the coil"),
                    need(
                            "entering-wet-bulb",
                            temperature("an entering wet bulb", "45 degF", "85 degF"),
                            "of the air entering the coil"),
                    need(
                            "outdoor-dry-bulb",
                            temperature("an outdoor dry bulb", "55 degF", "125 degF"),
                            ""),
                    need("airflow", flow("an airflow", "150 cfm", "5000 cfm"), "standard air"),
                    need("total-capacity", power("a capacity", "4000 BTU/h", "200000 BTU/h"), ""),
                    need(
                            "sensible-capacity",
                            power("a capacity", "3000 BTU/h", "200000 BTU/h"),
                            ""),
                    need(
                            "power",
                            power("an electric power", "200 W", "25000 W"),
                            "of all that the capacities are net of"),
                    may(
                            "indoor-fan-power",
                            power("an electric power", "0 W", "2500 W"),
                            "counted in the figures; none if left out (a gross table)"));

    private static final Fields UNIT =
            Fields.of(
                    need("name", new Name(), ""),
                    need(
                            "staging",
                            new Choice(List.of("single", "two-stage", "variable")),
                            "of the compressor"),
                    need(
                            "rated-capacity",
                            power("a capacity", "6000 BTU/h", "150000 BTU/h"),
                            "net total, at 95 degF outdoors, 80 degF dry and 67 degF wet bulb"
                                    + " indoors, sea level"),
                    need(
                            "sensible-heat-ratio",
                            ratio("a sensible heat ratio", "0.5 1", "0.95 1"),
                            "at that rating"),
                    need(
                            "rated-power",
                            power("an electric power", "300 W", "20000 W"),
                            "compressor and both fans, at that rating"),
                    need(
                            "rated-airflow",
                            flow("an airflow", "150 cfm", "5000 cfm"),
                            "standard air, at that rating"),
                    may(
                            "condenser-airflow",
                            ratio("a share", "20 %", "100 %"),
                            "of a clean condenser's airflow that is left; 100 % if left out"),
                    may(
                            "condenser-heat-transfer",
                            ratio("a share", "20 %", "100 %"),
                            "of a clean condenser's heat transfer that is left; 100 % if left out"),
                    may(
                            "refrigerant-charge",
                            ratio("a share", "60 %", "140 %"),
                            "of the right charge; 100 % if left out"),
                    may(
                            "performance-points",
                            new Items(PERFORMANCE_POINT, 2, 200),
                            "the maker's expanded table at sea level, full stage: the unit's model is"
                                    + " fitted to it; none if left out"),
                    may(
                            "off-cycle-power",
                            power("an electric power", "0 W", "500 W"),
                            "while the compressor is off; 1 % of the rated power if left out"),
                    may(
                            "start-up-time",
                            Amount.between(Time.class, "a time", "0 s", "600 s"),
                            "time constant of the capacity after a start; 60 s if left out"),
                    may(
                            "coil-holds",
                            Amount.between(Time.class, "a time", "1 s", "7200 s"),
                            "water on the coil, as time of its steady moisture removal; 720 s if left out"),
                    may(
                            "evaporation-ratio",
                            ratio("a ratio", "0 1", "5 1"),
                            "of that water at switch-off with the fan on, over the steady moisture"
                                    + " removal; 0.33 if left out"),
                    may(
                            "life-starts",
                            new Count(1000, 5_000_000),
                            "starts that the compressor is taken to last; wear is not counted if left out"));

    private static final Fields HEAT_PUMP =
            Fields.of(
                    need(
                            "capacity-at-47-degF",
                            power("a heating capacity", "4000 BTU/h", "200000 BTU/h"),
                            "rated, sea level"),
                    need(
                            "power-at-47-degF",
                            power("an electric power", "200 W", "25000 W"),
                            "rated, all of it"),
                    need(
                            "capacity-at-17-degF",
                            power("a heating capacity", "2000 BTU/h", "200000 BTU/h"),
                            "rated, sea level"),
                    need(
                            "power-at-17-degF",
                            power("an electric power", "200 W", "25000 W"),
                            "rated, all of it"));

    private static final Fields FURNACE =
            Fields.of(
                    need(
                            "input",
                            power("a burner input", "10000 BTU/h", "200000 BTU/h"),
                            "sea-level rating"),
                    need("efficiency", ratio("an efficiency", "50 %", "100 %"), ""));

    private static final Fields THERMOSTAT =
            Fields.of(
                    may(
                            "room",
                            new Name(),
                            "a name from house.rooms: where it hangs; the mean of all rooms if left out"),
                    need(
                            "setpoint",
                            temperature("an indoor temperature", "60 degF", "85 degF"),
                            "as found"),
                    need(
                            "differential",
                            Amount.between(
                                    TemperatureDifference.class,
                                    "a temperature difference",
                                    "0.2 degF_diff",
                                    "5 degF_diff"),
                            "between on and off"),
                    may("fan", new Choice(List.of("auto", "on")), "auto if left out"),
                    may(
                            "second-stage-differential",
                            Amount.between(
                                    TemperatureDifference.class,
                                    "a temperature difference",
                                    "0.1 degF_diff",
                                    "5 degF_diff"),
                            "above switching on, at which a two-stage unit gets its second stage;"
                                    + " 0.5 degF_diff if left out"),
                    may(
                            "second-stage-delay",
                            Amount.between(Time.class, "a time", "1 min", "24 h"),
                            "at the first stage, after which the second comes in anyway; 30 min if left"
                                    + " out"),
                    may(
                            "minimum-off-time",
                            Amount.between(Time.class, "a time", "0 min", "30 min"),
                            "of the compressor; none if left out"));

    private static final Fields TARIFF =
            Fields.of(
                    need(
                            "energy",
                            new Price("kWh"),
                            "such as 0.14 USD/kWh; outside the peak hours if there are any"),
                    may(
                            "peak-energy",
                            new Price("kWh"),
                            "in the peak hours; no peak if left out, else with peak-from and peak-to"),
                    may(
                            "peak-from",
                            new Count(0, 23),
                            "first peak hour of the day, local standard time"),
                    may("peak-to", new Count(0, 24), "hour at which the peak ends"),
                    may(
                            "peak-days",
                            new Choice(List.of("all", "weekdays")),
                            "all if left out; the design day counts as a weekday"),
                    may(
                            "demand",
                            new Price("kW"),
                            "for the month's highest hourly mean, such as 8 USD/kW; none if left out"),
                    may("fixed", new Price("month"), "such as 12 USD/month; none if left out"));

    /** The whole file. */
    static final Fields ROOT =
            Fields.of(
                    need("title", new Words(120), "of the job"),
                    need("customer", CUSTOMER, ""),
                    need("site", SITE, ""),
                    need("cooling-day", COOLING_DAY, ""),
                    need("heating-day", HEATING_DAY, ""),
                    may(
                            "climate",
                            CLIMATE,
                            "for the season's running cost; without it and without weather-file a year is"
                                    + " made from the two design days"),
                    may(
                            "weather-file",
                            new Words(300),
                            "instead of climate: path of a table of hourly weather, seen from the job"
                                    + " file's folder"),
                    need("house", HOUSE, ""),
                    need("ducts", DUCTS, ""),
                    need("unit", UNIT, ""),
                    may("furnace", FURNACE, "none if left out"),
                    may(
                            "heat-pump",
                            HEAT_PUMP,
                            "the unit's heating side, if it is a heat pump; none if left out"),
                    need("thermostat", THERMOSTAT, ""),
                    need("tariff", TARIFF, ""));

    private JobSchema() {}

    static String firstKeys() {
        return "title, customer, site, ...";
    }

    private static Key need(String name, Shape shape, String help) {
        return new Key(name, shape, true, help);
    }

    private static Key may(String name, Shape shape, String help) {
        return new Key(name, shape, false, help);
    }

    private static Amount<Length> length(String kind, String low, String high) {
        return Amount.between(Length.class, kind, low, high);
    }

    private static Amount<Area> area(String kind, String low, String high) {
        return Amount.between(Area.class, kind, low, high);
    }

    private static Amount<VolumeFlow> flow(String kind, String low, String high) {
        return Amount.between(VolumeFlow.class, kind, low, high);
    }

    private static Amount<Power> power(String kind, String low, String high) {
        return Amount.between(Power.class, kind, low, high);
    }

    private static Amount<Temperature> temperature(String kind, String low, String high) {
        return Amount.between(Temperature.class, kind, low, high);
    }

    private static Amount<Angle> angle(String kind, String low, String high) {
        return Amount.between(Angle.class, kind, low, high);
    }

    private static Amount<Dimensionless> ratio(String kind, String low, String high) {
        return Amount.between(Dimensionless.class, kind, low, high);
    }
}
