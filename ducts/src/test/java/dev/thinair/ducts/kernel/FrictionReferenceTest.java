package dev.thinair.ducts.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Friction factors against 40-digit arithmetic (reference cases DUCT-FRIC-001 to 017, mpmath
 * 1.2.1).
 */
class FrictionReferenceTest {

    @ParameterizedTest
    @CsvSource({
        "4000, 0, 0.0399070140556349",
        "4000, 0.001, 0.0409103898628461",
        "10000, 0.0006, 0.0317935778424627",
        "26000, 0.0006, 0.0257328216791674",
        "26000, 0.006, 0.035064286989994",
        "50000, 0.0001, 0.0212478837517399",
        "100000, 0.0001, 0.0185138660774716",
        "100000, 0, 0.0179897730842738",
        "250000, 0.00026, 0.0170247171521839",
        "1e6, 1e-5, 0.011869544827945",
        "1e7, 1e-6, 0.00821318040425939",
        "1e8, 0, 0.00594046635163676",
        "1e8, 0.05, 0.0715509040910833",
        "3000, 0.02, 0.0592874223954871",
        "2300, 0.05, 0.0806574236563997",
        "60000, 0.03, 0.0576821326956527",
        "15000, 0.002, 0.0312655735845029"
    })
    void colebrook_white_to_the_printed_fifteen_digits(double re, double relative, double f) {
        // 15 printed digits: half a unit of the last is at most 5e-15 relative
        assertThat(Friction.colebrookWhite(re, relative)).isCloseTo(f, within(6e-15 * f));
    }
}
