package dev.thinair.ducts;

import dev.thinair.altitude.kernel.FanLaws;
import dev.thinair.ducts.kernel.BlowerCurve;
import dev.thinair.units.Range;
import dev.thinair.units.Si;
import dev.thinair.units.VolumeFlow;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;

/**
 * A blower as its data sheet describes it: airflow against external static pressure, for each
 * speed, with standard air. Immutable.
 *
 * <p>At another density and the same speed the airflow column stays and the pressure and power
 * columns are multiplied by the density ratio (fan laws). An induction motor unloaded by thin air
 * turns a few per cent faster than that; this is not in the fan laws and not in here.
 *
 * <p>A speed can also be of constant airflow: the motor holds the flow until it meets its limit,
 * which is a table like any other.
 */
public final class Blower {

    /** What a constant-airflow motor holds constant when the air gets thin. */
    public enum Holds {
        /** The volume flow. */
        VOLUME,
        /** The mass flow: volume flow rises as density falls. */
        MASS
    }

    /** One speed. */
    static final class Speed {
        final String name;
        final BlowerCurve curve;
        final double[] flow;
        final double[] power;
        final double held;
        final Holds holds;

        Speed(
                String name,
                BlowerCurve curve,
                double[] flow,
                double[] power,
                double held,
                Holds holds) {
            this.name = name;
            this.curve = curve;
            this.flow = flow;
            this.power = power;
            this.held = held;
            this.holds = holds;
        }
    }

    private final Map<String, Speed> speeds;
    private final String chosen;
    private final double efficiency;

    private Blower(Map<String, Speed> speeds, String chosen, double efficiency) {
        this.speeds = speeds;
        this.chosen = chosen;
        this.efficiency = efficiency;
    }

    /**
     * Starts a data sheet.
     *
     * @return an empty builder
     */
    public static Builder builder() {
        return new Builder();
    }

    /**
     * The same blower at another of its speeds.
     *
     * @param name name of the speed
     * @return changed copy
     * @throws IllegalArgumentException if there is no such speed
     */
    public Blower withSpeed(String name) {
        if (!speeds.containsKey(name)) {
            throw new IllegalArgumentException(
                    "the blower has no speed \"" + name + "\"; it has " + speeds.keySet());
        }
        return new Blower(speeds, name, efficiency);
    }

    /**
     * The same blower turned faster or slower than its table says, by another pulley or motor
     * signal: flow goes with the speed, pressure with its square, power with its cube (fan laws).
     * An efficiency stays.
     *
     * @param ratio new speed over that of the table, in [20, 300 %]
     * @return changed copy, in which only the running speed differs
     * @throws IllegalArgumentException if the ratio is missing or out of range, or the running
     *     speed is held by a constant-airflow motor, which sets its own
     */
    public Blower withSpeedRatio(Quantity<Dimensionless> ratio) {
        double r = Si.ratio(ratio, "speed ratio");
        Speed s = running();
        if (s.holds != null) {
            throw new IllegalArgumentException(
                    "speed \"" + chosen + "\" is set by a constant-airflow motor itself");
        }
        BlowerCurve curve = s.curve.atSpeed(r);
        double[] flow = s.flow.clone();
        double[] power = s.power == null ? null : s.power.clone();
        for (int i = 0; i < flow.length; i++) {
            flow[i] = FanLaws.airflowAtSpeed(flow[i], r);
            if (power != null) {
                power[i] = FanLaws.powerAtSpeed(power[i], r);
            }
        }
        Map<String, Speed> changed = new LinkedHashMap<>(speeds);
        changed.put(chosen, new Speed(chosen, curve, flow, power, 0, null));
        return new Blower(java.util.Collections.unmodifiableMap(changed), chosen, efficiency);
    }

    /**
     * Names of all speeds, in the order given.
     *
     * @return unmodifiable set
     */
    public Set<String> speeds() {
        return speeds.keySet();
    }

    /**
     * Name of the speed it runs at.
     *
     * @return speed
     */
    public String speed() {
        return chosen;
    }

    /**
     * Whether its electric power is known, by a table column or an efficiency.
     *
     * @return true if known
     */
    public boolean knowsPower() {
        return efficiency > 0 || running().power != null;
    }

    Speed running() {
        return speeds.get(chosen);
    }

    /**
     * Electric power, W, at a volume flow, a rise and a density ratio. A power column is read
     * linearly in flow and scaled with density; an efficiency is the ratio of flow times external
     * static pressure to electric power.
     */
    double powerSi(double flow, double rise, double ratio) {
        Speed s = running();
        if (s.power != null) {
            int n = s.flow.length;
            int i = 0;
            while (i < n - 2 && flow < s.flow[i + 1]) {
                i++;
            }
            double t = (flow - s.flow[i]) / (s.flow[i + 1] - s.flow[i]);
            return ratio * (s.power[i] + t * (s.power[i + 1] - s.power[i]));
        }
        return efficiency > 0 ? flow * rise / efficiency : Double.NaN;
    }

    @Override
    public String toString() {
        return "blower with speeds " + speeds.keySet() + ", running at \"" + chosen + "\"";
    }

    /** Collects a blower's data sheet. Not for use by two threads at once. */
    public static final class Builder {
        private final Map<String, Speed> speeds = new LinkedHashMap<>();
        private String name;
        private double held;
        private Holds holds;
        private final List<double[]> points = new ArrayList<>();
        private double efficiency;

        private Builder() {}

        /**
         * Starts a speed; its points follow.
         *
         * @param speedName its name: "high", "tap 4"
         * @return this
         * @throws IllegalArgumentException if the name is blank or taken, or the speed before has
         *     fewer than two points
         */
        public Builder speed(String speedName) {
            begin(speedName);
            return this;
        }

        /**
         * Starts a speed of constant airflow; the points of its limit follow: what the motor does
         * when it can hold the airflow no longer.
         *
         * @param speedName its name
         * @param flow standard volume flow that the motor holds, above 0
         * @param held whether volume or mass stays when the air gets thin
         * @return this
         * @throws IllegalArgumentException if the name is blank or taken, the flow out of range, or
         *     {@code held} null
         */
        public Builder constantAirflow(String speedName, Quantity<VolumeFlow> flow, Holds held) {
            begin(speedName);
            double q = Si.cubicMetresPerSecond(flow, "held airflow");
            Range.requireAbove("held airflow", q, 0, "m3/s");
            Range.require("held airflow", q, 0, 20, "m3/s");
            if (held == null) {
                throw new IllegalArgumentException("a constant-airflow speed holds volume or mass");
            }
            this.held = q;
            this.holds = held;
            return this;
        }

        private void begin(String speedName) {
            finish();
            if (speedName == null || speedName.isBlank()) {
                throw new IllegalArgumentException("a blower speed needs a name");
            }
            if (speeds.containsKey(speedName)) {
                throw new IllegalArgumentException(
                        "there are two blower speeds \"" + speedName + "\"");
            }
            name = speedName;
        }

        /**
         * A row of the table.
         *
         * @param externalStatic external static pressure with standard air, rising from row to row
         * @param flow volume flow, falling from row to row
         * @return this
         * @throws IllegalArgumentException if no speed was started
         */
        public Builder point(Quantity<Pressure> externalStatic, Quantity<VolumeFlow> flow) {
            return add(externalStatic, flow, Double.NaN);
        }

        /**
         * A row of the table with its electric power.
         *
         * @param externalStatic external static pressure with standard air, rising from row to row
         * @param flow volume flow, falling from row to row
         * @param power electric power, above 0
         * @return this
         * @throws IllegalArgumentException if no speed was started or the power is out of range
         */
        public Builder point(
                Quantity<Pressure> externalStatic,
                Quantity<VolumeFlow> flow,
                Quantity<Power> power) {
            double w = Si.watts(power, "blower power");
            Range.requireAbove("blower power", w, 0, "W");
            Range.require("blower power", w, 0, 20_000, "W");
            return add(externalStatic, flow, w);
        }

        private Builder add(
                Quantity<Pressure> externalStatic, Quantity<VolumeFlow> flow, double power) {
            if (name == null) {
                throw new IllegalArgumentException("start a speed before its points");
            }
            points.add(
                    new double[] {
                        Si.pascals(externalStatic, "external static pressure of blower table"),
                        Si.cubicMetresPerSecond(flow, "airflow of blower table"),
                        power
                    });
            return this;
        }

        /**
         * Total efficiency of blower and motor, used where no power column is given.
         *
         * @param total airflow times external static pressure over electric power, in [1, 90 %]
         * @return this
         * @throws IllegalArgumentException if the efficiency is out of range
         */
        public Builder efficiency(Quantity<Dimensionless> total) {
            double e = Si.ratio(total, "blower efficiency");
            Range.require("blower efficiency", e, 0.01, 0.9, "");
            efficiency = e;
            return this;
        }

        private void finish() {
            if (name == null) {
                return;
            }
            int n = points.size();
            double[] p = new double[n];
            double[] q = new double[n];
            double[] w = new double[n];
            int known = 0;
            for (int i = 0; i < n; i++) {
                p[i] = points.get(i)[0];
                q[i] = points.get(i)[1];
                w[i] = points.get(i)[2];
                if (!Double.isNaN(w[i])) {
                    known++;
                }
            }
            if (known != 0 && known != n) {
                throw new IllegalArgumentException(
                        "blower speed \""
                                + name
                                + "\": "
                                + known
                                + " of "
                                + n
                                + " points give a power; give it for all or for none");
            }
            BlowerCurve curve;
            try {
                curve = BlowerCurve.through(p, q);
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException(
                        "blower speed \"" + name + "\": " + e.getMessage(), e);
            }
            if (holds != null) {
                Range.require(
                        "held airflow of blower speed \"" + name + "\"",
                        held,
                        curve.lowestFlow(),
                        curve.highestFlow(),
                        "m3/s");
            }
            speeds.put(
                    name,
                    new Speed(
                            name,
                            curve,
                            q,
                            known == n ? w : null,
                            holds == null ? 0 : held,
                            holds));
            name = null;
            holds = null;
            held = 0;
            points.clear();
        }

        /**
         * Finishes the data sheet. The blower runs at the first speed given.
         *
         * @return the blower
         * @throws IllegalArgumentException if there is no speed, or the last one has fewer than two
         *     points or is not monotone
         */
        public Blower build() {
            finish();
            if (speeds.isEmpty()) {
                throw new IllegalArgumentException("the blower has no speed");
            }
            Map<String, Speed> all =
                    java.util.Collections.unmodifiableMap(new LinkedHashMap<>(speeds));
            return new Blower(all, all.keySet().iterator().next(), efficiency);
        }
    }
}
