package dev.thinair.cycling.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every number that a function of the kernel takes: the range's ends pass, what is past fails. */
class KernelRangesTest {

    /** A function of some numbers. */
    interface Call {
        void with(double[] x);
    }

    /**
     * One argument out of range, and what the refusal must name.
     *
     * @param quantity name in the message
     * @param call the function
     * @param arguments arguments, one of them bad
     * @param bad the bad one
     */
    record Case(String quantity, Call call, double[] arguments, double bad) {
        @Override
        public String toString() {
            return quantity + " " + bad;
        }
    }

    private static final List<Case> CASES = new ArrayList<>();

    private static Call call;
    private static double[] good;
    private static int next;

    /** Begins a function with arguments that it takes. */
    private static void function(Call f, double... arguments) {
        call = f;
        good = arguments;
        next = 0;
        assertThatCode(() -> f.with(arguments.clone())).doesNotThrowAnyException();
    }

    /** Its next argument: this and that value are past the range. */
    private static void refuses(String quantity, double... bad) {
        add(quantity, Double.NaN);
        for (double b : bad) {
            add(quantity, b);
        }
        next++;
    }

    private static void add(String quantity, double bad) {
        double[] x = good.clone();
        x[next] = bad;
        CASES.add(new Case(quantity, call, x, bad));
    }

    private static void skip() {
        next++;
    }

    private static double f(double fahrenheit) {
        return (fahrenheit + 459.67) / 1.8;
    }

    static {
        partLoad();
        cooling();
        heating();
        rest();
    }

    private static void partLoad() {
        function(x -> PartLoad.partLoadFactor(x[0], x[1]), 0.2, 0.5);
        refuses("degradation coefficient", -0.01, 1.01);
        refuses("load factor", -0.01);
        function(x -> PartLoad.degradationCoefficient(x[0], x[1], x[2]), 2.5, 3, 0.5);
        refuses("cyclic efficiency", 0, -1);
        refuses("steady efficiency", 0, -1);
        refuses("load factor", -0.1, 1);
        function(x -> PartLoad.cyclicLoadFactor(x[0], x[1], x[2]), 3e6, 9e3, 1800);
        refuses("heat of the cycle", -1);
        refuses("steady capacity", 0);
        refuses("cycle time", 0);
        function(x -> PartLoad.cycleRate(x[0], x[1]), 3, 0.5);
        refuses("maximum cycle rate", 0);
        refuses("run-time fraction", -0.1, 1.1);
        function(x -> PartLoad.onTime(x[0], x[1]), 3, 0.5);
        refuses("maximum cycle rate", 0);
        refuses("run-time fraction", -0.1, 1.1);
        function(x -> PartLoad.offTime(x[0], x[1]), 3, 0.5);
        refuses("maximum cycle rate", 0);
        refuses("run-time fraction", -0.1, 1.1);
        function(x -> PartLoad.startUpCapacityRatio(x[0], x[1]), 60, 600);
        refuses("start-up time constant", -1, 2e6);
        refuses("on-time", 0);
        function(x -> PartLoad.implicitRunTimeFraction(x[0], x[1], x[2]), 60, 3, 0.5);
        refuses("start-up time constant", -1);
        refuses("maximum cycle rate", 0, -1);
        refuses("load factor", -0.1);
        function(x -> PartLoad.averagePowerFraction(x[0], x[1]), 0.5, 0.01);
        refuses("run-time fraction", -0.1, 1.1);
        refuses("off-cycle", -0.1, 1.1);
        function(x -> PartLoad.oversizedRunTimeFraction(x[0], x[1], x[2], x[3]), 1.5, 0.5, 60, 3);
        refuses("capacity over design load", 0);
        refuses("load over design load", -0.1);
        function(x -> PartLoad.oversizedEnergyRatio(x[0], x[1], x[2], x[3]), 1.5, 0.5, 60, 3);
        refuses("capacity over design load", 0);
        refuses("load over design load", 0, 1.1);
        function(
                x -> LinearDecayEvaporation.netLatentRatio(x[0], x[1], x[2], x[3], x[4]),
                60,
                600,
                600,
                720,
                1);
        refuses("start-up time constant", -1);
        refuses("on-time", 0);
        refuses("off-time", -1);
        refuses("moisture holding time", 0);
        refuses("evaporation ratio", -0.1, 11);
    }

    private static void cooling() {
        function(x -> SeasonalRatings.coolingLoad(x[0], x[1], x[2]), f(82), 10e3, 1);
        refuses("outdoor temperature", 199, 351);
        refuses("full capacity", 0);
        refuses("load factor V", 0, 1.6);
        function(x -> SeasonalRatings.singleSpeedShort(x[0], x[1], x[2]), 11e3, 2700, 0.2);
        refuses("capacity at 82 degF", 0);
        refuses("power at 82 degF", 0);
        refuses("degradation coefficient", -0.1, 1.1);
        function(
                x -> SeasonalRatings.singleSpeed(x[0], x[1], x[2], x[3], x[4], RatingBins.COOLING),
                10e3,
                3000,
                11e3,
                2700,
                0.2);
        refuses("capacity at 95 degF", 0);
        refuses("power at 95 degF", 0);
        refuses("capacity at 82 degF", 0);
        refuses("power at 82 degF", 0);
        refuses("degradation coefficient", -0.1, 1.1);
        function(
                x ->
                        SeasonalRatings.twoStage(
                                x[0],
                                x[1],
                                x[2],
                                x[3],
                                x[4],
                                x[5],
                                x[6],
                                x[7],
                                x[8],
                                x[9],
                                x[10],
                                RatingBins.COOLING),
                10e3,
                3000,
                11e3,
                2700,
                8e3,
                1800,
                8.8e3,
                1500,
                0.2,
                0.2,
                f(110));
        for (String where : new String[] {"95 degF, high", "82 degF, high", "82 degF, low"}) {
            refuses("capacity at " + where, 0, -1);
            refuses("power at " + where, 0, -1);
        }
        refuses("capacity at 67 degF, low", 0);
        refuses("power at 67 degF, low", 0);
        refuses("degradation coefficient of the low stage", -0.1, 1.1);
        refuses("degradation coefficient of the high stage", -0.1, 1.1);
        refuses("lock-out");
        for (boolean quadratic : new boolean[] {false, true}) {
            function(
                    x -> variable(x, quadratic),
                    10.5e3,
                    3000,
                    11.1e3,
                    2700,
                    4.7e3,
                    900,
                    5.1e3,
                    700,
                    7.3e3,
                    1700,
                    0.25,
                    1);
            refuses("capacity at 95 degF, full", 0);
            refuses("power at 95 degF, full", 0);
            refuses("capacity at 82 degF, full", 0);
            refuses("power at 82 degF, full", 0);
            refuses("capacity at 82 degF, low", 0);
            refuses("power at 82 degF, low", 0);
            refuses("capacity at 67 degF, low", 0);
            refuses("power at 67 degF, low", 0);
            refuses("capacity at 87 degF, intermediate", 0);
            refuses("power at 87 degF, intermediate", 0);
            refuses("degradation coefficient", -0.1, 1.1);
            refuses("load factor V", 0, 1.6);
        }
    }

    private static void variable(double[] x, boolean quadratic) {
        if (quadratic) {
            SeasonalRatings.variableSpeedQuadratic(
                    x[0],
                    x[1],
                    x[2],
                    x[3],
                    x[4],
                    x[5],
                    x[6],
                    x[7],
                    x[8],
                    x[9],
                    x[10],
                    x[11],
                    RatingBins.COOLING);
        } else {
            SeasonalRatings.variableSpeed(
                    x[0],
                    x[1],
                    x[2],
                    x[3],
                    x[4],
                    x[5],
                    x[6],
                    x[7],
                    x[8],
                    x[9],
                    x[10],
                    x[11],
                    RatingBins.COOLING);
        }
    }

    private static void heating() {
        function(x -> SeasonalRatings.heatingLoadM(x[0], x[1], x[2]), f(30), f(5), 10e3);
        refuses("outdoor temperature", 199, 351);
        refuses("design outdoor temperature", 199, f(65) - 0.9);
        refuses("design heating requirement", 0);
        function(
                x -> SeasonalRatings.heatingLoadM1(x[0], x[1], x[2], x[3], x[4]),
                f(30),
                f(55),
                f(5),
                1.15,
                10e3);
        refuses("outdoor temperature", 199, 351);
        refuses("zero-load temperature", 249, f(66));
        refuses("design outdoor temperature", 199, f(55) - 0.9);
        refuses("load line factor C", 0.09, 3.1);
        refuses("cooling capacity", 0);
        function(x -> SeasonalRatings.heatingLine(x[0], x[1], x[2], x[3]), f(30), 3, 2, 1);
        refuses("outdoor temperature", 199, 351);
        for (boolean m1 : new boolean[] {false, true}) {
            function(
                    x -> heatPump(x, m1),
                    10e3,
                    3000,
                    8.8e3,
                    2900,
                    6.4e3,
                    2600,
                    0.25,
                    f(-20),
                    f(-15),
                    1);
            for (String where : new String[] {"47", "35", "17"}) {
                refuses("capacity at " + where + " degF", 0);
                refuses("power at " + where + " degF", 0);
            }
            refuses("degradation coefficient", -0.1, 1.1);
            refuses("cut-out temperature", 149, 331);
            refuses("cut-in temperature", f(-21), 331);
            refuses("defrost credit", 0.99, 1.06);
        }
        // A capacity line that falls to nothing where the load is.
        function(x -> heatPump(x, false), 10e3, 3000, 8.8e3, 2900, 6.4e3, 2600, 0.25, 150, 150, 1);
        next = 4;
        CASES.add(new Case("capacity at bin", call, with(good, 4, 0.1), 0.1));
        CASES.add(new Case("power at bin", call, with(good, 5, 0.1), 0.1));
        staged(true);
        staged(false);
    }

    private static double[] with(double[] x, int i, double value) {
        double[] out = x.clone();
        out[i] = value;
        return out;
    }

    private static void heatPump(double[] x, boolean m1) {
        if (m1) {
            SeasonalRatings.heatingM1(
                    x[0],
                    x[1],
                    x[2],
                    x[3],
                    x[4],
                    x[5],
                    x[6],
                    10e3,
                    1.15,
                    f(55),
                    f(5),
                    x[7],
                    x[8],
                    x[9],
                    RatingBins.HEATING_REGION_IV_M1);
        } else {
            SeasonalRatings.heatingM(
                    x[0],
                    x[1],
                    x[2],
                    x[3],
                    x[4],
                    x[5],
                    x[6],
                    10e3,
                    f(5),
                    x[7],
                    x[8],
                    x[9],
                    RatingBins.HEATING_REGION_IV);
        }
    }

    /** Two stages, or variable speed: numbers of the high stage, then of the low one, then more. */
    private static void staged(boolean two) {
        int low = two ? 8 : 4;
        double[] x = {
            10e3, 3000, 8.8e3, 2900, 6.4e3, 2600, 7e3, 1400, 6.1e3, 1350, 5e3, 1300, 3.8e3, 1200
        };
        int count = 6 + low;
        double[] arguments = java.util.Arrays.copyOf(x, count + 4);
        arguments[count] = 5000;
        arguments[count + 1] = f(-20);
        arguments[count + 2] = f(-15);
        arguments[count + 3] = 1;
        function(y -> staged(y, two), arguments);
        for (int i = 0; i < 6; i++) {
            refuses("high-stage heating datum", 0, -1);
        }
        for (int i = 0; i < low; i++) {
            refuses("low-stage heating datum", 0, -1);
        }
        refuses("heating load of a bin", -1, 2e7);
        refuses("cut-out temperature", 149, 331);
        refuses("cut-in temperature", f(-21), 331);
        refuses("defrost credit", 0.99, 1.06);
        if (!two) {
            function(
                    y ->
                            SeasonalRatings.heatingVariableSpeed(
                                    java.util.Arrays.copyOf(x, 6),
                                    java.util.Arrays.copyOfRange(x, 6, 10),
                                    y[0],
                                    y[1],
                                    0.25,
                                    new double[RatingBins.HEATING_REGION_IV.size()],
                                    f(-20),
                                    f(-15),
                                    1,
                                    RatingBins.HEATING_REGION_IV),
                    7e3,
                    2000);
            refuses("intermediate", 0, 5000, 9000);
            refuses("power at 35 degF, intermediate", 0);
        }
    }

    private static void staged(double[] y, boolean two) {
        int low = two ? 8 : 4;
        double[] high = java.util.Arrays.copyOf(y, 6);
        double[] lows = java.util.Arrays.copyOfRange(y, 6, 6 + low);
        RatingBins bins = RatingBins.HEATING_REGION_IV;
        double[] loads = new double[bins.size()];
        java.util.Arrays.fill(loads, y[6 + low]);
        if (two) {
            SeasonalRatings.heatingTwoStage(
                    high,
                    lows,
                    0.25,
                    0.25,
                    Double.NEGATIVE_INFINITY,
                    loads,
                    y[7 + low],
                    y[8 + low],
                    y[9 + low],
                    bins);
        } else {
            SeasonalRatings.heatingVariableSpeed(
                    high, lows, 7e3, 2000, 0.25, loads, y[7 + low], y[8 + low], y[9 + low], bins);
        }
    }

    private static void rest() {
        double[] coil = new double[ApparatusDewPoint.RESULTS];
        function(
                x -> ApparatusDewPoint.fit(x[0], x[1], x[2], x[3], x[4], 0.75, coil),
                300,
                0.011,
                101_325,
                0.56,
                10e3);
        refuses("entering dry bulb", 273, 334);
        refuses("entering humidity ratio", -1e-3, 0.051);
        refuses("pressure", 49_000, 111_000);
        refuses("dry-air mass flow", 0);
        refuses("total capacity", 0);
        function(
                x -> ApparatusDewPoint.run(x[0], x[1], x[2], x[3], x[4], x[5], coil),
                300,
                0.011,
                101_325,
                0.56,
                10e3,
                1);
        refuses("entering dry bulb", 273, 334);
        refuses("entering humidity ratio", -1e-3, 0.051, 0.03);
        refuses("pressure", 49_000, 111_000);
        refuses("dry-air mass flow", 0);
        refuses("total capacity", 0);
        refuses("bypass constant", 0);
        function(
                x ->
                        BinMethod.cooling(
                                x[0],
                                x[1],
                                x[2],
                                x[3],
                                x[4],
                                x[5],
                                x[6],
                                x[7],
                                x[8],
                                x[9],
                                new double[] {x[10]},
                                new double[] {x[11]},
                                new double[BinMethod.RESULTS]),
                300,
                297,
                1000,
                308,
                10e3,
                3000,
                301,
                11e3,
                2700,
                0.2,
                305,
                100);
        refuses("conductance", 0);
        refuses("indoor temperature", 273, 324);
        refuses("gains", -1, 2e6);
        refuses("warm-point temperature", 301);
        refuses("warm-point capacity", 0);
        refuses("warm-point power", 0);
        skip();
        refuses("mild-point capacity", 0);
        refuses("mild-point power", 0);
        refuses("degradation coefficient", -0.1, 1.1);
        refuses("bin temperature", 199, 351);
        refuses("bin hours", -1, 8785);
        CASES.add(new Case("capacity at bin", call, with(with(good, 10, 340), 4, 1000), 1000));
        CASES.add(new Case("power at bin", call, with(with(good, 10, 340), 5, 100), 100));
        function(x -> DegreeDays.coolingOfSinusoidalDay(x[0], x[1], x[2]), 297, 5, 291);
        refuses("daily mean temperature", 173, 374);
        refuses("amplitude", -1);
        refuses("base temperature", 173, 374);
        function(x -> DegreeDays.energy(x[0], x[1], x[2]), 300, 800, 3.5);
        refuses("conductance", -1, 2e6);
        refuses("degree-days", -1, 36_601);
        refuses("performance", 0);
        function(x -> CoilFrost.finnedArea(x[0], x[1]), 1, 50);
        refuses("bypass mass", -1, 1001);
        refuses("coefficient", 0);
        function(x -> CoilFrost.fillingMass(x[0], x[1], x[2]), 20, 1.7e-3, 250);
        refuses("finned area", -1, 2e4);
        skip();
        skip();
        function(x -> CoilFrost.airConductance(x[0], x[1]), 0.5, 1);
        refuses("air over the ice", -1, 1001);
        refuses("bypass mass", -1, 1001);
        function(x -> CoilFrost.surfaceConductance(x[0]), 1);
        refuses("bypass mass", 0);
        function(x -> FieldRules.suctionAfter(x[0], x[1], x[2]), 278, 297, 293);
        refuses("saturated suction", 223, 324);
        refuses("return air before", 273, 324);
        refuses("return air after", 273, 324);
        function(x -> FurnaceModel.output(x[0], x[1], x[2]), 20e3, 0.8, 0.95);
        refuses("rated furnace input", 0);
        refuses("altitude factor", 0.29, 1.01);
        refuses("furnace efficiency", 0.29, 1.01);
        function(x -> FurnaceModel.temperatureRise(x[0], x[1], x[2]), 15e3, 0.5, 1010);
        refuses("furnace output", -1, 2e6);
        refuses("dry-air mass flow", 0);
        refuses("specific heat", 999, 1201);
        function(x -> HeatPumpModel.seenOutdoor(x[0], x[1], x[2]), 270, 80_000, 0.8);
        refuses("outdoor temperature", 223, 304);
        refuses("pressure", 49_000, 111_000);
        refuses("capacity ratio", -0.1, 2.1);
        function(
                x -> HeatPumpModel.value(270, 80_000, 3000, 2900, 2600, x[0], x[1], x[2]),
                10e3,
                8.8e3,
                6.4e3);
        refuses("capacity at 47 degF", 0);
        refuses("capacity at 35 degF", 0);
        refuses("capacity at 17 degF", 0);
        function(
                x -> RatingPoint.ofNet(300, 0.011, 0.56, 308, 101_325, 10e3, 7.5e3, 3000, x[0]),
                300);
        refuses("indoor fan power", -1, 3001);
        function(
                x -> Tariffs.timeOfUseCharge(x[0], x[1], x[2], x[3], x[4], x[5]),
                100,
                200,
                4,
                0.3,
                0.1,
                8);
        refuses("peak energy", -1);
        refuses("off-peak energy", -1);
        refuses("demand", -1);
        double[] hourly = new double[8760];
        function(
                x ->
                        Tariffs.months(
                                hourly,
                                (int) x[0],
                                (int) x[1],
                                (int) x[2],
                                new double[12],
                                new double[12],
                                new double[12]),
                14,
                20,
                1);
        whole("first peak hour", -1, 24);
        whole("end of peak", -1, 25);
        whole("first weekday", -1, 8);
        RatingPoint rating =
                RatingPoint.ofNet(299.8, 0.0111, 0.56, 308.15, 101_325, 10e3, 7.4e3, 3000, 300);
        assertThat(rating.totalCapacity()).isEqualTo(10_300);
    }

    /** An argument that is a whole number: not a number is not among the bad ones. */
    private static void whole(String quantity, double... bad) {
        for (double b : bad) {
            add(quantity, b);
        }
        next++;
    }

    static Stream<Case> cases() {
        return CASES.stream();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void what_is_out_of_range_is_refused_by_name(Case c) {
        assertThatThrownBy(() -> c.call().with(c.arguments()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining(c.quantity());
    }
}
