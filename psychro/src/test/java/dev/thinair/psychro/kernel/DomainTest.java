package dev.thinair.psychro.kernel;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.lang.reflect.Parameter;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every public kernel function refuses NaN and infinity in every argument. */
class DomainTest {

    private static final List<Class<?>> KERNEL =
            List.of(
                    AirPoint.class,
                    ConditionLine.class,
                    CoolingCoil.class,
                    DewPoint.class,
                    EnhancementFactor.class,
                    Flows.class,
                    Humidifying.class,
                    IapwsSaturation.class,
                    IdealMoistAir.class,
                    Mixing.class,
                    RealMoistAir.class,
                    Saturation.class,
                    SensibleHeating.class,
                    Transport.class,
                    WetBulb.class);

    /** Arguments by parameter name that make a sensible call of every function. */
    private static final Map<String, Double> SENSIBLE =
            Map.ofEntries(
                    entry("dryBulb", 300.0),
                    entry("dryBulb1", 300.0),
                    entry("dryBulb2", 290.0),
                    entry("temperature", 300.0),
                    entry("pressure", 90_000.0),
                    entry("humidityRatio", 0.01),
                    entry("humidityRatio1", 0.01),
                    entry("humidityRatio2", 0.009),
                    entry("relativeHumidity", 0.5),
                    entry("vaporPressure", 1500.0),
                    entry("wetBulb", 290.0),
                    entry("dewPoint", 285.0),
                    entry("enthalpy", 55_000.0),
                    entry("water", 0.01),
                    entry("sensibleGain", 9000.0),
                    entry("moistureGain", 0.0005),
                    entry("vaporEnthalpy", 2_555_000.0),
                    entry("spaceDryBulb", 298.0),
                    entry("spaceHumidityRatio", 0.01),
                    entry("supplyDryBulb", 288.0),
                    entry("apparatusDewPoint", 281.0),
                    entry("bypassFactor", 0.2),
                    entry("volumeFlow", 1.0),
                    entry("massFlow", 1.0),
                    entry("massFlow1", 1.0),
                    entry("massFlow2", 2.0),
                    entry("added", 0.001),
                    entry("waterEnthalpy", 2_600_000.0),
                    entry("effectiveness", 0.8),
                    entry("heat", 1000.0),
                    entry("surface", 310.0),
                    entry("leaving", 305.0));

    /** What needs another value than its name suggests elsewhere. */
    private static double sensible(Method method, Parameter parameter) {
        String name = method.getDeclaringClass().getSimpleName() + "." + method.getName();
        String at = name + " " + parameter.getName();
        return switch (at) {
            case "Saturation.pressureOverIce temperature",
                    "IapwsSaturation.icePressure temperature",
                    "IdealMoistAir.iceEnthalpy temperature" ->
                    260;
            case "WetBulb.humidityRatioOverIce wetBulb" -> 272;
            case "WetBulb.humidityRatioOverIce dryBulb" -> 274;
            case "Saturation.temperature pressure", "IapwsSaturation.liquidTemperature pressure" ->
                    2000;
            default -> SENSIBLE.get(parameter.getName());
        };
    }

    static Stream<Method> functions() {
        List<Method> found = new ArrayList<>();
        for (Class<?> type : KERNEL) {
            for (Method method : type.getDeclaredMethods()) {
                boolean called =
                        Modifier.isPublic(method.getModifiers())
                                && Modifier.isStatic(method.getModifiers());
                // A plain sum of products, documented as unchecked; mean() takes any property.
                if (called && !method.getName().equals("heatRemoved") && !method.isSynthetic()) {
                    found.add(method);
                }
            }
        }
        return found.stream();
    }

    private static void call(Method method, Object[] arguments) {
        try {
            method.invoke(null, arguments);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new AssertionError(e);
        } catch (IllegalAccessException e) {
            throw new AssertionError(e);
        }
    }

    @ParameterizedTest
    @MethodSource("functions")
    void no_argument_may_be_NaN_or_infinite(Method method) {
        for (AirModel model : List.of(AirModel.IDEAL, AirModel.REAL)) {
            Parameter[] parameters = method.getParameters();
            Object[] arguments = new Object[parameters.length];
            for (int i = 0; i < parameters.length; i++) {
                arguments[i] =
                        parameters[i].getType() == double.class
                                ? parameters[i].getName().startsWith("value")
                                        ? 1.0
                                        : sensible(method, parameters[i])
                                : model;
            }
            assertThatCode(() -> call(method, arguments)).doesNotThrowAnyException();
            for (int i = 0; i < parameters.length; i++) {
                if (parameters[i].getType() != double.class
                        || parameters[i].getName().startsWith("value")) {
                    continue;
                }
                for (double bad :
                        new double[] {
                            Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY
                        }) {
                    Object[] broken = arguments.clone();
                    broken[i] = bad;
                    assertThatIllegalArgumentException()
                            .as("%s with %s = %s", method, parameters[i].getName(), bad)
                            .isThrownBy(() -> call(method, broken));
                }
            }
        }
    }

    @Test
    void every_function_is_looked_at() {
        assertThat(functions()).hasSizeGreaterThan(50);
    }

    @Test
    void domain_includes_its_ends() {
        for (double t : new double[] {173.15, 473.15}) {
            for (double p : new double[] {20_000, 200_000}) {
                assertThat(Transport.viscosity(t, 10, p)).isPositive();
                assertThat(IdealMoistAir.specificVolume(t, 10, p)).isPositive();
                assertThat(IdealMoistAir.wetBulb(t, 0, p)).isLessThanOrEqualTo(t);
                assertThat(RealMoistAir.relativeHumidity(t, 0, p)).isZero();
            }
        }
        assertThat(IdealMoistAir.liquidEnthalpy(473.15)).isCloseTo(837_200, within(1e-6));
        assertThat(IdealMoistAir.iceEnthalpy(173.15)).isCloseTo(-543_400, within(1e-6));
        assertThat(CoolingCoil.leavingHumidityRatio(0.01, 280, 0, 1e5))
                .isEqualTo(IdealMoistAir.saturationHumidityRatio(280, 1e5));
        assertThat(CoolingCoil.leavingHumidityRatio(0.01, 280, 1, 1e5)).isEqualTo(0.01);
    }

    @Test
    void both_models_answer_through_the_common_interface_as_their_classes_do() {
        AirModel ideal = AirModel.IDEAL;
        AirModel real = AirModel.REAL;
        assertThat(ideal.liquidEnthalpy(290)).isEqualTo(IdealMoistAir.liquidEnthalpy(290));
        assertThat(ideal.iceEnthalpy(260)).isEqualTo(IdealMoistAir.iceEnthalpy(260));
        assertThat(real.liquidEnthalpy(290)).isEqualTo(RealMoistAir.liquidEnthalpy(290));
        assertThat(real.iceEnthalpy(260)).isEqualTo(RealMoistAir.iceEnthalpy(260));
        assertThat(ideal.condensateEnthalpy(273.15)).isZero();
        assertThat(real.condensateEnthalpy(Math.nextDown(273.15))).isLessThan(-333_000);
        assertThat(ideal.degreeOfSaturation(300, 0.01, 9e4))
                .isEqualTo(IdealMoistAir.degreeOfSaturation(300, 0.01, 9e4));
        assertThat(real.degreeOfSaturation(300, 0.01, 9e4))
                .isEqualTo(RealMoistAir.degreeOfSaturation(300, 0.01, 9e4));
        assertThat(real.density(300, 0.01, 9e4)).isEqualTo(RealMoistAir.density(300, 0.01, 9e4));
        assertThat(real.specificVolume(300, 0.01, 9e4))
                .isNotEqualTo(ideal.specificVolume(300, 0.01, 9e4));
    }
}
