package dev.thinair.examples;

import dev.thinair.examples.job.Job;
import dev.thinair.examples.job.JobFileException;
import dev.thinair.examples.report.Document;
import dev.thinair.examples.report.HtmlForm;
import dev.thinair.examples.report.TextForm;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/**
 * The main job: reads a job file, works the service call through, prints the review and writes it
 * as one web page.
 *
 * <p>Arguments: none for the job file shipped with the program; or the path of a job file; or that
 * and the path of the page to write ({@code target/service-call.html} otherwise). Exit status 0, or
 * 2 with one line on standard error, in which case no page is written.
 */
public final class ServiceCall {
    static final Path PAGE = Path.of("target", "service-call.html");

    private ServiceCall() {}

    public static void main(String[] args) {
        int status = run(args, System.out, System.err);
        if (status != 0) {
            System.exit(status);
        }
    }

    /** The whole job with its streams given; returns the exit status. */
    static int run(String[] args, PrintStream out, PrintStream err) {
        if (args.length > 2) {
            err.println(
                    "service call: at most two arguments, the job file and the page to write; got "
                            + args.length);
            return 2;
        }
        try {
            String name = args.length > 0 ? args[0] : Job.SHIPPED;
            Job job = args.length > 0 ? Job.read(Path.of(args[0])) : Job.shipped();
            Path page = args.length > 1 ? Path.of(args[1]) : PAGE;
            Document document;
            try {
                document = ReviewDocument.of(new Study(job));
            } catch (IllegalArgumentException | IllegalStateException | ArithmeticException e) {
                // The file is well formed, but what it describes cannot run: a blower outside its
                // table, a unit without a balance.
                err.println(
                        oneLine(name + ": this system cannot be worked out: " + e.getMessage()));
                return 2;
            }
            write(page, HtmlForm.of(document));
            out.print(TextForm.of(document));
            out.println();
            out.println("The same review as a web page: " + page.toAbsolutePath().normalize());
            out.flush();
            return 0;
        } catch (JobFileException e) {
            err.println(e.getMessage());
            return 2;
        } catch (IOException | IllegalArgumentException e) {
            err.println(oneLine("service call: the page cannot be written: " + e));
            return 2;
        }
    }

    /** Writes all or nothing: a reader of the page never meets half of it. */
    private static void write(Path page, String text) throws IOException {
        Path target = page.toAbsolutePath();
        Files.createDirectories(target.getParent());
        Path half =
                target.resolveSibling(
                        "." + target.getFileName() + "." + ProcessHandle.current().pid() + ".part");
        try {
            Files.writeString(half, text, StandardCharsets.UTF_8);
            try {
                Files.move(
                        half,
                        target,
                        StandardCopyOption.ATOMIC_MOVE,
                        StandardCopyOption.REPLACE_EXISTING);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(half, target, StandardCopyOption.REPLACE_EXISTING);
            }
        } finally {
            Files.deleteIfExists(half);
        }
    }

    private static String oneLine(String text) {
        return text.replaceAll("[\\p{Cntrl}\\s]+", " ").trim();
    }
}
