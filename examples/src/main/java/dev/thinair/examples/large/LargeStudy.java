package dev.thinair.examples.large;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/**
 * Runs the large study on this machine: one CSV file a part, written whole or not at all; parts
 * that are there already are kept, so that a run that was stopped goes on where it stood.
 *
 * <p>Arguments, each optional: {@code to=folder} ({@code target/large-study}), {@code parts=n} (all
 * of them), {@code threads=n} (one a core). Exit status 0, or 2 with one line on standard error.
 */
public final class LargeStudy {
    private LargeStudy() {}

    public static void main(String[] args) {
        int status = run(args, System.out, System.err);
        if (status != 0) {
            System.exit(status);
        }
    }

    static int run(String[] args, PrintStream out, PrintStream err) {
        Path folder = Path.of("target", "large-study");
        int parts = HousesByElevation.PARTS;
        int threads = Runtime.getRuntime().availableProcessors();
        for (String arg : args) {
            try {
                if (arg.startsWith("to=")) {
                    folder = Path.of(arg.substring(3));
                } else if (arg.startsWith("parts=")) {
                    parts = count("parts", arg.substring(6), HousesByElevation.PARTS);
                } else if (arg.startsWith("threads=")) {
                    threads = count("threads", arg.substring(8), 1024);
                } else {
                    throw new IllegalArgumentException(
                            "\"" + arg + "\" is none of to=folder, parts=n, threads=n");
                }
            } catch (IllegalArgumentException e) {
                err.println("large study: " + e.getMessage());
                return 2;
            }
        }
        try {
            folder = folder.toAbsolutePath().normalize();
            Files.createDirectories(folder);
            study(folder, parts, threads, out, err);
            return 0;
        } catch (IOException e) {
            err.println("large study: cannot write into " + folder + ": " + e.getMessage());
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            err.println("large study: stopped; start it again to go on from here");
        } catch (ExecutionException e) {
            err.println("large study: " + e.getCause());
        }
        return 2;
    }

    private static int count(String name, String text, int most) {
        try {
            int n = Integer.parseInt(text);
            if (n >= 1 && n <= most) {
                return n;
            }
        } catch (NumberFormatException e) {
            // told below, with the text
        }
        throw new IllegalArgumentException(
                name + " is \"" + text + "\", but must be a number from 1 to " + most);
    }

    private static void study(Path folder, int parts, int threads, PrintStream out, PrintStream err)
            throws IOException, InterruptedException, ExecutionException {
        List<Integer> left = new ArrayList<>();
        for (int p = 0; p < parts; p++) {
            if (!Files.exists(file(folder, p))) {
                left.add(p);
            }
        }
        out.printf(
                Locale.ROOT,
                "%,d points in %d parts, %d of them there already; %d threads%n",
                (long) parts * HousesByElevation.ROWS,
                parts,
                parts - left.size(),
                threads);
        long start = System.nanoTime();
        ExecutorService workers = Executors.newFixedThreadPool(threads);
        try (ProgressBar bar =
                new ProgressBarBuilder()
                        .setTaskName("parts")
                        .setInitialMax(left.size())
                        .setStyle(ProgressBarStyle.ASCII)
                        .setConsumer(new me.tongfei.progressbar.ConsoleProgressBarConsumer(err, 78))
                        .build()) {
            List<Future<?>> waiting = new ArrayList<>();
            for (int p : left) {
                waiting.add(
                        workers.submit(
                                () -> {
                                    write(folder, p);
                                    bar.step();
                                    return null;
                                }));
            }
            for (Future<?> f : waiting) {
                f.get();
            }
        } finally {
            workers.shutdownNow();
        }
        double seconds = (System.nanoTime() - start) / 1e9;
        if (!left.isEmpty()) {
            out.printf(
                    Locale.ROOT,
                    "computed %,d points in %.1f s, %,.0f a second%n",
                    (long) left.size() * HousesByElevation.ROWS,
                    seconds,
                    left.size() * (double) HousesByElevation.ROWS / seconds);
        }
        MessageDigest digest = sha256();
        for (int p = 0; p < parts; p++) {
            digest.update(Files.readAllBytes(file(folder, p)));
        }
        out.println("parts in " + folder);
        out.println("SHA-256 of all parts: " + HexFormat.of().formatHex(digest.digest()));
    }

    private static MessageDigest sha256() {
        try {
            return MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    private static Path file(Path folder, int part) {
        return folder.resolve(String.format(Locale.ROOT, "part-%03d.csv", part));
    }

    private static void write(Path folder, int part) throws IOException {
        Path half = Files.createTempFile(folder, ".part", ".csv");
        try {
            Files.write(half, HousesByElevation.bytes(HousesByElevation.part(part)));
            Files.move(half, file(folder, part), StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(half);
        }
    }
}
