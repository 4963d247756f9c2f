package dev.thinair.psychro.kernel;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.domains.Domain;
import org.junit.jupiter.api.Test;

@Domain(States.class)
class TransportTest {

    // Lemmon and Jacobsen (2004) table V, zero density at 300 K (from memory): printed digits.
    @Test
    void dry_air_meets_its_check_values() {
        assertThat(Transport.dryAirViscosity(300)).isCloseTo(18.5230e-6, within(1e-10));
        assertThat(Transport.dryAirConductivity(300, Transport.dryAirViscosity(300)))
                .isCloseTo(26.3529e-3, within(1e-7));
        assertThat(Transport.dryAirViscosity(100)).isCloseTo(7.09559e-6, within(1e-11));
        assertThat(Transport.dryAirConductivity(100, Transport.dryAirViscosity(100)))
                .isCloseTo(9.35902e-3, within(1e-7));
    }

    // IAPWS R15-11 table of check values, zero density (from memory): 298.15 K and 873.15 K.
    // R12-08 has none at zero density; its 873.15 K, 1 kg/m3 value 32.619 uPa s is 0.1 % away.
    @Test
    void vapor_meets_its_check_values() {
        assertThat(Transport.vaporConductivity(298.15)).isCloseTo(18.4341883e-3, within(1e-9));
        assertThat(Transport.vaporConductivity(873.15)).isCloseTo(79.1034659e-3, within(1e-9));
        assertThat(Transport.vaporViscosity(873.15)).isCloseTo(32.619e-6, within(6e-8));
    }

    /** A second typing of Wilke's rule, by molar mass and without the shortcuts. */
    private static double wilke(double w, double etaA, double etaW, double a, double b) {
        double xw = w / (0.621945 + w);
        double xa = 1 - xw;
        double ma = 1;
        double mw = 0.621945;
        double aw =
                Math.pow(1 + Math.sqrt(etaA / etaW) * Math.pow(mw / ma, 0.25), 2)
                        / Math.sqrt(8 * (1 + ma / mw));
        double wa =
                Math.pow(1 + Math.sqrt(etaW / etaA) * Math.pow(ma / mw, 0.25), 2)
                        / Math.sqrt(8 * (1 + mw / ma));
        return xa * a / (xa + xw * aw) + xw * b / (xw + xa * wa);
    }

    @Property(tries = 1000)
    void mixtures_follow_the_mixing_rule(@ForAll States.State s) {
        double t = s.dryBulb();
        double w = s.humidityRatio();
        double air = Transport.dryAirViscosity(t);
        double vapor = Transport.vaporViscosity(t);
        double expected = wilke(w, air, vapor, air, vapor);
        assertThat(Transport.viscosity(t, w, s.pressure()))
                .isCloseTo(expected, within(1e-12 * expected));
        double heat =
                wilke(
                        w,
                        air,
                        vapor,
                        Transport.dryAirConductivity(t, air),
                        Transport.vaporConductivity(t));
        assertThat(Transport.conductivity(t, w, s.pressure())).isCloseTo(heat, within(1e-12));
    }

    @Property(tries = 1000)
    void dry_air_grows_more_viscous_and_conducts_better_when_warmer(@ForAll States.State s) {
        double t = Math.min(s.dryBulb(), 472);
        assertThat(Transport.viscosity(t + 1, 0, 1e5))
                .isGreaterThan(Transport.viscosity(t, 0, 1e5));
        assertThat(Transport.conductivity(t + 1, 0, 1e5))
                .isGreaterThan(Transport.conductivity(t, 0, 1e5));
    }

    @Test
    void dry_air_alone_is_the_limit_of_the_mixture() {
        assertThat(Transport.viscosity(300, 0, 1e5)).isEqualTo(Transport.dryAirViscosity(300));
        assertThat(Transport.viscosity(300, 0.02, 1e5)).isLessThan(18.4e-6).isGreaterThan(18.0e-6);
    }
}
