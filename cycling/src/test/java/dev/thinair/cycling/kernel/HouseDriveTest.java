package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

class HouseDriveTest {

    private static final double[][] HEAT = {{1, 2}, {3, 4}, {5, 6}};

    private static double[] fill(double... values) {
        return values;
    }

    private static HouseDrive drive(
            double interval,
            double[][] heat,
            double[] outdoor,
            double[] humid,
            double[] flow,
            double[] gain,
            double capacity) {
        return HouseDrive.of(interval, false, heat, outdoor, humid, flow, gain, capacity);
    }

    private static void refused(String message, Runnable make) {
        assertThatThrownBy(make::run)
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(message);
    }

    @Test
    void marks_bound_intervals() {
        double[] outdoor = {300, 301, 302};
        HouseDrive open = HouseDrive.dry(60, false, HEAT, outdoor);
        assertThat(open.intervals()).isEqualTo(2);
        assertThat(open.nodes()).isEqualTo(2);
        assertThat(open.end(1)).isEqualTo(2);
        HouseDrive round = HouseDrive.dry(60, true, HEAT, outdoor);
        assertThat(round.intervals()).isEqualTo(3);
        assertThat(round.end(0)).isEqualTo(1);
        assertThat(round.end(2)).isZero();
        HouseDrive one = HouseDrive.dry(1, true, new double[][] {{1}}, fill(180));
        assertThat(one.intervals()).isEqualTo(1);
        assertThat(HouseDrive.dry(86_400, true, new double[][] {{1}}, fill(350)).nodes())
                .isEqualTo(1);
    }

    @Test
    void bad_input_is_named() {
        double[] t = {300, 301, 302};
        double[] w = {0.01, 0.01, 0.01};
        double[] m = {0.1, 0.1, 0.1};
        double[] g = {0, 0, 0};
        assertThat(drive(3600, HEAT, t, w, m, g, 100).moistureCapacity).isEqualTo(100);
        refused("interval between marks", () -> drive(0.5, HEAT, t, w, m, g, 100));
        refused("interval between marks", () -> drive(86_401, HEAT, t, w, m, g, 100));
        refused("at least 2 marks", () -> drive(60, null, t, w, m, g, 100));
        refused("at least 2 marks", () -> drive(60, new double[][] {{1}}, t, w, m, g, 100));
        refused("at least 1 marks", () -> HouseDrive.dry(60, true, new double[0][], fill()));
        refused(
                "outdoor dry bulb must have one entry for each of the 3 marks, not 2",
                () -> drive(60, HEAT, fill(300, 300), w, m, g, 100));
        refused("not null", () -> drive(60, HEAT, t, null, m, g, 100));
        refused(
                "outdoor dry bulb at mark 1",
                () -> drive(60, HEAT, fill(300, 179, 300), w, m, g, 100));
        refused(
                "outdoor dry bulb at mark 2",
                () -> drive(60, HEAT, fill(300, 300, 351), w, m, g, 100));
        refused(
                "outdoor humidity ratio at mark 0",
                () -> drive(60, HEAT, t, fill(-0.001, 0, 0), m, g, 100));
        refused("infiltration at mark 0", () -> drive(60, HEAT, t, w, fill(-1, 0, 0), g, 100));
        refused(
                "infiltration at mark 1",
                () -> drive(60, HEAT, t, w, fill(0, Double.NaN, 0), g, 100));
        refused("moisture gain at mark 2", () -> drive(60, HEAT, t, w, m, fill(0, 0, 11), 100));
        refused("moisture capacity", () -> drive(60, HEAT, t, w, m, g, 0));
        refused(
                "heat at mark 1 does not have one entry for each of 2 nodes",
                () -> drive(60, new double[][] {{1, 2}, {1}, {1, 2}}, t, w, m, g, 100));
        refused(
                "heat at mark 0 does not have",
                () -> drive(60, new double[][] {null, {1}, {1}}, t, w, m, g, 100));
        refused(
                "heat at mark 0 does not have",
                () -> drive(60, new double[][] {{}, {}, {}}, t, w, m, g, 100));
        refused(
                "heat at mark 2 into node 1 is Infinity W",
                () ->
                        drive(
                                60,
                                new double[][] {{1, 2}, {1, 2}, {1, Double.POSITIVE_INFINITY}},
                                t,
                                w,
                                m,
                                g,
                                100));
    }

    @Test
    void an_engine_refuses_what_does_not_fit_together() {
        TestHouse house = new TestHouse(1, 2, 1);
        ModalHouse modal = house.modal();
        double[] air = house.air();
        refused("engine needs a house", () -> new ThermostatEngine(null, air, air, air));
        refused("thermostat weights", () -> new ThermostatEngine(modal, null, air, air));
        refused("return weights", () -> new ThermostatEngine(modal, air, fill(1, 0), air));
        refused("supply shares", () -> new ThermostatEngine(modal, air, air, fill(1, 0, 0)));
        refused(
                "thermostat weights of node 1",
                () -> new ThermostatEngine(modal, fill(0.9, -0.5, 0.6, 0), air, air));
        refused(
                "sum of supply shares",
                () -> new ThermostatEngine(modal, air, air, fill(0.5, 0.4, 0, 0)));
        ThermostatEngine engine = house.engine();
        HouseDrive day = house.day(29);
        CycleControl control = CycleControl.single(297, 1);
        UnitResponse unit = UnitResponse.constant(9000, 3000);
        double[] start = engine.heldAtSetpoint(day, control);
        refused("not null", () -> engine.run(null, control, unit, start, 0.009, 0));
        refused("not null", () -> engine.run(day, null, unit, start, 0.009, 0));
        refused("not null", () -> engine.run(day, control, null, start, 0.009, 0));
        refused(
                "starting temperatures must have one entry for each of the 4 nodes, not 1",
                () -> engine.run(day, control, unit, fill(300), 0.009, 0));
        refused("not null", () -> engine.run(day, control, unit, null, 0.009, 0));
        refused(
                "starting temperature of node 2 is NaN",
                () -> engine.run(day, control, unit, fill(300, 300, Double.NaN, 300), 0.009, 0));
        refused("humidity ratio", () -> engine.run(day, control, unit, start, -0.1, 0));
        refused("points of the trace", () -> engine.run(day, control, unit, start, 0.009, -1));
        refused(
                "drive is for 6 nodes, the house has 4",
                () -> engine.run(new TestHouse(1, 4, 1).day(29), control, unit, start, 0.009, 0));
        refused("drive is for no nodes", () -> engine.heldAtSetpoint(null, control));
        refused(
                "must be periodic",
                () -> engine.repeat(house.year(24), control, unit, 0.009, 0.01, 10, 0));
        refused("must be periodic", () -> engine.repeat(null, control, unit, 0.009, 0.01, 10, 0));
        refused("tolerance", () -> engine.repeat(day, control, unit, 0.009, 0, 10, 0));
        refused("number of passes", () -> engine.repeat(day, control, unit, 0.009, 0.01, 0, 0));
    }
}
