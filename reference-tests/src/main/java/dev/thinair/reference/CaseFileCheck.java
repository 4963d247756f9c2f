package dev.thinair.reference;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * Evaluates a file of check cases from anywhere: one line per case, then {@code N passed, N failed,
 * N unknown}. Without an argument the shipped cases are evaluated. Shipped rows that {@link
 * DisputedCases} lists are printed as {@code disputed} with the evidence and counted at the end of
 * the last line, {@code , N disputed}; they are no failures.
 */
public final class CaseFileCheck {
    private CaseFileCheck() {}

    /** Runs the check; ends with status 1 if a case failed, 2 if the file cannot be read. */
    public static void main(String[] args) {
        PrintStream out =
                new PrintStream(
                        new java.io.FileOutputStream(java.io.FileDescriptor.out),
                        true,
                        StandardCharsets.UTF_8);
        int status = run(args, out);
        if (status != 0) {
            System.exit(status);
        }
    }

    static int run(String[] args, PrintStream out) {
        List<CheckCase> cases = new ArrayList<>();
        try {
            if (args.length == 0) {
                CaseReader.SHIPPED.forEach(name -> cases.addAll(CaseReader.shipped(name)));
            }
            for (String arg : args) {
                cases.addAll(CaseReader.read(Path.of(arg)));
            }
        } catch (IllegalArgumentException e) {
            out.println(e.getMessage());
            return 2;
        }
        CaseEvaluator evaluator = CaseEvaluator.standard();
        int passed = 0;
        int failed = 0;
        int unknown = 0;
        int disputed = 0;
        for (CheckCase checked : cases) {
            CaseOutcome outcome = evaluator.evaluate(checked);
            String evidence =
                    outcome.verdict() == CaseOutcome.Verdict.OFF
                            ? DisputedCases.reason(checked)
                            : null;
            if (evidence != null) {
                out.println(outcome.line("disputed") + " | " + evidence);
                disputed++;
                continue;
            }
            out.println(outcome.line());
            switch (outcome.verdict()) {
                case OK -> passed++;
                case OFF -> failed++;
                case UNKNOWN -> unknown++;
            }
        }
        out.println(
                passed
                        + " passed, "
                        + failed
                        + " failed, "
                        + unknown
                        + " unknown"
                        + (disputed == 0 ? "" : ", " + disputed + " disputed"));
        return failed == 0 ? 0 : 1;
    }
}
