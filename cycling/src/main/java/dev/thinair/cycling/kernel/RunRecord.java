package dev.thinair.cycling.kernel;

import java.util.Arrays;

/**
 * What the event engine found, interval by interval (an interval is an hour unless the drive says
 * otherwise). Filled by {@link ThermostatEngine}; a finished record does not change.
 *
 * <p>Times are seconds from the start of the run.
 */
public final class RunRecord {

    final double interval;
    final int count;
    final double[] onSeconds;
    final int[] starts;
    final double[] meanTemperature;
    final double[] endTemperature;
    final double[] maximumTemperature;
    final double[] minimumTemperature;
    final double[] endHumidityRatio;
    final double[] delivered;
    final double[] steady;
    final double[] electricity;
    final double[] above;
    final double[] removedWater;
    final double[] coil;
    double[] events = new double[64];
    boolean[] eventOn = new boolean[64];
    int eventCount;
    double longestRun;
    double shortestRun = Double.POSITIVE_INFINITY;
    int completedRuns;
    double minimumCoil = Double.POSITIVE_INFINITY;
    double minimumSuction = Double.POSITIVE_INFINITY;
    double heatIn;
    double heatLost;
    double heatStored;
    double waterIn;
    double waterStored;
    double condensedWater;
    double evaporatedWater;
    double drainedWater;
    double retainedWater;
    double[] endNodes;
    double[] traceTime = new double[0];
    double[] traceTemperature = new double[0];
    double[] traceHumidityRatio = new double[0];
    int repeatedDays = 1;
    boolean repeats = true;
    double repeatError;

    RunRecord(int count, double interval) {
        this.count = count;
        this.interval = interval;
        onSeconds = new double[count];
        starts = new int[count];
        meanTemperature = new double[count];
        endTemperature = new double[count];
        maximumTemperature = new double[count];
        minimumTemperature = new double[count];
        endHumidityRatio = new double[count];
        delivered = new double[count];
        steady = new double[count];
        electricity = new double[count];
        above = new double[count];
        removedWater = new double[count];
        coil = new double[count];
    }

    void event(double time, boolean on) {
        if (eventCount == events.length) {
            events = Arrays.copyOf(events, 2 * eventCount);
            eventOn = Arrays.copyOf(eventOn, 2 * eventCount);
        }
        events[eventCount] = time;
        eventOn[eventCount++] = on;
    }

    void run(double seconds) {
        completedRuns++;
        longestRun = Math.max(longestRun, seconds);
        shortestRun = Math.min(shortestRun, seconds);
    }

    /**
     * Number of intervals.
     *
     * @return count, above 0
     */
    public int count() {
        return count;
    }

    /**
     * Length of an interval.
     *
     * @return seconds
     */
    public double interval() {
        return interval;
    }

    /**
     * Time the unit ran in an interval.
     *
     * @param i interval, from 0
     * @return seconds
     */
    public double onSeconds(int i) {
        return onSeconds[i];
    }

    /**
     * Starts in an interval.
     *
     * @param i interval, from 0
     * @return number of times the unit switched on
     */
    public int starts(int i) {
        return starts[i];
    }

    /**
     * Mean temperature at the thermostat in an interval, exact.
     *
     * @param i interval, from 0
     * @return K
     */
    public double meanTemperature(int i) {
        return meanTemperature[i];
    }

    /**
     * Temperature at the thermostat at the end of an interval.
     *
     * @param i interval, from 0
     * @return K
     */
    public double endTemperature(int i) {
        return endTemperature[i];
    }

    /**
     * Highest temperature at the thermostat in an interval: of its ends, its switch times, and the
     * turning points above the band.
     *
     * @param i interval, from 0
     * @return K
     */
    public double maximumTemperature(int i) {
        return maximumTemperature[i];
    }

    /**
     * Lowest temperature at the thermostat in an interval, of its ends and its switch times.
     *
     * @param i interval, from 0
     * @return K
     */
    public double minimumTemperature(int i) {
        return minimumTemperature[i];
    }

    /**
     * Humidity ratio of the house at the end of an interval.
     *
     * @param i interval, from 0
     * @return kg/kg
     */
    public double endHumidityRatio(int i) {
        return endHumidityRatio[i];
    }

    /**
     * Heat taken from the rooms in an interval.
     *
     * @param i interval, from 0
     * @return J
     */
    public double delivered(int i) {
        return delivered[i];
    }

    /**
     * Heat that would have been taken from the rooms in an interval had every start been at full
     * capacity at once.
     *
     * @param i interval, from 0
     * @return J
     */
    public double steady(int i) {
        return steady[i];
    }

    /**
     * Share of the running unit's heat that its starts cost: 1 less delivered over steady.
     *
     * @return share, 0 for a unit that never stops or never ran
     */
    public double startUpLoss() {
        double whole = sum(steady);
        return whole > 0 ? 1 - sum(delivered) / whole : 0;
    }

    /**
     * Number of runs that ended.
     *
     * @return count
     */
    public int completedRuns() {
        return completedRuns;
    }

    /**
     * Electricity in an interval, off-cycle power included.
     *
     * @param i interval, from 0
     * @return J
     */
    public double electricity(int i) {
        return electricity[i];
    }

    /**
     * Temperature above the upper edge of the thermostat's band, integrated over an interval.
     *
     * @param i interval, from 0
     * @return K s
     */
    public double above(int i) {
        return above[i];
    }

    /**
     * Water taken from the rooms' air in an interval, re-evaporation subtracted.
     *
     * @param i interval, from 0
     * @return kg
     */
    public double removedWater(int i) {
        return removedWater[i];
    }

    /**
     * Lowest coil surface temperature in an interval.
     *
     * @param i interval, from 0
     * @return K, or positive infinity if the unit did not run
     */
    public double coil(int i) {
        return coil[i];
    }

    /**
     * Number of switch events.
     *
     * @return count
     */
    public int eventCount() {
        return eventCount;
    }

    /**
     * Time of a switch event.
     *
     * @param i event, from 0
     * @return seconds from the start of the run
     */
    public double eventTime(int i) {
        if (i < 0 || i >= eventCount) {
            throw new IndexOutOfBoundsException("event " + i + " of " + eventCount);
        }
        return events[i];
    }

    /**
     * Whether an event switched the unit on.
     *
     * @param i event, from 0
     * @return true for on, false for off
     */
    public boolean eventSwitchesOn(int i) {
        if (i < 0 || i >= eventCount) {
            throw new IndexOutOfBoundsException("event " + i + " of " + eventCount);
        }
        return eventOn[i];
    }

    /**
     * Longest time without a stop, a run still going at the end included.
     *
     * @return seconds
     */
    public double longestRun() {
        return longestRun;
    }

    /**
     * Shortest run that both started and stopped within the record.
     *
     * @return seconds, or positive infinity if there was none
     */
    public double shortestRun() {
        return shortestRun;
    }

    /**
     * Lowest coil surface temperature.
     *
     * @return K, or positive infinity if the unit never ran
     */
    public double minimumCoil() {
        return minimumCoil;
    }

    /**
     * Lowest saturated suction temperature.
     *
     * @return K, or positive infinity if the unit never ran
     */
    public double minimumSuction() {
        return minimumSuction;
    }

    /**
     * Heat balance of the house: heat in less heat lost less heat taken out less heat stored,
     * relative to the sum of their sizes.
     *
     * @return a pure number, near 0
     */
    public double heatImbalance() {
        double out = sum(delivered);
        double size = Math.abs(heatIn) + Math.abs(heatLost) + Math.abs(out) + Math.abs(heatStored);
        return size == 0 ? 0 : (heatIn - heatLost - out - heatStored) / size;
    }

    /**
     * Water balance of the house's air: water in (gains and infiltration less exfiltration) less
     * water removed less water stored, relative to the sum of their sizes.
     *
     * @return a pure number, near 0
     */
    public double waterImbalance() {
        double out = sum(removedWater);
        double size = Math.abs(waterIn) + Math.abs(out) + Math.abs(waterStored);
        return size == 0 ? 0 : (waterIn - out - waterStored) / size;
    }

    /**
     * Water vapour that came into the house's air, by people and by infiltration less exfiltration.
     *
     * @return kg
     */
    public double waterIn() {
        return waterIn;
    }

    /**
     * Change of the water in the house's air and in what takes it up with the air.
     *
     * @return kg at the end less kg at the start
     */
    public double waterStored() {
        return waterStored;
    }

    /**
     * Water that condensed on the coil. With tight ducts it is what the rooms' air lost, {@link
     * #removedWater(int)} summed, plus {@link #evaporatedWater()}; leaking ducts make the two
     * differ.
     *
     * @return kg
     */
    public double condensedWater() {
        return condensedWater;
    }

    /**
     * Water that the coil gave back to the rooms while the unit was off and the fan ran on.
     *
     * @return kg, at least 0, at most {@link #condensedWater()} and what the coil held at the start
     */
    public double evaporatedWater() {
        return evaporatedWater;
    }

    /**
     * Condensate beyond what the coil can hold: what runs off, or freezes on.
     *
     * @return kg
     */
    public double drainedWater() {
        return drainedWater;
    }

    /**
     * Change of the water held on the coil.
     *
     * @return kg at the end less kg at the start
     */
    public double retainedWater() {
        return retainedWater;
    }

    /**
     * Node temperatures at the end.
     *
     * @return K, a fresh array
     */
    public double[] endNodes() {
        return endNodes.clone();
    }

    /**
     * Times of the trace, if one was asked for.
     *
     * @return seconds, a fresh array, empty without a trace
     */
    public double[] traceTimes() {
        return traceTime.clone();
    }

    /**
     * Temperatures at the thermostat along the trace.
     *
     * @return K, a fresh array, empty without a trace
     */
    public double[] traceTemperatures() {
        return traceTemperature.clone();
    }

    /**
     * Humidity ratios along the trace, a straight line over each stretch of constant capacity.
     *
     * @return kg/kg, a fresh array, empty without a trace
     */
    public double[] traceHumidityRatios() {
        return traceHumidityRatio.clone();
    }

    /**
     * How many times a periodic day was run until it repeated itself.
     *
     * @return at least 1
     */
    public int repeatedDays() {
        return repeatedDays;
    }

    /**
     * By how much the last pass of a periodic day missed repeating itself: the largest difference
     * of a node's mean temperature from that of a day which does.
     *
     * @return K, 0 for a run that is not periodic
     */
    public double repeatError() {
        return repeatError;
    }

    /**
     * Whether the periodic day came to repeat itself within the tolerance.
     *
     * @return true for a run that is not periodic, too
     */
    public boolean repeats() {
        return repeats;
    }

    /**
     * Total running time.
     *
     * @return seconds
     */
    public double totalOnSeconds() {
        return sum(onSeconds);
    }

    /**
     * Total starts.
     *
     * @return count
     */
    public int totalStarts() {
        int total = 0;
        for (int s : starts) {
            total += s;
        }
        return total;
    }

    /**
     * Total heat taken from the rooms.
     *
     * @return J
     */
    public double totalDelivered() {
        return sum(delivered);
    }

    /**
     * Total heat that would have been taken from the rooms had every start been at full capacity at
     * once.
     *
     * @return J
     */
    public double totalSteady() {
        return sum(steady);
    }

    /**
     * Total electricity.
     *
     * @return J
     */
    public double totalElectricity() {
        return sum(electricity);
    }

    /**
     * Total temperature above the band, integrated over time.
     *
     * @return K s
     */
    public double totalAbove() {
        return sum(above);
    }

    private static double sum(double[] values) {
        double total = 0;
        for (double v : values) {
            total += v;
        }
        return total;
    }
}
