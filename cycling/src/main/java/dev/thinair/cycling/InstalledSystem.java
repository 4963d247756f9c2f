package dev.thinair.cycling;

import dev.thinair.cycling.kernel.CoilFrost;
import dev.thinair.cycling.kernel.CycleControl;
import dev.thinair.cycling.kernel.HouseDrive;
import dev.thinair.cycling.kernel.NoBalanceException;
import dev.thinair.cycling.kernel.RunRecord;
import dev.thinair.cycling.kernel.ThermostatEngine;
import dev.thinair.cycling.kernel.UnitModel;
import dev.thinair.cycling.kernel.UnitResponse;
import dev.thinair.ducts.Airflow;
import dev.thinair.ducts.DuctSystem;
import dev.thinair.ducts.OutsideBlowerTableException;
import dev.thinair.ducts.RunFlow;
import dev.thinair.ducts.WetCoil;
import dev.thinair.loads.CompiledHouse;
import dev.thinair.loads.CoolingDesignDay;
import dev.thinair.loads.HourlyWeather;
import dev.thinair.loads.kernel.OpenDoorway;
import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.psychro.kernel.Transport;
import dev.thinair.units.FlowPerCapacity;
import dev.thinair.units.QuantityText;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.util.List;
import java.util.Locale;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;

/**
 * House, ducts, unit, thermostat and site as they stand together: the thing that a service call is
 * about.
 *
 * <p>Built by {@link #builder()}; changed copies by the {@code with...} methods. The airflow is
 * found once, with the air that the return draws from the rooms; the day run is found when first
 * asked for and kept. Immutable: any thread may share it.
 *
 * <p><b>What is simplified.</b> Each room gets the share of the cooling that it gets of the supply
 * air; what the room is warmer or cooler than the others does not change its share. Air that leaks
 * into the return from outside the envelope is taken at outdoor temperature, which is too cool for
 * an attic in the sun. At a low stage the airflow falls with the displacement, but not below half,
 * and the blower's power with its cube (common practice, no source).
 */
public final class InstalledSystem {

    /** Relative humidity of the return air for which the ducts are solved. */
    private static final double RETURN_HUMIDITY = 0.5;

    private static final double TRACE_SECONDS = 300;
    private static final double DAY_TOLERANCE = 0.01;
    private static final int MOST_DAYS = 200;

    /** Longest time that the coil's ice is taken as constant while the unit runs, s. */
    private static final double ICE_SECONDS = 300;

    final Building building;
    private final Parts parts;
    private final double wanted;
    private final Airflow airflow; // null if the blower has no operating point on these ducts

    /** Why the blower has no operating point; null if it has one. */
    final String noAirflow;

    final double dryAirMassFlow;
    private final double[] sensorWeights;
    private final double[] returnWeights;
    private final double[] supplyShares;
    private final double density;
    private final double viscosity;
    private volatile DayRun day;
    private volatile IcedAirflow iced;

    /** What the with... methods change. */
    private record Parts(
            DuctSystem ducts,
            CoolingUnit unit,
            Thermostat thermostat,
            Tariff tariff,
            UnitLimits limits,
            Double wanted,
            String thermostatRoom,
            double moistureBuffer) {}

    private InstalledSystem(Building building, Parts parts) {
        this.building = building;
        this.parts = parts;
        wanted = parts.wanted == null ? parts.thermostat.setpointKelvin() : parts.wanted;
        double p = building.pressure();
        double t = parts.thermostat.setpointKelvin();
        double w = IdealMoistAir.humidityRatioFromRelativeHumidity(t, RETURN_HUMIDITY, p);
        density = IdealMoistAir.density(t, w, p);
        viscosity = Transport.viscosity(t, w, p);
        Airflow found = null;
        String why = null;
        try {
            found = parts.ducts.solve(density, viscosity);
        } catch (OutsideBlowerTableException outsideItsTable) {
            why = outsideItsTable.getMessage();
        }
        airflow = found;
        noAirflow = why;
        dryAirMassFlow =
                found == null
                        ? Double.NaN
                        : found.cubicMetresPerSecond() / IdealMoistAir.specificVolume(t, w, p);
        int n = building.modal().size();
        supplyShares = new double[n];
        if (found != null) {
            requireKnownRooms(building, found);
            supply(building, found, supplyShares);
        } else {
            spread(building, supplyShares);
        }
        // Air supplied to a room without a return finds its way to the grilles of other rooms, so
        // the return air is the mean of all rooms weighted by what each is supplied; only so does
        // the coil take out of the air what the supply puts into the rooms.
        returnWeights = supplyShares;
        if (parts.thermostatRoom == null) {
            sensorWeights = returnWeights;
        } else {
            sensorWeights = new double[n];
            sensorWeights[building.airNode(building.rooms().indexOf(parts.thermostatRoom))] = 1;
        }
    }

    private static void requireKnownRooms(Building building, Airflow flow) {
        for (RunFlow run : flow.runs()) {
            if (!building.rooms().contains(run.room())) {
                throw new IllegalArgumentException(
                        "run \""
                                + run.name()
                                + "\" serves room \""
                                + run.room()
                                + "\", which the house does not have; known are "
                                + building.rooms());
            }
        }
    }

    /** Share of the supplied air by node. */
    private static void supply(Building building, Airflow flow, double[] out) {
        double sum = 0;
        for (RunFlow run : flow.runs()) {
            if (run.isSupply()) {
                double m = Math.max(0, run.kilogramsPerSecond());
                out[building.airNode(building.rooms().indexOf(run.room()))] += m;
                sum += m;
            }
        }
        if (!(sum > 0)) {
            // All air leaks: nothing tells the rooms apart.
            spread(building, out);
            return;
        }
        for (int i = 0; i < out.length; i++) {
            out[i] /= sum;
        }
    }

    private static void spread(Building building, double[] out) {
        int rooms = building.rooms().size();
        for (int i = 0; i < rooms; i++) {
            out[building.airNode(i)] += 1.0 / rooms;
        }
    }

    /**
     * Starts a description.
     *
     * @return an empty builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * The ducts.
     *
     * @return the duct system
     */
    public DuctSystem ducts() {
        return parts.ducts;
    }

    /**
     * The cooling unit.
     *
     * @return the unit
     */
    public CoolingUnit unit() {
        return parts.unit;
    }

    /**
     * The thermostat.
     *
     * @return the thermostat
     */
    public Thermostat thermostat() {
        return parts.thermostat;
    }

    /**
     * The tariff.
     *
     * @return the tariff
     */
    public Tariff tariff() {
        return parts.tariff;
    }

    /**
     * The limits that a review holds the unit against.
     *
     * @return the limits
     */
    public UnitLimits limits() {
        return parts.limits;
    }

    /**
     * The setpoint the customer wants; the thermostat's if nothing else was said.
     *
     * @return the wanted setpoint
     */
    public Quantity<Temperature> wantedSetpoint() {
        return Units.kelvins(wanted);
    }

    /**
     * Air pressure of the site.
     *
     * @return absolute pressure
     */
    public Quantity<Pressure> pressure() {
        return Units.pascals(building.pressure());
    }

    /**
     * Names of the house's rooms.
     *
     * @return room names
     */
    public List<String> rooms() {
        return building.rooms();
    }

    /**
     * The air that the blower moves through these ducts here.
     *
     * @return flows and pressures
     * @throws OutsideBlowerTableException if the blower would have to run outside its table; the
     *     message says which end was passed
     */
    public Airflow airflow() {
        if (airflow == null) {
            throw new OutsideBlowerTableException(noAirflow);
        }
        return airflow;
    }

    /**
     * Whether the blower has an operating point on these ducts.
     *
     * @return false if it would have to run outside its table
     */
    public boolean movesAir() {
        return airflow != null;
    }

    /**
     * Actual airflow per rated capacity.
     *
     * @return volume flow at the density in the return per rated net capacity
     * @throws OutsideBlowerTableException if the blower has no operating point, see {@link
     *     #movesAir()}
     */
    public Quantity<FlowPerCapacity> airflowPerTon() {
        return Units.cubicMetresPerSecondPerWatt(airflow().cubicMetresPerSecond() / ratedWatts());
    }

    /**
     * The same mass of dry air as a flow of standard air (0.075 lb/ft3) per rated capacity: what
     * the coil feels.
     *
     * @return standard volume flow per rated net capacity
     * @throws OutsideBlowerTableException if the blower has no operating point, see {@link
     *     #movesAir()}
     */
    public Quantity<FlowPerCapacity> standardAirflowPerTon() {
        airflow();
        return Units.cubicMetresPerSecondPerWatt(
                dryAirMassFlow / CoolingUnit.STANDARD_DENSITY / ratedWatts());
    }

    double ratedWatts() {
        return Si.watts(parts.unit.ratedCapacity(), "rated capacity");
    }

    double wantedKelvin() {
        return wanted;
    }

    /** Warmest hour of the design day. */
    int designHour() {
        int best = 0;
        for (int h = 1; h < 24; h++) {
            if (building.outdoorDryBulb(h) > building.outdoorDryBulb(best)) {
                best = h;
            }
        }
        return best;
    }

    /**
     * Steady state of the unit in the warmest hour of the design day, with the air of the rooms at
     * the wanted setpoint and the humidity that the day run ends that hour with, the coil clear of
     * ice.
     *
     * @return the state of coil and compressor; heat of the blower not taken off
     * @throws NoBalanceException if the unit has no balance at these conditions
     * @throws OutsideBlowerTableException if the blower has no operating point, see {@link
     *     #movesAir()}
     */
    public UnitState unitStateAtDesign() {
        int h = designHour();
        double w = runDay().clearCoil().record().endHumidityRatio(h);
        double t = wanted;
        double leak = airflow().returnLeakFraction();
        double entering = t + leak * (building.outdoorDryBulb(h) - t);
        double enteringW = w + leak * (building.outdoorHumidityRatio(h) - w);
        enteringW =
                Math.min(
                        enteringW,
                        IdealMoistAir.saturationHumidityRatio(entering, building.pressure()));
        return parts.unit.steady(
                Units.kelvins(entering),
                Units.kilogramsPerKilogram(enteringW),
                Units.kilogramsPerSecond(dryAirMassFlow),
                Units.kelvins(building.outdoorDryBulb(h)),
                Units.pascals(building.pressure()));
    }

    /**
     * Heat taken from the rooms at full stage in the warmest hour, for a unit of this kind, with
     * another airflow if asked.
     */
    void atDesign(CoolingUnit unit, double dryFlow, double setpoint, double w, double[] out) {
        requireAirOfItsKind(unit, dryFlow, 1);
        int h = designHour();
        // Without an airflow of its own the system is taken with the unit's rated fan, no leaks.
        double share =
                dryFlow
                        / (airflow == null
                                ? Si.kilogramsPerSecond(unit.ratedMassFlow(), "rated air")
                                : dryAirMassFlow);
        double fan =
                airflow == null
                        ? Si.watts(unit.ratedIndoorFanPower(), "rated fan power")
                        : airflow.watts();
        new InstalledUnit(
                        unit.model(),
                        dryFlow,
                        building.pressure(),
                        fan * share * share * share,
                        airflow == null ? 0 : airflow.supplyLeakFraction(),
                        airflow == null ? 0 : airflow.returnLeakFraction(),
                        null)
                .at(
                        1,
                        building.outdoorDryBulb(h),
                        building.outdoorHumidityRatio(h),
                        setpoint,
                        w,
                        out);
    }

    /**
     * Load of the design day's worst hour at the wanted setpoint.
     *
     * @return sensible and latent load of the house, W
     */
    double[] peakLoad() {
        double[] s = building.sensibleLoad(wanted);
        double[] l = building.latentLoad(wanted);
        int worst = 0;
        for (int h = 1; h < 24; h++) {
            if (s[h] + l[h] > s[worst] + l[worst]) {
                worst = h;
            }
        }
        return new double[] {s[worst], l[worst], worst};
    }

    /**
     * Total load of the design day's worst hour at the wanted setpoint.
     *
     * @return sensible and latent
     */
    public Quantity<Power> designLoad() {
        double[] load = peakLoad();
        return Units.watts(load[0] + load[1]);
    }

    /**
     * The design day at the setpoint the customer wants.
     *
     * @return the run, found when first asked for
     * @throws NoBalanceException if the unit has no balance somewhere on the way
     * @throws OutsideBlowerTableException if the blower has no operating point, see {@link
     *     #movesAir()}
     */
    public DayRun runDay() {
        DayRun known = day;
        if (known == null) {
            known = runDay(wantedSetpoint());
            day = known;
        }
        return known;
    }

    /**
     * The design day at a setpoint, repeated until it repeats itself. If the coil freezes on it,
     * the day is run once more from there with ice that gathers on the coil and takes away airflow,
     * {@link DayRun#icing()}.
     *
     * @param setpoint thermostat's setpoint, 5 to 40 &deg;C
     * @return the run
     * @throws IllegalArgumentException if the setpoint is missing or out of range
     * @throws NoBalanceException if the unit has no balance somewhere on the way
     * @throws OutsideBlowerTableException if the blower has no operating point, see {@link
     *     #movesAir()}
     */
    public DayRun runDay(Quantity<Temperature> setpoint) {
        return runDay(setpoint, CoilFrost.FROST_DENSITY);
    }

    /** The design day with frost of another density, kg/m3. */
    DayRun runDay(Quantity<Temperature> setpoint, double frostDensity) {
        Thermostat set = parts.thermostat.withSetpoint(setpoint);
        double t = set.setpointKelvin();
        double p = building.pressure();
        HouseDrive drive = building.designDay(moistureCapacity());
        double start =
                Math.min(
                        building.outdoorHumidityRatio(0),
                        IdealMoistAir.humidityRatioFromRelativeHumidity(t, RETURN_HUMIDITY, p));
        CycleControl control = control(set);
        RunRecord record =
                engine().repeat(
                                drive,
                                control,
                                response(null),
                                start,
                                DAY_TOLERANCE,
                                MOST_DAYS,
                                TRACE_SECONDS);
        DayRun clear = dayRun(record, set, null);
        if (!(record.minimumCoil() < CoilFrost.FREEZING)) {
            return clear;
        }
        IceBook book = iceBook(frostDensity);
        RunRecord iced =
                engine().run(
                                drive,
                                control.withRefresh(ICE_SECONDS),
                                response(book),
                                record.endNodes(),
                                record.endHumidityRatio(23),
                                TRACE_SECONDS);
        if (book.dry()) {
            return clear;
        }
        return dayRun(iced, set, new CoilIcing(clear, book.ice(24), book.air(24)));
    }

    private DayRun dayRun(RunRecord record, Thermostat set, CoilIcing icing) {
        double t = set.setpointKelvin();
        double[] humidity = new double[24];
        double[] kilowattHours = new double[24];
        for (int h = 0; h < 24; h++) {
            humidity[h] =
                    IdealMoistAir.relativeHumidity(
                            record.meanTemperature(h),
                            record.endHumidityRatio(h),
                            building.pressure());
            kilowattHours[h] = record.electricity(h) / 3.6e6;
        }
        return new DayRun(
                record,
                new double[] {t},
                0.5 * set.differentialKelvin(),
                humidity,
                building.sensibleLoad(t),
                parts.tariff.costOfDay(kilowattHours),
                icing);
    }

    /**
     * A season: every hour of a series of weather, at the thermostat's setpoint. Begins with the
     * house held at the setpoint in the mean of the first day. Ice gathers on a coil below freezing
     * and thaws while the unit rests; where any gathers, the season is run once more with the ice
     * brought up to date at least every five minutes of a run instead of every fifteen.
     *
     * @param weather hourly weather of the site; a year of 8760 hours is billed by the tariff's
     *     months, any other length by its mean day
     * @return the run
     * @throws IllegalArgumentException if the weather is missing
     * @throws NoBalanceException if the unit has no balance somewhere on the way
     * @throws OutsideBlowerTableException if the blower has no operating point, see {@link
     *     #movesAir()}
     */
    public SeasonRun runSeason(HourlyWeather weather) {
        requireGiven(weather, "weather");
        double t = parts.thermostat.setpointKelvin();
        double p = building.pressure();
        HouseDrive drive = building.season(weather, moistureCapacity());
        CycleControl control = control(parts.thermostat);
        ThermostatEngine engine = engine();
        double start =
                Math.min(
                        Si.humidityRatio(weather.humidityRatio(0), "outdoor humidity ratio"),
                        IdealMoistAir.humidityRatioFromRelativeHumidity(t, RETURN_HUMIDITY, p));
        double[] begin = engine.heldAtSetpoint(drive, control);
        IceBook book = iceBook(CoilFrost.FROST_DENSITY);
        RunRecord record = engine.run(drive, control, response(book), begin, start, 0);
        if (!book.dry()) {
            // Ice changes faster than weather: the unit is asked more often where there is any.
            book = iceBook(CoilFrost.FROST_DENSITY);
            record =
                    engine.run(
                            drive,
                            control.withRefresh(ICE_SECONDS),
                            response(book),
                            begin,
                            start,
                            0);
        }
        return new SeasonRun(record, bill(record), book.air(record.count()), p);
    }

    private Bill bill(RunRecord record) {
        int n = record.count();
        double[] kilowattHours = new double[n];
        for (int h = 0; h < n; h++) {
            kilowattHours[h] = record.electricity(h) / 3.6e6;
        }
        if (n == 8759 || n == 8760) {
            // The year's marks bound 8759 hours: the last one is taken like the one before.
            double[] year = java.util.Arrays.copyOf(kilowattHours, 8760);
            year[8759] = year[n - 1];
            return parts.tariff.costOfYear(year);
        }
        double[] meanDay = new double[24];
        for (int h = 0; h < n; h++) {
            meanDay[h % 24] += kilowattHours[h];
        }
        double days = n / 24.0;
        for (int h = 0; h < 24; h++) {
            meanDay[h] /= days;
        }
        Bill one = parts.tariff.costOfDay(meanDay);
        return new Bill(
                days * one.energyCharge(),
                days * one.demandCharge(),
                days * one.fixedCharge(),
                one.currency());
    }

    ThermostatEngine engine() {
        return new ThermostatEngine(building.modal(), sensorWeights, returnWeights, supplyShares);
    }

    /** Refuses air that is nothing like what a unit is rated with. */
    private static void requireAirOfItsKind(CoolingUnit unit, double dryFlow, double share) {
        double rated = unit.model().ratedDryAirMassFlow();
        double least = UnitModel.LEAST_AIRFLOW * rated;
        double most = UnitModel.MOST_AIRFLOW * rated;
        boolean little = dryFlow * share < least;
        if (!little && dryFlow <= most) {
            return;
        }
        double told = little ? dryFlow * share : dryFlow;
        String message =
                String.format(
                        Locale.ROOT,
                        "dry-air mass flow over the coil is %.4g kg/s (%s of standard air)%s, but"
                                + " must be %.4g to %.4g kg/s, %.2f to %.0f times the %.4g kg/s"
                                + " (%s) that %s is rated with",
                        told,
                        standardAir(told),
                        little && share < 1 ? " at the lowest stage" : "",
                        least,
                        most,
                        UnitModel.LEAST_AIRFLOW,
                        UnitModel.MOST_AIRFLOW,
                        rated,
                        standardAir(rated),
                        unit.name());
        if (little) {
            throw new NoBalanceException(message);
        }
        throw new IllegalArgumentException(
                message
                        + "; no unit is installed so: check its rated capacity and airflow, the"
                        + " blower's table, and the units of measure of all three");
    }

    private static String standardAir(double dryAirMassFlow) {
        return QuantityText.formatIn(
                Units.cubicMetresPerSecond(dryAirMassFlow / CoolingUnit.STANDARD_DENSITY),
                Units.CUBIC_FOOT_PER_MINUTE,
                3);
    }

    /** The unit on these ducts; with a book, ice gathers on its coil. */
    private UnitResponse response(IceBook book) {
        Airflow air = airflow();
        requireAirOfItsKind(
                parts.unit, dryAirMassFlow, InstalledUnit.airflowShare(parts.unit.minimumStage()));
        return new InstalledUnit(
                parts.unit.model(),
                dryAirMassFlow,
                building.pressure(),
                air.watts(),
                air.supplyLeakFraction(),
                air.returnLeakFraction(),
                book);
    }

    private IceBook iceBook(double frostDensity) {
        return new IceBook(
                parts.unit.model(),
                dryAirMassFlow,
                parts.thermostat.fanMode() == FanMode.CONTINUOUS,
                frostDensity,
                this::icedAirflow);
    }

    private IcedAirflow icedAirflow() {
        IcedAirflow known = iced;
        if (known == null) {
            // The drop of a coil that was not described, clear and wet: common practice, no source.
            known =
                    IcedAirflow.of(
                            parts.ducts,
                            density,
                            viscosity,
                            WetCoil.of(
                                    parts.unit.ratedAirflow(),
                                    Units.inchesOfWater(0.2),
                                    Units.inchesOfWater(0.25)));
            iced = known;
        }
        return known;
    }

    double moistureCapacity() {
        double p = building.pressure();
        double t = parts.thermostat.setpointKelvin();
        return parts.moistureBuffer
                * building.airVolume()
                / IdealMoistAir.specificVolume(
                        t,
                        IdealMoistAir.humidityRatioFromRelativeHumidity(t, RETURN_HUMIDITY, p),
                        p);
    }

    CycleControl control(Thermostat set) {
        CoolingUnit unit = parts.unit;
        boolean fan = set.fanMode() == FanMode.CONTINUOUS;
        UnitModel model = unit.model();
        CycleControl.Staging staging;
        switch (unit.staging()) {
            case SINGLE:
                staging = CycleControl.Staging.SINGLE;
                break;
            case TWO_STAGE:
                staging = CycleControl.Staging.TWO;
                break;
            default:
                staging = CycleControl.Staging.VARIABLE;
        }
        return new CycleControl(
                new double[] {set.setpointKelvin()},
                set.differentialKelvin(),
                staging,
                model.minimumStage(),
                Math.max(0.05, set.secondStageDifferentialKelvin()),
                set.secondStageDelaySeconds(),
                set.minimumOffSeconds(),
                unit.startUpSeconds(),
                300,
                900,
                unit.offCycleWatts() + (fan ? airflow().watts() : 0),
                fan ? airflow().watts() : 0,
                unit.moistureHoldingSeconds(),
                fan ? unit.evaporationRatio() : 0);
    }

    /**
     * The same system with other ducts.
     *
     * @param ducts the other ducts
     * @return changed copy
     * @throws IllegalArgumentException if they are missing or serve a room that the house does not
     *     have
     */
    public InstalledSystem withDucts(DuctSystem ducts) {
        requireGiven(ducts, "ducts");
        Builder changed = toBuilder();
        changed.ducts = ducts;
        return changed.build();
    }

    /**
     * The same system with another unit.
     *
     * @param unit the other unit
     * @return changed copy
     * @throws IllegalArgumentException if it is missing
     */
    public InstalledSystem withUnit(CoolingUnit unit) {
        requireGiven(unit, "unit");
        Builder changed = toBuilder();
        changed.unit = unit;
        return changed.build();
    }

    /**
     * The same system with another thermostat. If the customer's wish was never said apart, it
     * follows the thermostat.
     *
     * @param thermostat the other thermostat
     * @return changed copy
     * @throws IllegalArgumentException if it is missing
     */
    public InstalledSystem withThermostat(Thermostat thermostat) {
        requireGiven(thermostat, "thermostat");
        Builder changed = toBuilder();
        changed.thermostat = thermostat;
        return changed.build();
    }

    /**
     * The same system for a customer who wants another setpoint.
     *
     * @param setpoint wanted setpoint, 5 to 40 &deg;C
     * @return changed copy
     * @throws IllegalArgumentException if it is missing or out of range
     */
    public InstalledSystem withWantedSetpoint(Quantity<Temperature> setpoint) {
        return toBuilder().wantedSetpoint(setpoint).build();
    }

    /**
     * The same system under another tariff.
     *
     * @param tariff the other tariff
     * @return changed copy
     * @throws IllegalArgumentException if it is missing
     */
    public InstalledSystem withTariff(Tariff tariff) {
        requireGiven(tariff, "tariff");
        Builder changed = toBuilder();
        changed.tariff = tariff;
        return changed.build();
    }

    /**
     * The same system with its unit in another state of health.
     *
     * @param faults the faults
     * @return changed copy
     * @throws IllegalArgumentException if they are missing
     */
    public InstalledSystem withFaults(UnitFaults faults) {
        return withUnit(parts.unit.withFaults(faults));
    }

    private Builder toBuilder() {
        Builder b = new Builder();
        b.building = building;
        b.ducts = parts.ducts;
        b.unit = parts.unit;
        b.thermostat = parts.thermostat;
        b.tariff = parts.tariff;
        b.limits = parts.limits;
        b.wanted = parts.wanted;
        b.thermostatRoom = parts.thermostatRoom;
        b.moistureBuffer = parts.moistureBuffer;
        return b;
    }

    private static double wish(Quantity<Temperature> setpoint) {
        double t = Si.kelvins(setpoint, "wanted setpoint");
        Range.require("wanted setpoint", t, 278.15, 313.15, "K");
        return t;
    }

    private static void requireGiven(Object o, String name) {
        if (o == null) {
            throw new IllegalArgumentException(name + " must not be null");
        }
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "installed system: %s, %s, wanted %s, site %s",
                parts.unit.name(),
                moves(),
                QuantityText.formatIn(wantedSetpoint(), Units.CELSIUS, 3),
                QuantityText.formatIn(pressure(), Units.KILOPASCAL, 3));
    }

    private String moves() {
        return airflow == null
                ? "no operating point of the blower"
                : QuantityText.formatIn(airflow.actual(), Units.CUBIC_FOOT_PER_MINUTE, 3)
                        + " ("
                        + QuantityText.formatIn(
                                standardAirflowPerTon(), Units.CUBIC_FOOT_PER_MINUTE_PER_TON, 3)
                        + " of standard air)";
    }

    /** Builder of a system. */
    public static final class Builder {

        private Building building;
        private CompiledHouse house;
        private CoolingDesignDay designDay;
        private double contents = 1;
        private DuctSystem ducts;
        private CoolingUnit unit;
        private Thermostat thermostat;
        private Tariff tariff;
        private UnitLimits limits = UnitLimits.standard();
        private Double wanted;
        private String thermostatRoom;
        private double moistureBuffer = 10;
        private double[] doorway = {0.8, 2.0};

        private Builder() {}

        Builder building(Building b) {
            building = b;
            return this;
        }

        /**
         * The house on its site.
         *
         * @param value the compiled house
         * @return this builder
         */
        public Builder house(CompiledHouse value) {
            house = value;
            return this;
        }

        /**
         * The design day of the cooling season.
         *
         * @param value the day, at the house's site
         * @return this builder
         */
        public Builder designDay(CoolingDesignDay value) {
            designDay = value;
            return this;
        }

        /**
         * How many times the heat capacity of air and furniture that the house's description gives
         * its rooms ({@code Room}, 10 kJ/(m2 K) of floor unless said) moves with the air. The
         * default is 1; walls, floors and ceilings are in the network besides. It decides how often
         * a thermostat switches.
         *
         * @param times multiple of the rooms' own heat capacity, in [1, 50]
         * @return this builder
         * @throws IllegalArgumentException if out of range
         */
        public Builder contents(double times) {
            Range.require("contents", times, 1, 50, "times the rooms' own heat capacity");
            contents = times;
            return this;
        }

        /**
         * The ducts.
         *
         * @param value the ducts; rooms are told apart by name
         * @return this builder
         */
        public Builder ducts(DuctSystem value) {
            ducts = value;
            return this;
        }

        /**
         * The cooling unit.
         *
         * @param value the unit, with its faults
         * @return this builder
         */
        public Builder unit(CoolingUnit value) {
            unit = value;
            return this;
        }

        /**
         * The thermostat.
         *
         * @param value the thermostat
         * @return this builder
         */
        public Builder thermostat(Thermostat value) {
            thermostat = value;
            return this;
        }

        /**
         * The tariff.
         *
         * @param value the tariff
         * @return this builder
         */
        public Builder tariff(Tariff value) {
            tariff = value;
            return this;
        }

        /**
         * Limits for the review; the usual ones if not said.
         *
         * @param value the limits
         * @return this builder
         */
        public Builder limits(UnitLimits value) {
            limits = value;
            return this;
        }

        /**
         * The setpoint that the customer wants; the thermostat's if not said.
         *
         * @param value wanted setpoint, 5 to 40 &deg;C
         * @return this builder
         * @throws IllegalArgumentException if it is missing or out of range
         */
        public Builder wantedSetpoint(Quantity<Temperature> value) {
            wanted = wish(value);
            return this;
        }

        /**
         * The room with the thermostat; if not said, the thermostat feels the return air.
         *
         * @param value a room of the house
         * @return this builder
         */
        public Builder thermostatRoom(String value) {
            thermostatRoom = value;
            return this;
        }

        /**
         * How many times the mass of the air the house's moisture stands for: furnishings take up
         * and give off water with it. The default is 10 (common practice, no source; values of 1 to
         * 25 are in use).
         *
         * @param times multiple of the air's mass, in [1, 100]
         * @return this builder
         * @throws IllegalArgumentException if out of range
         */
        public Builder moistureBuffer(double times) {
            Range.require("moisture buffer", times, 1, 100, "times the air's mass");
            moistureBuffer = times;
            return this;
        }

        /**
         * Doors inside stand open: each room exchanges air with the thermostat's room (the largest
         * room if none is named) through a doorway, by the warm air above and the cool air below.
         * The heat is reckoned as a conductance that holds at 1 K difference, which is too little
         * for larger ones. The default is one open doorway of 0.8 m by 2.0 m for each room (common
         * practice, no source).
         *
         * @param width of each doorway, in (0, 10] m
         * @param height of each doorway, in (0, 5] m
         * @return this builder
         * @throws IllegalArgumentException if missing or out of range
         */
        public Builder doorsOpen(Quantity<Length> width, Quantity<Length> height) {
            double w = Si.metres(width, "doorway width");
            double h = Si.metres(height, "doorway height");
            OpenDoorway.volumeFlow(w, h, 1, 297.15);
            doorway = new double[] {w, h};
            return this;
        }

        /**
         * Doors inside are shut: rooms exchange heat through partitions only.
         *
         * @return this builder
         */
        public Builder doorsShut() {
            doorway = null;
            return this;
        }

        /**
         * Builds the system and finds its airflow. Ducts on which the blower has no operating point
         * are accepted, so that a review can say so; see {@link InstalledSystem#movesAir()}.
         *
         * @return the system
         * @throws IllegalArgumentException if a part is missing, or ducts or thermostat name a room
         *     that the house does not have
         */
        public InstalledSystem build() {
            if (building == null) {
                requireGiven(house, "house");
                requireGiven(designDay, "design day");
            }
            requireGiven(ducts, "ducts");
            requireGiven(unit, "unit");
            requireGiven(thermostat, "thermostat");
            requireGiven(tariff, "tariff");
            requireGiven(limits, "limits");
            Building where =
                    building == null
                            ? new HouseOnSite(house, designDay, contents, doorway, thermostatRoom)
                            : building;
            if (thermostatRoom != null && !where.rooms().contains(thermostatRoom)) {
                throw new IllegalArgumentException(
                        "thermostat is in room \""
                                + thermostatRoom
                                + "\", which the house does not have; known are "
                                + where.rooms());
            }
            return new InstalledSystem(
                    where,
                    new Parts(
                            ducts,
                            unit,
                            thermostat,
                            tariff,
                            limits,
                            wanted,
                            thermostatRoom,
                            moistureBuffer));
        }
    }
}
