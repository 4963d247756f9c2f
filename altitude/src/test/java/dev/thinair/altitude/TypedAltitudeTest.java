package dev.thinair.altitude;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatNullPointerException;
import static org.assertj.core.api.Assertions.within;

import dev.thinair.psychro.MoistAir;
import dev.thinair.units.Si;
import dev.thinair.units.Units;
import dev.thinair.working.Working;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class TypedAltitudeTest {

    private static final SitePressure SITE = SitePressure.standardAt(Units.feet(7200));
    private static final DensityRatio RATIO = DensityRatio.atConstantTemperature(SITE);
    private static final MoistAir AIR =
            MoistAir.ofDryBulbAndRelativeHumidity(
                    Units.fahrenheit(75), Units.percent(40), SITE.pressure());

    static Stream<Arguments> workings() {
        Stream.Builder<Arguments> all = Stream.builder();
        for (SitePressure site :
                List.of(
                        SITE,
                        SitePressure.handbookAt(Units.metres(2000)),
                        SitePressure.ofStation(Units.inchesOfMercury(22.9)),
                        SitePressure.ofAltimeterSetting(
                                Units.inchesOfMercury(29.92), Units.feet(7200)))) {
            all.add(Arguments.of(site.working(), site.pressure()));
        }
        for (DensityRatio ratio :
                List.of(
                        RATIO,
                        DensityRatio.ofStandardAtmosphere(Units.feet(6000)),
                        DensityRatio.toStandardAir(SITE, Units.fahrenheit(95)),
                        DensityRatio.ofMoistAir(AIR))) {
            all.add(Arguments.of(ratio.working(), ratio.value()));
        }
        for (HeatConstants constants : HeatConstants.values()) {
            AirHeatFactors factors = AirHeatFactors.of(AIR, constants);
            all.add(Arguments.of(factors.sensibleWorking(), factors.sensible()));
            all.add(Arguments.of(factors.latentWorking(), factors.latent()));
            all.add(Arguments.of(factors.totalWorking(), factors.total()));
        }
        for (Derating derating : deratings()) {
            all.add(Arguments.of(derating.working(), derating.heat()));
        }
        AirflowPerTon perTon = new AirflowPerTon(Units.cubicFeetPerMinutePerTon(400), RATIO);
        all.add(Arguments.of(perTon.working(), perTon.actual()));
        BlowerAtSite blower =
                new BlowerAtSite(
                        Units.cubicFeetPerMinute(1200),
                        Units.inchesOfWater(0.5),
                        Units.watts(400),
                        RATIO);
        all.add(Arguments.of(blower.working(), blower.power()));
        return all.build();
    }

    private static List<Derating> deratings() {
        BurnerRule table =
                new BurnerRule.MakersTable(
                        List.of(
                                new BurnerRule.Point(Units.feet(0), Units.ratio(1)),
                                new BurnerRule.Point(Units.feet(10_000), Units.percent(70))),
                        "invented manual, page 1");
        return List.of(
                Derating.ductsAtSamePressureDrop(RATIO),
                Derating.ductsWithSameBlowerAndSpeed(RATIO),
                Derating.ductsWithSameBlowerAndAViscousFilter(
                        RATIO, Units.percent(30), Units.ratio(2)),
                Derating.ductsAtSameVelocity(RATIO),
                Derating.airflowForSameHeat(RATIO),
                Derating.blowerAtSameSpeed(RATIO),
                Derating.blowerAtSamePressure(RATIO),
                Derating.blowerAtSameMass(RATIO),
                Derating.coilAtSameVolume(RATIO, Units.ratio(0.85), Units.ratio(0.6)),
                Derating.coilAtSameMass(RATIO),
                Derating.condenserWithSameFan(RATIO, Units.ratio(0.6), Units.ratio(0.6)),
                Derating.burner(Units.feet(7200), table, RATIO),
                Derating.burner(Units.feet(7200), new BurnerRule.FourPercentFromSeaLevel(), RATIO),
                Derating.burner(Units.feet(1500), new BurnerRule.FourPercentFromSeaLevel(), RATIO),
                Derating.burner(
                        Units.feet(7200), new BurnerRule.FourPercentFromTwoThousandFeet(), RATIO));
    }

    // Every formula shown is evaluated with the numbers shown; the last line is the result.
    @ParameterizedTest(name = "{0}")
    @MethodSource("workings")
    void a_working_ends_with_the_result_and_every_step_holds(Working working, Quantity<?> result) {
        assertThat(working.result()).isEqualTo(result);
        for (Working.Step step : working.steps()) {
            step.recomputed()
                    .ifPresent(
                            number -> {
                                double shown = step.result().getValue().doubleValue();
                                assertThat(number)
                                        .as(step.formula().text())
                                        .isCloseTo(shown, within(1e-12 * Math.abs(shown)));
                            });
        }
        assertThat(working.toText()).doesNotContain("NaN", "null");
        assertThat(working.toHtml()).contains("<math").endsWith("</section>\n");
        assertThat(working.toMarkdown()).startsWith("### ");
    }

    @Test
    void every_question_is_answered_in_volume_mass_and_heat() {
        assertThat(deratings()).extracting(Derating::question).contains(Derating.Question.values());
        // 7200 ft: pressure ratio 0.76579; the arithmetic is that of the reference tables.
        double r = RATIO.number();
        assertThat(r).isCloseTo(0.7658, within(5e-5));
        assertRatios(Derating.ductsAtSamePressureDrop(RATIO), Math.pow(r, -0.5), Math.sqrt(r));
        assertRatios(Derating.ductsWithSameBlowerAndSpeed(RATIO), 1, r);
        assertRatios(Derating.ductsAtSameVelocity(RATIO), 1, r);
        assertRatios(Derating.airflowForSameHeat(RATIO), 1 / r, 1);
        assertRatios(Derating.blowerAtSameSpeed(RATIO), 1, r);
        assertRatios(Derating.blowerAtSamePressure(RATIO), Math.pow(r, -0.5), Math.sqrt(r));
        assertRatios(Derating.blowerAtSameMass(RATIO), 1 / r, 1);
        assertRatios(Derating.coilAtSameMass(RATIO), 1 / r, 1);
        Derating loaded =
                Derating.ductsWithSameBlowerAndAViscousFilter(
                        RATIO, Units.percent(30), Units.ratio(2));
        assertThat(Si.ratio(loaded.volume(), "v")).isBetween(0.9, 0.999);
        Derating coil = Derating.coilAtSameVolume(RATIO, Units.ratio(0.85), Units.ratio(0.6));
        assertThat(Si.ratio(coil.heat(), "q")).isBetween(r, 1.0);
        assertThat(Si.ratio(coil.mass(), "m")).isEqualTo(r);
        assertThat(
                        Si.ratio(coil.differenceForSameHeat().orElseThrow(), "d")
                                * Si.ratio(coil.heat(), "q"))
                .isCloseTo(1, within(1e-14));
    }

    private static void assertRatios(Derating derating, double volume, double mass) {
        assertThat(Si.ratio(derating.volume(), "v")).isCloseTo(volume, within(1e-14));
        assertThat(Si.ratio(derating.mass(), "m")).isCloseTo(mass, within(1e-14));
        assertThat(Si.ratio(derating.heat(), "q")).isCloseTo(mass, within(1e-14));
    }

    @Test
    void blower_pressure_and_power() {
        double r = RATIO.number();
        assertThat(Derating.blowerAtSameSpeed(RATIO).pressure()).contains(Units.ratio(r));
        assertThat(Derating.blowerAtSameSpeed(RATIO).power()).contains(Units.ratio(r));
        assertThat(Derating.blowerAtSamePressure(RATIO).pressure()).contains(Units.ratio(1));
        assertThat(Derating.blowerAtSameMass(RATIO).power()).contains(Units.ratio(1 / (r * r)));
        assertThat(Derating.ductsAtSameVelocity(RATIO).pressure()).isEmpty();
        assertThat(Derating.ductsAtSameVelocity(RATIO).differenceForSameHeat()).isEmpty();
        BlowerAtSite blower =
                new BlowerAtSite(
                        Units.cubicFeetPerMinute(1200),
                        Units.inchesOfWater(0.5),
                        Units.watts(400),
                        RATIO);
        assertThat(blower.pressure().getValue().doubleValue()).isCloseTo(0.5 * r, within(1e-15));
        assertThat(blower.pressure().getUnit()).isEqualTo(Units.INCH_OF_WATER);
        assertThat(blower.power().getValue().doubleValue()).isCloseTo(400 * r, within(1e-12));
        assertThat(
                        BlowerAtSite.cataloguePressureFor(blower.pressure(), RATIO)
                                .getValue()
                                .doubleValue())
                .isCloseTo(0.5, within(1e-15));
        assertThat(blower.toString()).startsWith("1200 cfm (566.3 L/s) at 0.3829 in. w.g.");
    }

    @Test
    void airflow_per_ton() {
        // Reference case PA-I069: 522.337 cfm/ton at 7200 ft.
        AirflowPerTon perTon = new AirflowPerTon(Units.cubicFeetPerMinutePerTon(400), RATIO);
        assertThat(perTon.actual().getValue().doubleValue()).isCloseTo(522.337, within(0.15));
        assertThat(
                        Si.cubicMetresPerSecond(
                                perTon.actualFor(Units.tonsOfRefrigeration(3)), "airflow"))
                .isCloseTo(3 * 522.337 * 0.028316846592 / 60, within(3e-4));
        assertThat(perTon.toString())
                .isEqualTo(
                        "400 cfm/ton (53.68 L/s/kW) of standard air are 522.3 cfm/ton (70.1"
                                + " L/s/kW) of site air");
    }

    @Test
    void burner_comes_with_its_cautions() {
        Derating burner =
                Derating.burner(Units.feet(7200), new BurnerRule.FourPercentFromSeaLevel(), RATIO);
        assertThat(Si.ratio(burner.heat(), "q")).isCloseTo(0.712, within(1e-12));
        assertThat(Si.ratio(burner.volume(), "v")).isCloseTo(0.712 / RATIO.number(), within(1e-12));
        assertThat(burner.cautions()).hasSize(3);
        assertThat(burner.cautions().get(0)).contains("maker's instructions", "local code");
        assertThat(burner.cautions().get(1)).contains("carbon monoxide", "licensed");
        assertThat(burner.working().notes()).containsAll(burner.cautions());
        assertThat(burner.heatOf(Units.btuPerHour(100_000)))
                .isEqualTo(Units.quantity(100_000 * 0.712, Units.BTU_PER_HOUR));
        assertThat(Derating.ductsAtSameVelocity(RATIO).cautions()).isEmpty();
        assertThat(Derating.blowerAtSameSpeed(RATIO).cautions()).isEmpty();
        assertThat(Derating.blowerAtSameMass(RATIO).cautions().get(1)).contains("disconnect");
        assertThat(Derating.blowerAtSamePressure(RATIO).working().notes())
                .anyMatch(note -> note.contains("nameplate"));
    }

    @Test
    void burner_rules() {
        BurnerRule band =
                new BurnerRule.FlatBand(
                        Units.feet(2000), Units.feet(4500), Units.percent(10), "code");
        assertThat(band.multiplier(Units.feet(4300))).isEqualTo(Units.ratio(0.9));
        assertThat(band.words()).isEqualTo("10 % off from 2000 ft (609.6 m) to 4500 ft (1372 m)");
        BurnerRule share = new BurnerRule.ShareFromSeaLevel(Units.percent(2), "listing");
        assertThat(Si.ratio(share.multiplier(Units.feet(5000)), "k")).isCloseTo(0.9, within(1e-12));
        assertThat(share.words())
                .isEqualTo("2 % per 1000 ft counted from sea level, once above 2000 ft");
        assertThat(share.source()).isEqualTo("listing");
        BurnerRule threshold = new BurnerRule.FourPercentFromTwoThousandFeet();
        assertThat(Si.ratio(threshold.multiplier(Units.feet(5000)), "k"))
                .isCloseTo(0.88, within(1e-12));
        assertThat(threshold.words()).contains("2000 ft");
        assertThat(threshold.source()).contains("common practice");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BurnerRule.MakersTable(List.of(), "x"))
                .withMessage("maker's table has 0 point(s), but needs at least two");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BurnerRule.MakersTable(List.of(), " "))
                .withMessage("the maker's table has no source: name the document and page");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BurnerRule.ShareFromSeaLevel(Units.percent(9), "x"))
                .withMessageStartingWith("reduction per 1000 ft is 0.09 (ratio)");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new BurnerRule.ShareFromSeaLevel(Units.percent(2), ""))
                .withMessage(
                        "the reduction per 1000 ft has no source: name the listing or document");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                new BurnerRule.FlatBand(
                                        Units.feet(1), Units.feet(2), Units.percent(1), null))
                .withMessage("the flat reduction has no source: name the code or document");
    }

    // The trade's 1.08, 4775, 4.5 and what they become.
    @Test
    void air_factors_at_sea_level_and_at_the_site() {
        AirHeatFactors standard = AirHeatFactors.standardInchPound();
        assertThat(standard.sensible().getValue().doubleValue()).isCloseTo(1.08, within(1e-12));
        assertThat(standard.latent().getValue().doubleValue()).isCloseTo(4774.5, within(1e-9));
        assertThat(standard.total().getValue().doubleValue()).isCloseTo(4.5, within(1e-12));
        AirHeatFactors si = AirHeatFactors.standardSi();
        assertThat(si.sensible().getValue().doubleValue()).isCloseTo(1.2072, within(1e-12));
        assertThat(si.latent().getValue().doubleValue()).isCloseTo(3001.2, within(1e-9));
        assertThat(si.total().getValue().doubleValue()).isCloseTo(1.2, within(1e-12));
        AirHeatFactors site = AirHeatFactors.of(AIR);
        assertThat(site.sensible().getValue().doubleValue()).isBetween(0.90, 0.94);
        assertThat(site.toString())
                .startsWith("air-side factors: sensible 0.9")
                .contains("W/(L/s K) (0.8", "BTU/(h cfm °F)");
        assertThat(Si.kilogramsPerCubicMetre(site.dryAirDensity(), "rho"))
                .isCloseTo(1 / Si.cubicMetresPerKilogram(AIR.specificVolume(), "v"), within(1e-15));
    }

    @Test
    void heat_carried_by_an_airflow() {
        AirHeatFactors standard = AirHeatFactors.standardInchPound();
        double btu = 1055.05585262 / 3600;
        assertThat(
                        Si.watts(
                                standard.sensibleHeat(
                                        Units.cubicFeetPerMinute(1200),
                                        Units.fahrenheitDifference(20)),
                                "q"))
                .isCloseTo(1.08 * 1200 * 20 * btu, within(1e-9));
        assertThat(
                        Si.watts(
                                standard.latentHeat(
                                        Units.cubicFeetPerMinute(1000), Units.grainsPerPound(10)),
                                "q"))
                .isCloseTo(4774.5 * 1000 * 10 / 7000 * btu, within(1e-9));
        assertThat(
                        Si.watts(
                                standard.totalHeat(
                                        Units.cubicFeetPerMinute(1000), Units.btuPerPound(6)),
                                "q"))
                .isCloseTo(4.5 * 1000 * 6 * btu, within(1e-9));
        assertThat(
                        Si.cubicMetresPerSecond(
                                standard.airflowForSensibleHeat(
                                        Units.btuPerHour(21_600), Units.fahrenheitDifference(20)),
                                "V"))
                .isCloseTo(1000 * 0.028316846592 / 60, within(1e-12));
    }

    @Test
    void site_pressure_and_ratios() {
        assertThat(SITE.pascals()).isEqualTo(Si.pascals(SITE.pressure(), "p"));
        assertThat(Si.metres(SITE.pressureAltitude(), "H")).isCloseTo(2194.56, within(1e-8));
        assertThat(SITE.ratioToSeaLevel()).isEqualTo(RATIO.value());
        assertThat(SITE)
                .hasToString(
                        "site pressure 77.594 kPa (22.913 inHg), standard at 7200 ft (2194.6 m)");
        assertThat(SitePressure.ofStation(Units.kilopascals(77)))
                .hasToString("site pressure 77 kPa (22.738 inHg), station reading");
        assertThat(
                        SitePressure.ofAltimeterSetting(
                                        Units.hectopascals(1013.25), Units.metres(0))
                                .toString())
                .endsWith("from an altimeter setting of 1013.3 hPa (29.921 inHg)");
        assertThat(RATIO)
                .hasToString("density ratio 0.7658 (site over sea level at the same temperature)");
        assertThat(DensityRatio.ofStandardAtmosphere(Units.feet(6000)).basis())
                .isEqualTo(DensityRatio.Basis.STANDARD_ATMOSPHERE);
        assertThat(SitePressure.standardAt(Units.feet(7200)))
                .isEqualTo(SITE)
                .hasSameHashCodeAs(SITE);
        assertThat(SitePressure.handbookAt(Units.feet(7200))).isNotEqualTo(SITE);
        assertThat(DensityRatio.atConstantTemperature(SITE))
                .isEqualTo(RATIO)
                .hasSameHashCodeAs(RATIO);
        assertThat(DensityRatio.toStandardAir(SITE, Units.celsius(20))).isNotEqualTo(RATIO);
        assertThat(AirHeatFactors.of(AIR))
                .isEqualTo(AirHeatFactors.of(AIR))
                .hasSameHashCodeAs(AirHeatFactors.of(AIR))
                .isNotEqualTo(AirHeatFactors.standardSi());
        assertThat(Derating.ductsAtSameVelocity(RATIO))
                .isEqualTo(Derating.ductsAtSameVelocity(RATIO))
                .hasSameHashCodeAs(Derating.ductsAtSameVelocity(RATIO))
                .isNotEqualTo(Derating.ductsWithSameBlowerAndSpeed(RATIO));
    }

    @Test
    void a_derating_reads_well() {
        assertThat(Derating.ductsAtSamePressureDrop(RATIO))
                .hasToString(
                        "ducts, same pressure drop: volume +14.3 %, mass -12.5 %, heat -12.5 %"
                                + " (density ratio 0.7658)");
        assertThat(Derating.blowerAtSameSpeed(RATIO))
                .hasToString(
                        "blower, same speed: volume +0.0 %, mass -23.4 %, heat -23.4 %, pressure"
                                + " -23.4 %, power -23.4 % (density ratio 0.7658)");
    }

    @Test
    void what_is_not_physical_is_refused_by_name() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SitePressure.standardAt(Units.kilometres(12)))
                .withMessage("elevation is 12000.0 m, but must lie in [-5000.0, 11000.0] m");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SitePressure.handbookAt(Units.kilometres(-6)))
                .withMessage("elevation is -6000.0 m, but must lie in [-5000.0, 11000.0] m");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> SitePressure.ofStation(Units.pascals(29.92)))
                .withMessage(
                        "station pressure is 29.92 Pa, but must lie in [20000.0, 120000.0] Pa");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                SitePressure.ofAltimeterSetting(
                                        Units.inchesOfMercury(22.9), Units.feet(7200)))
                .withMessageStartingWith("altimeter setting is 77548.")
                .withMessageEndingWith("Pa, but must lie in [85000.0, 110000.0] Pa");
        assertThatNullPointerException()
                .isThrownBy(() -> SitePressure.standardAt(null))
                .withMessage("elevation is null, but must be a length");
        assertThatNullPointerException()
                .isThrownBy(() -> SitePressure.ofStation(null))
                .withMessage("station pressure is null, but must be a pressure");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DensityRatio.toStandardAir(SITE, Units.kelvins(75)))
                .withMessage("temperature is 75.0 K, but must lie in [173.15, 473.15] K");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DensityRatio.ofMoistAir(AIR, Units.kilogramsPerCubicMetre(0)))
                .withMessage(
                        "standard density is 0.0 kg/m3, but must be above 0.0 kg/m3 and finite");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                AirHeatFactors.of(
                                        Units.poundsPerCubicFoot(-0.075),
                                        Units.grainsPerPound(60),
                                        HeatConstants.SI_HANDBOOK))
                .withMessageStartingWith("density of dry air is -1.2");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                AirHeatFactors.of(
                                        Units.poundsPerCubicFoot(0.075),
                                        Units.grainsPerPound(-1),
                                        HeatConstants.SI_HANDBOOK))
                .withMessageStartingWith("humidity ratio is -1.4");
        assertThatNullPointerException()
                .isThrownBy(() -> AirHeatFactors.of(AIR, null))
                .withMessage("constants is null");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                AirHeatFactors.standardSi()
                                        .airflowForSensibleHeat(
                                                Units.watts(100), Units.kelvinDifference(-5)))
                .withMessageStartingWith("no airflow carries 100.0 W at a difference of -5.0");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new AirflowPerTon(Units.cubicFeetPerMinutePerTon(0), RATIO))
                .withMessage(
                        "standard airflow per capacity is 0.0 m3/s per W, but must be above 0.0 m3/s"
                                + " per W and finite");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                new BlowerAtSite(
                                        Units.cubicFeetPerMinute(-1),
                                        Units.pascals(1),
                                        Units.watts(1),
                                        RATIO))
                .withMessageStartingWith("airflow is -4.7");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                new BlowerAtSite(
                                        Units.cubicFeetPerMinute(1),
                                        Units.pascals(-1),
                                        Units.watts(1),
                                        RATIO))
                .withMessage("catalogue pressure is -1.0 Pa, but must lie in [0.0, 50000.0] Pa");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                new BlowerAtSite(
                                        Units.cubicFeetPerMinute(1),
                                        Units.pascals(1),
                                        Units.watts(-1),
                                        RATIO))
                .withMessage("catalogue power is -1.0 W, but must lie in [0.0, 1000000.0] W");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> BlowerAtSite.cataloguePressureFor(Units.pascals(-5), RATIO))
                .withMessage("site static pressure is -5.0 Pa, but must lie in [0.0, 50000.0] Pa");
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () -> Derating.coilAtSameVolume(RATIO, Units.ratio(85), Units.ratio(0.6)))
                .withMessageStartingWith("contact factor is 85.0 (ratio)");
        assertThatNullPointerException()
                .isThrownBy(
                        () ->
                                Derating.burner(
                                        null, new BurnerRule.FourPercentFromSeaLevel(), RATIO))
                .withMessage("elevation is null, but must be a length");
        assertThatNullPointerException()
                .isThrownBy(() -> Derating.ductsAtSameVelocity(RATIO).heatOf(null))
                .withMessage("heat at sea level is null, but must be a power");
    }
}
