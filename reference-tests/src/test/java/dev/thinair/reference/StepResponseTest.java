package dev.thinair.reference;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.special.Erf;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The library's transfer matrix, summed over its band to the answer to a step, against the series
 * and closed forms of H. S. Carslaw and J. C. Jaeger, Conduction of Heat in Solids, 2nd ed. (1959),
 * sections 2.5, 3.3 and 3.11, evaluated by Commons Math.
 */
class StepResponseTest {

    private final CaseEvaluator evaluator = CaseEvaluator.standard();

    private void agrees(String quantity, String inputs, double expected) {
        CaseOutcome outcome =
                evaluator.evaluate(
                        new CheckCase(
                                "x",
                                quantity,
                                inputs,
                                Double.toString(expected),
                                "-",
                                "1e-9",
                                "Carslaw and Jaeger",
                                "computed"));
        assertThat(outcome.verdict()).as(outcome.line()).isEqualTo(CaseOutcome.Verdict.OK);
    }

    @ParameterizedTest
    @CsvSource({"0.01, 600", "0.05, 3600", "0.2, 3600", "0.3, 86400", "0.001, 60"})
    void half_space_after_a_step_at_its_surface(double depth, double time) {
        double diffusivity = 1.8 / (2400 * 1000.0);
        agrees(
                "semi-infinite solid, surface step: temperature fraction at depth",
                "depth="
                        + depth
                        + " m; time="
                        + time
                        + " s; k=1.8 W/mK; rho=2400 kg/m3; c=1000 J/kgK",
                Erf.erfc(depth / (2 * Math.sqrt(diffusivity * time))));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.02, 0.05, 0.1, 0.2, 0.5, 1, 2})
    void slab_with_its_far_face_held(double fo) {
        double sum = 1;
        for (int n = 1; n <= 200; n++) {
            sum += 2 * (n % 2 == 0 ? 1 : -1) * Math.exp(-n * n * Math.PI * Math.PI * fo);
        }
        agrees(
                "slab, unit step on one face, other face held: far-face flux / steady flux",
                String.format(Locale.ROOT, "Fo=alpha t/L2=%s", fo),
                sum);
    }

    @ParameterizedTest
    @CsvSource({
        "0.1, 0.2, 0",
        "0.1, 5, 1",
        "1, 0.05, 0",
        "1, 0.05, 1",
        "1, 1, 0.5",
        "1, 3, 1",
        "10, 0.02, 0.8",
        "10, 0.2, 1",
        "100, 0.5, 0.3",
        "100, 0.1, 1"
    })
    void plane_wall_in_a_stirred_fluid(double bi, double fo, double place) {
        BrentSolver roots = new BrentSolver(1e-15, 1e-14);
        double sum = 0;
        for (int n = 0; n < 60; n++) {
            // One root of z tan z = Bi in each half wave.
            double z =
                    roots.solve(
                            200,
                            x -> x * Math.sin(x) - bi * Math.cos(x),
                            n * Math.PI,
                            (n + 0.5) * Math.PI);
            double weight = 4 * Math.sin(z) / (2 * z + Math.sin(2 * z));
            sum += weight * Math.exp(-z * z * fo) * Math.cos(z * place);
        }
        agrees(
                "plane wall suddenly exposed to fluid: excess temperature ratio",
                "Bi=" + bi + "; Fo=" + fo + "; x/L=" + place + " (0 centre, 1 surface)",
                sum);
    }

    @Test
    void a_massless_system_answers_at_once() {
        StepResponse.Transfer half =
                (omega, out) -> {
                    out[0] = 0.5;
                    out[1] = 0;
                };
        assertThat(StepResponse.at(half, 1, 3))
                .isCloseTo(0.5, org.assertj.core.api.Assertions.within(1e-12));
    }
}
