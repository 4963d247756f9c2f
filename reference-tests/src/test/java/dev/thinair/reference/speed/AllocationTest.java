package dev.thinair.reference.speed;

import static org.assertj.core.api.Assertions.assertThat;

import com.sun.management.ThreadMXBean;
import dev.thinair.altitude.kernel.AirDensity;
import dev.thinair.altitude.kernel.AirFactors;
import dev.thinair.altitude.kernel.DuctDerating;
import dev.thinair.altitude.kernel.FanLaws;
import dev.thinair.altitude.kernel.StandardAtmosphere;
import dev.thinair.psychro.kernel.DewPoint;
import dev.thinair.psychro.kernel.EnhancementFactor;
import dev.thinair.psychro.kernel.IdealMoistAir;
import dev.thinair.psychro.kernel.Saturation;
import dev.thinair.psychro.kernel.Transport;
import dev.thinair.psychro.kernel.WetBulb;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import java.lang.management.ManagementFactory;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A kernel call allocates nothing, compiled or not; neither does a known unit's crossing. */
class AllocationTest {

    private static final double P = 84_000;
    private static final Quantity<Temperature> WARM = Units.fahrenheit(95);
    private static final Quantity<Pressure> STATIC = Units.inchesOfWater(0.5);

    private static Arguments free(String name, DoubleUnaryOperator call) {
        return Arguments.of(name, call);
    }

    /** Each gets a number from 0 up to 1. */
    static Stream<Arguments> calls() {
        return Stream.of(
                free("saturation pressure", x -> Saturation.pressure(200 + 250 * x)),
                free("slope", x -> Saturation.slope(200 + 250 * x)),
                free("saturation temperature", x -> Saturation.temperature(1 + 1e5 * x)),
                free("dew point", x -> DewPoint.temperature(1e-4 + 0.03 * x, P)),
                free("wet bulb over water", x -> WetBulb.temperature(308, 0.005 + 0.02 * x, P)),
                free("wet bulb over ice", x -> WetBulb.temperature(268, 0.002 * x, P)),
                free("W of wet bulb", x -> WetBulb.humidityRatio(300, 288 + 10 * x, P)),
                free(
                        "W of relative humidity",
                        x -> IdealMoistAir.humidityRatioFromRelativeHumidity(300, x, P)),
                free("enthalpy", x -> IdealMoistAir.enthalpy(250 + 50 * x, 0.01)),
                free("dry bulb", x -> IdealMoistAir.dryBulbFromEnthalpy(1e5 * x, 0.01)),
                free("specific volume", x -> IdealMoistAir.specificVolume(300, 0.1 * x, P)),
                free("density", x -> IdealMoistAir.density(300, 0.1 * x, P)),
                free("relative humidity", x -> IdealMoistAir.relativeHumidity(300, 0.01 * x, P)),
                free(
                        "degree of saturation",
                        x -> IdealMoistAir.degreeOfSaturation(300, 0.01 * x, P)),
                free("enhancement factor", x -> EnhancementFactor.value(250 + 80 * x, P)),
                free("viscosity", x -> Transport.viscosity(300, 0.1 * x, P)),
                free("conductivity", x -> Transport.conductivity(300, 0.1 * x, P)),
                free("standard pressure", x -> StandardAtmosphere.pressure(4000 * x)),
                free("pressure altitude", x -> StandardAtmosphere.altitude(60_000 + 4e4 * x)),
                free("density ratio", x -> AirDensity.ratioAtConstantTemperature(60_000 + 4e4 * x)),
                free("airflow", x -> AirFactors.airflow(1000 * x, 1000, 10)),
                free("fan pressure", x -> FanLaws.pressureAtDensity(100 * x, 0.8)),
                free(
                        "ducts with a loaded filter",
                        x -> DuctDerating.volumeWithSameBlowerAndSpeed(0.8, x, 2)),
                free("degF to K", x -> Si.kelvins(WARM, "dry bulb")),
                free("in. w.g. to Pa", x -> Si.pascals(STATIC, "static pressure")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("calls")
    void allocates_nothing(String name, DoubleUnaryOperator call) {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        double sum = run(call);
        long before = threads.getCurrentThreadAllocatedBytes();
        long bare = threads.getCurrentThreadAllocatedBytes() - before;
        long start = threads.getCurrentThreadAllocatedBytes();
        sum += run(call);
        long bytes = threads.getCurrentThreadAllocatedBytes() - start - bare;
        assertThat(sum).as(name).isFinite();
        assertThat(bytes).as("%s: bytes of 1000 calls", name).isZero();
    }

    private static double run(DoubleUnaryOperator call) {
        double sum = 0;
        for (int i = 0; i < 1000; i++) {
            sum += call.applyAsDouble(i / 1000.0);
        }
        return sum;
    }
}
