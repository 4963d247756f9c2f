package dev.thinair.loads;

import dev.thinair.loads.kernel.GroundContact;
import dev.thinair.loads.kernel.OutdoorHours;
import dev.thinair.loads.kernel.ResidentialLoadFactor;
import dev.thinair.loads.kernel.ResidentialLoadFactor.Facing;
import dev.thinair.loads.kernel.ResidentialLoadFactor.OpaquePart;
import dev.thinair.loads.kernel.VentilationAir;
import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.units.HumidityRatio;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.TemperatureDifference;
import dev.thinair.units.ThermalConductance;
import dev.thinair.units.ThermalConductivity;
import dev.thinair.units.ThermalResistance;
import dev.thinair.units.ThermalTransmittance;
import dev.thinair.units.Units;
import dev.thinair.units.VolumeFlow;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Temperature;

/**
 * The load of a house by the handbook's quick residential load factors: one multiplication a
 * component, for class and for a check by hand. It is a regression over light frame houses, held to
 * its limits: latitude (size) 20 to 60 degrees; the air factors are scaled by pressure, so that
 * elevation does not break them.
 *
 * <p>Loads are those of the house as a whole: cooling at its peak, heating in steady design. See
 * {@link ResidentialLoadFactor} for the formulas, their source and the misprints of the source.
 * Immutable.
 */
public final class FactorLoad {

    /**
     * One component.
     *
     * @param name what it is
     * @param area m2; 0 where there is none
     * @param coolingFactor W/m2; 0 where there is no area
     * @param heatingFactor W/m2; 0 where there is no area
     * @param cooling sensible cooling load, W
     * @param heating heating load, W
     */
    public record Line(
            String name,
            double area,
            double coolingFactor,
            double heatingFactor,
            double cooling,
            double heating) {}

    private final List<Line> lines;
    private final double envelopeCooling;
    private final double envelopeHeating;
    private final double sensible;
    private final double latent;
    private final double heating;

    private FactorLoad(
            List<Line> lines,
            double envelopeCooling,
            double envelopeHeating,
            double sensible,
            double latent,
            double heating) {
        this.lines = List.copyOf(lines);
        this.envelopeCooling = envelopeCooling;
        this.envelopeHeating = envelopeHeating;
        this.sensible = sensible;
        this.latent = latent;
        this.heating = heating;
    }

    /**
     * Begins a hand calculation.
     *
     * @param site where; its latitude must be 20 to 60 degrees north or south
     * @return builder
     */
    public static Builder at(Site site) {
        return new Builder(Objects.requireNonNull(site, "site"));
    }

    /**
     * The factor load of a described house. Its surfaces become the method's parts: outer walls and
     * doors in the sun, roofs, ceilings under unconditioned spaces, floors over crawl spaces or
     * open air, slabs by their edge (under carpet, 0.21 m2 K/W, as in the method's worked house),
     * other ground contact with its own conductance in winter and nothing in summer. Internal gains
     * are the method's own, by floor area and the number of people described.
     *
     * @param house house
     * @param cooling summer design
     * @param heating winter design
     * @param indoorCooling indoor temperature in summer
     * @param indoorHeating indoor temperature in winter
     * @return the load; indoor moisture as at 50 percent relative humidity
     * @throws IllegalArgumentException if the latitude is outside the method
     */
    public static FactorLoad of(
            House house,
            CoolingDesignDay cooling,
            HeatingDesignDay heating,
            Quantity<Temperature> indoorCooling,
            Quantity<Temperature> indoorHeating) {
        return FactorSurvey.of(house, cooling, heating, indoorCooling, indoorHeating).build();
    }

    /**
     * Components, in the order they were given, then air and gains.
     *
     * @return lines
     */
    public List<Line> lines() {
        return lines;
    }

    /**
     * Sensible cooling load of the envelope alone.
     *
     * @return load
     */
    public Quantity<Power> envelopeCooling() {
        return Units.watts(envelopeCooling);
    }

    /**
     * Heating load of the envelope alone.
     *
     * @return load
     */
    public Quantity<Power> envelopeHeating() {
        return Units.watts(envelopeHeating);
    }

    /**
     * Sensible cooling load with air, gains and ducts.
     *
     * @return load
     */
    public Quantity<Power> sensibleCooling() {
        return Units.watts(sensible);
    }

    /**
     * Latent cooling load.
     *
     * @return load
     */
    public Quantity<Power> latentCooling() {
        return Units.watts(latent);
    }

    /**
     * Heating load with air and ducts.
     *
     * @return load
     */
    public Quantity<Power> heating() {
        return Units.watts(heating);
    }

    /**
     * The load as a table to check by hand.
     *
     * @return lines separated by {@code \n}
     */
    public String table() {
        StringBuilder out = new StringBuilder();
        out.append(
                String.format(
                        Locale.ROOT,
                        "%-28s %9s %9s %9s %9s %9s%n",
                        "component",
                        "area m2",
                        "cool W/m2",
                        "heat W/m2",
                        "cool W",
                        "heat W"));
        for (Line line : lines) {
            out.append(
                    String.format(
                            Locale.ROOT,
                            "%-28s %9.2f %9.2f %9.2f %9.0f %9.0f%n",
                            line.name(),
                            line.area(),
                            line.coolingFactor(),
                            line.heatingFactor(),
                            line.cooling(),
                            line.heating()));
        }
        out.append(
                String.format(
                        Locale.ROOT,
                        "%-28s %39s %9.0f%n%-28s %39.0f%n",
                        "sensible with ducts",
                        String.format(Locale.ROOT, "%.0f", sensible),
                        heating,
                        "latent",
                        latent));
        return out.toString().replace(System.lineSeparator(), "\n");
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "factor load: cooling %.0f W sensible and %.0f W latent, heating %.0f W",
                sensible,
                latent,
                heating);
    }

    /** Collects the components of a hand calculation; not for sharing between threads. */
    public static final class Builder {

        private final Site site;
        private final List<Line> lines = new ArrayList<>();
        private double coolingDifference = Double.NaN;
        private double dailyRange;
        private double heatingDifference = Double.NaN;
        private double heatingIndoor;
        private boolean detached = true;
        private double leakageArea;
        private double stackHeight = 2.5;
        private double flueArea;
        private double fixedCoolingFlow = Double.NaN;
        private double fixedHeatingFlow = Double.NaN;
        private Ventilation ventilation = Ventilation.none();
        private double floorArea;
        private double occupants;
        private double humidityDifference;
        private double coolingDucts;
        private double heatingDucts;

        private Builder(Site site) {
            this.site = site;
            ResidentialLoadFactor.peakHorizontalTotal(site.latitudeRadians());
        }

        /**
         * Summer design.
         *
         * @param outdoor design dry bulb
         * @param range daily range
         * @param indoor indoor temperature
         * @return this
         * @throws IllegalArgumentException if a value is not finite or outside its range
         */
        public Builder cooling(
                Quantity<Temperature> outdoor,
                Quantity<TemperatureDifference> range,
                Quantity<Temperature> indoor) {
            coolingDifference =
                    Si.kelvins(outdoor, "outdoor cooling design")
                            - Si.kelvins(indoor, "indoor cooling design");
            Range.require("cooling design difference", coolingDifference, -50, 50, "K");
            dailyRange = Si.kelvinDifference(range, "daily range");
            Range.require("daily range", dailyRange, 0, 45, "K");
            return this;
        }

        /**
         * Winter design.
         *
         * @param outdoor design dry bulb
         * @param indoor indoor temperature
         * @return this
         * @throws IllegalArgumentException if a value is not finite or outside its range
         */
        public Builder heating(Quantity<Temperature> outdoor, Quantity<Temperature> indoor) {
            heatingIndoor = Si.kelvins(indoor, "indoor heating design");
            heatingDifference = heatingIndoor - Si.kelvins(outdoor, "outdoor heating design");
            Range.require("heating design difference", heatingDifference, 0, 100, "K");
            return this;
        }

        /**
         * An attached house, which other solar load factors hold for.
         *
         * @return this
         */
        public Builder attached() {
            detached = false;
            return this;
        }

        /**
         * An opaque part.
         *
         * @param name what it is
         * @param part kind of part
         * @param area net area
         * @param uFactor with films
         * @param roofAbsorptance solar absorptance of the roof; not used by walls and floors
         * @return this
         * @throws IllegalStateException if the designs are not given yet
         * @throws IllegalArgumentException if a value is not finite or outside its range
         */
        public Builder opaque(
                String name,
                OpaquePart part,
                Quantity<Area> area,
                Quantity<ThermalTransmittance> uFactor,
                Quantity<Dimensionless> roofAbsorptance) {
            requireDesigns();
            double a = Si.squareMetres(area, "area of " + name);
            double u = Si.wattsPerSquareMetreKelvin(uFactor, "U-factor of " + name);
            double alpha = Si.ratio(roofAbsorptance, "roof absorptance");
            return factors(
                    name,
                    a,
                    ResidentialLoadFactor.opaqueCooling(
                            u, coolingDifference, dailyRange, part, alpha),
                    u * heatingDifference);
        }

        /**
         * A window with its own screen, shade and overhang.
         *
         * @param window window
         * @param azimuth direction it faces, from north, clockwise
         * @param tilt from the horizontal; below 60 degrees it counts as a skylight
         * @return this
         * @throws IllegalStateException if the designs are not given yet
         * @throws IllegalArgumentException if a value is not finite or outside its range
         */
        public Builder window(Window window, Quantity<Angle> azimuth, Quantity<Angle> tilt) {
            return window(window, azimuth, tilt, Units.ratio(window.screenTransmission()));
        }

        /**
         * A window with its own shade and overhang, behind another screen than its own.
         *
         * @param window window
         * @param azimuth direction it faces, from north, clockwise
         * @param tilt from the horizontal; below 60 degrees it counts as a skylight
         * @param exteriorTransmission of a screen outside, in [0, 1]; 1 for none
         * @return this
         * @throws IllegalStateException if the designs are not given yet
         * @throws IllegalArgumentException if a value is not finite or outside its range
         */
        public Builder window(
                Window window,
                Quantity<Angle> azimuth,
                Quantity<Angle> tilt,
                Quantity<Dimensionless> exteriorTransmission) {
            requireDesigns();
            double latitude = site.latitudeRadians();
            double facingAngle = Si.radians(azimuth, "azimuth");
            boolean skylight = Si.radians(tilt, "tilt") < Math.PI / 3;
            double total;
            double diffuse;
            double shaded = 0;
            Facing facing;
            if (skylight) {
                facing = Facing.HORIZONTAL;
                total = ResidentialLoadFactor.peakHorizontalTotal(latitude);
                diffuse = ResidentialLoadFactor.peakHorizontalDiffuse(latitude);
            } else {
                facing = Facing.nearest(facingAngle, latitude);
                double exposure = ResidentialLoadFactor.exposure(facingAngle, latitude);
                total = ResidentialLoadFactor.peakTotal(exposure, latitude);
                diffuse = ResidentialLoadFactor.peakDiffuse(exposure, latitude);
                shaded =
                        ResidentialLoadFactor.shadedFraction(
                                ResidentialLoadFactor.shadeLineFactor(facing, latitude),
                                window.overhang().depth(),
                                window.overhang().gap(),
                                Si.metres(window.height(), "window height"));
            }
            double irradiance =
                    ResidentialLoadFactor.peakExteriorIrradiance(
                            Si.ratio(exteriorTransmission, "exterior transmission"),
                            diffuse,
                            total - diffuse,
                            shaded);
            return factors(
                    "window " + window.name(),
                    window.squareMetres(),
                    ResidentialLoadFactor.windowCooling(
                            window.transmittance(),
                            coolingDifference,
                            dailyRange,
                            irradiance,
                            window.glazing().normal(),
                            window.shade().beam(),
                            ResidentialLoadFactor.solarLoadFactor(facing, detached)),
                    window.transmittance() * heatingDifference);
        }

        /**
         * A slab on grade: it cools in summer and loses heat at its edge in winter.
         *
         * @param name what it is
         * @param area of the floor
         * @param cover resistance of the floor cover
         * @param edgeFactor Fp
         * @param perimeter exposed
         * @return this
         * @throws IllegalStateException if the designs are not given yet
         * @throws IllegalArgumentException if a value is not finite or outside its range
         */
        public Builder slab(
                String name,
                Quantity<Area> area,
                Quantity<ThermalResistance> cover,
                Quantity<ThermalConductivity> edgeFactor,
                Quantity<Length> perimeter) {
            requireDesigns();
            double a = Si.squareMetres(area, "area of " + name);
            Range.requireAbove("area of " + name, a, 0, "m2");
            double loss =
                    GroundContact.slabEdgeLoss(
                            Si.wattsPerMetreKelvin(edgeFactor, "edge factor"),
                            Si.metres(perimeter, "exposed perimeter"),
                            heatingDifference);
            return factors(
                    name,
                    a,
                    ResidentialLoadFactor.slabCooling(
                            Si.squareMetreKelvinsPerWatt(cover, "resistance of the floor cover")),
                    loss / a);
        }

        /**
         * Other contact with the ground, which matters in winter alone.
         *
         * @param name what it is
         * @param conductance between room and ground
         * @param ground temperature beyond it in winter
         * @return this
         * @throws IllegalStateException if the designs are not given yet
         * @throws IllegalArgumentException if a value is not finite
         */
        public Builder belowGrade(
                String name,
                Quantity<ThermalConductance> conductance,
                Quantity<Temperature> ground) {
            requireDesigns();
            double loss =
                    Si.wattsPerKelvin(conductance, "conductance of " + name)
                            * (heatingIndoor - Si.kelvins(ground, "ground temperature"));
            lines.add(new Line(name, 0, 0, 0, 0, loss));
            return this;
        }

        /**
         * Leakage, driven by the method's stack and wind at 3.4 m/s in summer and 6.7 in winter.
         *
         * @param area effective leakage area at 4 Pa
         * @param height mean stack height
         * @param flue effective leakage area of open flues, part of the leakage area
         * @return this
         * @throws IllegalArgumentException if a value is not finite or outside its range
         */
        public Builder infiltration(
                Quantity<Area> area, Quantity<Length> height, Quantity<Area> flue) {
            leakageArea = Si.squareMetres(area, "leakage area");
            Range.require("leakage area", leakageArea, 0, 10, "m2");
            stackHeight = Si.metres(height, "stack height");
            flueArea = Si.squareMetres(flue, "flue leakage area");
            Range.require("flue leakage area", flueArea, 0, leakageArea, "m2");
            fixedCoolingFlow = Double.NaN;
            return this;
        }

        /**
         * Infiltration flows known by other means.
         *
         * @param summer flow at the summer design
         * @param winter flow at the winter design
         * @return this
         * @throws IllegalArgumentException if a flow is not finite or outside [0, 10] m3/s
         */
        public Builder infiltration(Quantity<VolumeFlow> summer, Quantity<VolumeFlow> winter) {
            fixedCoolingFlow = Si.cubicMetresPerSecond(summer, "summer infiltration");
            fixedHeatingFlow = Si.cubicMetresPerSecond(winter, "winter infiltration");
            Range.require("summer infiltration", fixedCoolingFlow, 0, 10, "m3/s");
            Range.require("winter infiltration", fixedHeatingFlow, 0, 10, "m3/s");
            return this;
        }

        /**
         * Mechanical ventilation.
         *
         * @param value ventilation
         * @return this
         */
        public Builder ventilation(Ventilation value) {
            ventilation = Objects.requireNonNull(value, "ventilation");
            return this;
        }

        /**
         * Who lives there, for the method's internal gains.
         *
         * @param area conditioned floor area
         * @param people number
         * @return this
         * @throws IllegalArgumentException if a value is not finite or outside its range
         */
        public Builder people(Quantity<Area> area, double people) {
            floorArea = Si.squareMetres(area, "floor area");
            occupants = people;
            ResidentialLoadFactor.internalSensible(floorArea, occupants);
            return this;
        }

        /**
         * Summer moisture outdoors and indoors, for the latent load of outdoor air.
         *
         * @param outdoor outdoor humidity ratio
         * @param indoor indoor humidity ratio
         * @return this
         * @throws IllegalArgumentException if a value is not finite
         */
        public Builder moisture(Quantity<HumidityRatio> outdoor, Quantity<HumidityRatio> indoor) {
            humidityDifference =
                    Si.humidityRatio(outdoor, "outdoor humidity ratio")
                            - Si.humidityRatio(indoor, "indoor humidity ratio");
            Range.require("humidity ratio difference", humidityDifference, -0.1, 0.1, "kg/kg");
            return this;
        }

        /**
         * Losses of the ducts as shares of the load.
         *
         * @param cooling Fdl in summer, in [0, 5]
         * @param heating Fdl in winter, in [0, 5]
         * @return this
         * @throws IllegalArgumentException if a share is not finite or outside its range
         */
        public Builder ducts(Quantity<Dimensionless> cooling, Quantity<Dimensionless> heating) {
            coolingDucts = Si.ratio(cooling, "distribution loss factor, cooling");
            heatingDucts = Si.ratio(heating, "distribution loss factor, heating");
            Range.require("distribution loss factor, cooling", coolingDucts, 0, 5, "-");
            Range.require("distribution loss factor, heating", heatingDucts, 0, 5, "-");
            return this;
        }

        /**
         * Adds the load up.
         *
         * @return the load
         * @throws IllegalStateException if the designs are not given
         */
        public FactorLoad build() {
            requireDesigns();
            List<Line> all = new ArrayList<>(lines);
            double cool = 0;
            double heat = 0;
            for (Line line : lines) {
                cool += line.cooling();
                heat += line.heating();
            }
            double pressure = site.pascals();
            double summerFlow = air(false, coolingDifference);
            double winterFlow = air(true, heatingDifference);
            double airCooling =
                    VentilationAir.sensible(
                            summerFlow,
                            ventilation.balanced(),
                            ventilation.sensibleEffectiveness(),
                            coolingDifference,
                            pressure);
            double airHeating =
                    VentilationAir.sensible(
                            winterFlow,
                            ventilation.balanced(),
                            ventilation.sensibleEffectiveness(),
                            heatingDifference,
                            pressure);
            double airLatent =
                    VentilationAir.latent(
                            summerFlow,
                            ventilation.balanced(),
                            ventilation.latentEffectiveness(),
                            humidityDifference,
                            pressure);
            all.add(new Line("infiltration and ventilation", 0, 0, 0, airCooling, airHeating));
            double gains =
                    floorArea == 0 && occupants == 0
                            ? 0
                            : ResidentialLoadFactor.internalSensible(floorArea, occupants);
            double moist =
                    floorArea == 0 && occupants == 0
                            ? 0
                            : ResidentialLoadFactor.internalLatent(floorArea, occupants);
            all.add(new Line("internal gains", 0, 0, 0, gains, 0));
            return new FactorLoad(
                    all,
                    cool,
                    heat,
                    ResidentialLoadFactor.withDucts(cool + airCooling + gains, coolingDucts),
                    Math.max(0, airLatent) + moist,
                    ResidentialLoadFactor.withDucts(heat + airHeating, heatingDucts));
        }

        private double air(boolean winter, double difference) {
            double leak;
            if (!Double.isNaN(fixedCoolingFlow)) {
                leak = winter ? fixedHeatingFlow : fixedCoolingFlow;
            } else if (leakageArea == 0) {
                leak = 0;
            } else {
                leak =
                        leakageArea
                                * ResidentialLoadFactor.infiltrationDrivingForce(
                                        winter, stackHeight, difference, flueArea / leakageArea);
            }
            return VentilationAir.total(leak, ventilation.unbalanced(), ventilation.balanced());
        }

        private Builder factors(
                String name, double area, double coolingFactor, double heatingFactor) {
            Range.require("area of " + name, area, 0, 1e5, "m2");
            lines.add(
                    new Line(
                            name,
                            area,
                            coolingFactor,
                            heatingFactor,
                            area * coolingFactor,
                            area * heatingFactor));
            return this;
        }

        private void requireDesigns() {
            if (Double.isNaN(coolingDifference) || Double.isNaN(heatingDifference)) {
                throw new IllegalStateException(
                        "factor load needs its cooling and heating design before its components");
            }
        }
    }

    /** Reads a described house into the method's parts. */
    private static final class FactorSurvey {

        private static final double CARPET = 0.21;

        private FactorSurvey() {}

        static Builder of(
                House house,
                CoolingDesignDay cooling,
                HeatingDesignDay heating,
                Quantity<Temperature> indoorCooling,
                Quantity<Temperature> indoorHeating) {
            OutdoorHours hours = cooling.outdoorHours();
            double low = hours.dryBulb(0);
            int hottest = 0;
            for (int h = 1; h < 24; h++) {
                low = Math.min(low, hours.dryBulb(h));
                if (hours.dryBulb(h) > hours.dryBulb(hottest)) {
                    hottest = h;
                }
            }
            double high = hours.dryBulb(hottest);
            double inside = Si.kelvins(indoorCooling, "indoor cooling design");
            Builder b =
                    at(cooling.site())
                            .cooling(
                                    Units.kelvins(high),
                                    Units.kelvinDifference(high - low),
                                    indoorCooling)
                            .heating(heating.dryBulb(), indoorHeating)
                            .moisture(
                                    Units.kilogramsPerKilogram(hours.humidityRatio(hottest)),
                                    Units.kilogramsPerKilogram(
                                            IdealMoistAir.humidityRatioFromRelativeHumidity(
                                                    inside, 0.5, hours.pressure())))
                            .ducts(Units.ratio(house.ductGain()), Units.ratio(house.ductLoss()))
                            .ventilation(house.ventilation());
            double floor = 0;
            double people = 0;
            for (Room room : house.rooms()) {
                if (room.conditioned()) {
                    floor += room.floorSquareMetres();
                    for (InternalGain gain : room.gains()) {
                        people += gain instanceof Occupants o ? o.count() : 0;
                    }
                }
                for (Surface s : room.surfaces()) {
                    surface(b, house, room, s, heating);
                }
            }
            leaks(b, house, cooling, heating, inside, indoorHeating);
            return b.people(Units.squareMetres(floor), people);
        }

        private static void leaks(
                Builder b,
                House house,
                CoolingDesignDay cooling,
                HeatingDesignDay heating,
                double inside,
                Quantity<Temperature> indoorHeating) {
            Infiltration leak = house.infiltration();
            if (leak instanceof Infiltration.BlowerDoor door) {
                b.infiltration(
                        door.effectiveLeakageArea(),
                        Units.metres(2.5 * door.exposure().stories()),
                        Units.squareMetres(0));
            } else if (leak instanceof Infiltration.LeakageArea area) {
                b.infiltration(
                        Units.squareMetres(area.area()),
                        Units.metres(2.5 * area.exposure().stories()),
                        Units.squareMetres(0));
            } else {
                b.infiltration(
                        Units.cubicMetresPerSecond(
                                leak.volumeFlow(
                                        inside,
                                        Si.kelvins(cooling.dryBulb(), "dry bulb"),
                                        3.4,
                                        cooling.site().pascals())),
                        Units.cubicMetresPerSecond(
                                leak.volumeFlow(
                                        Si.kelvins(indoorHeating, "indoor heating design"),
                                        heating.kelvins(),
                                        6.7,
                                        heating.pascals())));
            }
        }

        private static void surface(
                Builder b, House house, Room room, Surface s, HeatingDesignDay heating) {
            Adjacency beyond = s.adjacency();
            if (beyond instanceof Adjacency.Space space) {
                Room other = house.room(space.space());
                if (room.conditioned() == other.conditioned()) {
                    return;
                }
                between(b, room.conditioned() ? other : room, room.conditioned(), s);
                return;
            }
            if (!room.conditioned()) {
                return;
            }
            for (Window w : s.windows()) {
                b.window(w, s.azimuth(), s.tilt());
            }
            for (Door d : s.doors()) {
                b.opaque(
                        d.name(),
                        OpaquePart.SUNLIT_WALL_OR_DOOR,
                        d.area(),
                        d.uFactor(),
                        Units.ratio(d.absorptance()));
            }
            if (beyond instanceof Adjacency.Outdoors) {
                OpaquePart part =
                        switch (s.kind()) {
                            case ROOF, CEILING -> OpaquePart.CEILING_ROOF;
                            case FLOOR -> OpaquePart.FLOOR_OVER_AMBIENT;
                            default -> OpaquePart.SUNLIT_WALL_OR_DOOR;
                        };
                b.opaque(
                        s.name(),
                        part,
                        s.netArea(),
                        Units.wattsPerSquareMetreKelvin(
                                1 / s.assembly().totalResistance(0.12, 0.03)),
                        Units.ratio(s.solarAbsorptance()));
            } else if (beyond instanceof Adjacency.Earth earth) {
                ground(b, s, earth.ground(), heating);
            }
        }

        private static void between(Builder b, Room space, boolean seenFromRoom, Surface s) {
            boolean ceiling =
                    seenFromRoom
                            ? s.kind() == Surface.Kind.CEILING || s.kind() == Surface.Kind.ROOF
                            : s.kind() == Surface.Kind.FLOOR;
            boolean floor =
                    seenFromRoom
                            ? s.kind() == Surface.Kind.FLOOR
                            : s.kind() == Surface.Kind.CEILING;
            double absorptance = 0.85;
            for (Surface roof : space.surfaces()) {
                if (roof.kind() == Surface.Kind.ROOF) {
                    absorptance = roof.solarAbsorptance();
                }
            }
            b.opaque(
                    s.name(),
                    ceiling
                            ? OpaquePart.CEILING_UNDER_ATTIC
                            : floor
                                    ? OpaquePart.FLOOR_OVER_CRAWL_SPACE
                                    : OpaquePart.SHADED_WALL_OR_DOOR,
                    s.netArea(),
                    Units.wattsPerSquareMetreKelvin(1 / s.assembly().totalResistance(0.12, 0.12)),
                    Units.ratio(absorptance));
        }

        private static void ground(Builder b, Surface s, Ground ground, HeatingDesignDay heating) {
            if (ground instanceof Ground.SlabEdge edge) {
                b.slab(
                        s.name(),
                        s.netArea(),
                        Units.squareMetreKelvinsPerWatt(CARPET),
                        Units.wattsPerMetreKelvin(edge.edgeFactor()),
                        Units.metres(edge.perimeter()));
            } else {
                b.belowGrade(
                        s.name(),
                        Units.wattsPerKelvin(
                                ground.conductance(
                                        s.netSquareMetres(),
                                        s.assembly().squareMetreKelvinsPerWatt())),
                        Units.kelvins(
                                ground.boundaryTemperature(
                                        heating.kelvins(), heating.groundKelvins())));
            }
        }
    }
}
