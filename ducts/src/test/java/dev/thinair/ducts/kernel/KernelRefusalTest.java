package dev.thinair.ducts.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every number of every kernel function, one at a time: not a number, far below and far above what
 * is physical. Each is refused with the value and the range allowed.
 */
class KernelRefusalTest {

    /** A function with arguments it accepts; those at the places named have no upper limit. */
    record Call(Class<?> type, String name, List<Integer> open, double... arguments) {
        @Override
        public String toString() {
            return type.getSimpleName() + "." + name + arguments.length;
        }

        Method method() {
            Class<?>[] doubles = new Class<?>[arguments.length];
            Arrays.fill(doubles, double.class);
            try {
                return type.getMethod(name, doubles);
            } catch (NoSuchMethodException e) {
                throw new IllegalStateException(e);
            }
        }

        double with(int place, double value) throws Throwable {
            Object[] all = Arrays.stream(arguments).boxed().toArray();
            if (place >= 0) {
                all[place] = value;
            }
            try {
                return (double) method().invoke(null, all);
            } catch (InvocationTargetException e) {
                throw e.getCause();
            }
        }
    }

    private static final List<Integer> NONE = List.of();

    private static Call call(Class<?> type, String name, double... arguments) {
        return new Call(type, name, NONE, arguments);
    }

    static Stream<Call> calls() {
        Class<?> transitions = Transitions.class;
        List<Call> all = new ArrayList<>();
        all.add(new Call(Boots.class, "straight", List.of(1), 0.02, 0.03, 0.5));
        all.add(new Call(Boots.class, "turning", List.of(1), 0.02, 0.03, 1.5));
        all.add(call(DeliveryEffectiveness.class, "sensible", 0.9, 0.9, 0.9, 0.9, 25, 20, 20));
        all.add(
                new Call(
                        DeliveryEffectiveness.class,
                        "cooling",
                        List.of(5),
                        0.9,
                        0.9,
                        0.9,
                        0.9,
                        -9_000,
                        0.5,
                        49_000,
                        72_000,
                        297,
                        323,
                        286,
                        323,
                        1_006));
        all.add(
                new Call(
                        DuctConduction.class,
                        "conductionFraction",
                        List.of(2),
                        20,
                        0.9,
                        0.5,
                        1_006));
        all.add(call(DuctConduction.class, "leavingTemperature", 286, 310, 0.9));
        all.add(call(DuctConduction.class, "enteringTemperature", 286, 310, 0.9));
        all.add(new Call(DuctConduction.class, "heatGain", List.of(2), 286, 290, 0.5, 1_006));
        for (String name : List.of("samePressureDrop", "sameBlower")) {
            all.add(call(DuctDerating.class, name, 0.05, 0.15, 9e-5, 0.8, 1.82e-5));
        }
        all.add(call(DuctGeometry.class, "roundArea", 0.15));
        for (String name :
                List.of("rectangularHydraulicDiameter", "rectangularEquivalentDiameter")) {
            all.add(call(DuctGeometry.class, name, 0.3, 0.2));
        }
        for (String name :
                List.of(
                        "flatOvalArea",
                        "flatOvalPerimeter",
                        "flatOvalHydraulicDiameter",
                        "flatOvalEquivalentDiameter")) {
            all.add(call(DuctGeometry.class, name, 0.4, 0.2));
        }
        all.add(
                new Call(
                        DuctLoss.class,
                        "total",
                        List.of(2),
                        0.05,
                        0.15,
                        0.018,
                        10,
                        9e-5,
                        2,
                        1,
                        1.2,
                        1.82e-5));
        all.add(call(DuctLoss.class, "fitting", 0.5, 4, 1.2));
        all.add(call(Elbows.class, "threeGore90", 1));
        all.add(call(Elbows.class, "miteredRound", 1));
        all.add(call(Elbows.class, "rectangularRadius", 1, 1, 1));
        all.add(call(Elbows.class, "radiusAngleFactor", 1));
        all.add(call(Elbows.class, "miteredRectangular", 1, 1));
        all.add(call(Elbows.class, "miteredReynoldsFactor", 5e4));
        all.add(call(Elbows.class, "smoothBend", 0.02, 1.5, 1));
        all.add(call(Elbows.class, "miterBend", 1));
        all.add(call(FaceLoss.class, "dryCoilOneRowEightFins", 2.5));
        all.add(call(FaceLoss.class, "darcyForchheimer", 30, 8, 1.5, 0.9, 1.2));
        all.add(new Call(FaceLoss.class, "powerLaw", List.of(1), 20, 2, 3, 1.6));
        all.add(new Call(FaceLoss.class, "freeAreaVelocity", List.of(1), 0.1, 0.05, 0.7));
        all.add(new Call(FilterCurves.class, "loading", List.of(0), 20, 10, 0.4, 2));
        all.add(call(FlexibleDuct.class, "pressureDropCorrection", 0.1, 0.15));
        all.add(call(FlexibleDuct.class, "sagLengthRatio", 0.1));
        for (String name :
                List.of(
                        "colebrookWhite",
                        "darcy",
                        "churchill",
                        "haaland",
                        "swameeJain",
                        "altshulTsal",
                        "serghides")) {
            all.add(call(Friction.class, name, 1e5, 1e-3));
        }
        all.add(call(Friction.class, "laminar", 1_000));
        all.add(call(Friction.class, "reynolds", 4, 0.15, 1.2, 1.82e-5));
        all.add(call(Friction.class, "lossPerLength", 4, 0.15, 9e-5, 1.2, 1.82e-5));
        all.add(call(FrictionChart.class, "flow", 0.15, 0.8, 9e-5, 1.2, 1.82e-5));
        all.add(call(FrictionChart.class, "diameter", 0.05, 0.8, 9e-5, 1.2, 1.82e-5));
        all.add(call(FrictionChart.class, "elevationCorrection", 2_000));
        all.add(call(FrictionChart.class, "temperatureCorrection", 300));
        all.add(new Call(FrictionChart.class, "equivalentLength", List.of(2), 0.5, 0.15, 0.02));
        all.add(new Call(FrictionChart.class, "lossCoefficient", List.of(2), 3, 0.15, 0.02));
        all.add(call(FrictionChart.class, "equivalentLengthAt", 0.5, 10, 0.8));
        all.add(new Call(FrictionChart.class, "designFrictionRate", List.of(0, 1), 50, 80));
        all.add(
                call(
                        FrictionChart.class,
                        "staticRegainDiameter",
                        1,
                        0.4,
                        0.8,
                        5,
                        0.75,
                        9e-5,
                        1.2,
                        1.82e-5));
        all.add(call(Junctions.class, "divergingBranch", 0.5, 0.8));
        all.add(call(Junctions.class, "divergingBranch", 0.3, 0.5, 0.8));
        all.add(call(Junctions.class, "divergingStraight", 0.5));
        all.add(call(Junctions.class, "divergingStraight", 0.3, 0.5));
        all.add(call(Junctions.class, "onOwnVelocity", 0.5, 0.8));
        all.add(call(Junctions.class, "convergingBranch", 0.3, 0.5, 0.8));
        all.add(call(Junctions.class, "convergingStraight", 0.3, 0.5, 0.8));
        all.add(new Call(Leakage.class, "flow", List.of(1), 0.02, 25, 50, 0.6));
        all.add(call(Leakage.class, "factor", 12, 100));
        all.add(call(Leakage.class, "leakageClass", 1e-3, 100));
        all.add(call(Openings.class, "wallEntry", 0.2, 0.02));
        all.add(call(Openings.class, "bellmouth", 0.1));
        all.add(call(Openings.class, "bellmouthInWall", 0.1));
        all.add(call(TonnageAirflow.class, "actualFlow", 1e4, 5e-5, 0.8));
        all.add(call(TonnageAirflow.class, "standardFlow", 0.5, 0.9, 1.2));
        all.add(call(TonnageAirflow.class, "capacity", 0.5, 5e-5));
        all.add(new Call(transitions, "suddenExpansion", List.of(1), 0.02, 0.03));
        all.add(new Call(transitions, "suddenContraction", List.of(0), 0.03, 0.02));
        all.add(new Call(transitions, "conicalDiffuser", List.of(1), 0.2, 0.3, 0.5));
        all.add(new Call(transitions, "conicalContraction", List.of(0), 0.3, 0.2, 0.5));
        all.add(new Call(transitions, "onOtherArea", List.of(1, 2), 0.5, 0.02, 0.03));
        all.add(new Call(VelocityPressure.class, "constantAtDensity", List.of(0), 20, 0.8));
        all.add(call(VelocityPressure.class, "tradePressure", 5));
        all.add(call(VelocityPressure.class, "pressure", 5, 1.2));
        all.add(call(VelocityPressure.class, "velocity", 15, 1.2));
        all.add(new Call(VelocityPressure.class, "meanVelocity", List.of(1), 0.1, 0.02));
        return all.stream();
    }

    @ParameterizedTest
    @MethodSource("calls")
    void every_number_has_its_range(Call call) throws Throwable {
        assertThat(call.with(-1, 0)).isFinite();
        for (int i = 0; i < call.arguments.length; i++) {
            for (double bad : new double[] {Double.NaN, -1e30, 1e30}) {
                if (bad > 0 && call.open.contains(i)) {
                    continue;
                }
                int place = i;
                assertThatThrownBy(() -> call.with(place, bad))
                        .as(call + ", argument " + i + " = " + bad)
                        .isInstanceOf(IllegalArgumentException.class)
                        .hasMessageContaining("must");
            }
        }
    }

    /** So that a new kernel function cannot be forgotten here. */
    @Test
    void no_function_of_plain_numbers_is_left_out() {
        List<String> known = calls().map(c -> c.method().toString()).toList();
        Stream<Class<?>> types = calls().<Class<?>>map(Call::type).distinct();
        assertThat(
                        types.flatMap(t -> Arrays.stream(t.getMethods()))
                                .filter(m -> java.lang.reflect.Modifier.isStatic(m.getModifiers()))
                                .filter(m -> m.getParameterCount() > 0)
                                .filter(
                                        m ->
                                                Arrays.stream(m.getParameterTypes())
                                                        .allMatch(p -> p == double.class))
                                .map(Method::toString)
                                .filter(m -> !known.contains(m))
                                .collect(Collectors.toList()))
                .isEmpty();
    }
}
