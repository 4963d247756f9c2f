package dev.thinair.examples.classroom;

import dev.thinair.examples.report.HtmlForm;
import dev.thinair.examples.report.TextForm;
import dev.thinair.examples.study.LinePicture;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/**
 * Runs class demonstrations: prints each, and writes its page and its drawings (SVG and PNG).
 *
 * <p>Arguments: names of demonstrations, or none for all; {@code to=folder} for the folder, {@code
 * target/classroom} otherwise. Exit status 0, or 2 with one line on standard error.
 */
public final class Classroom {
    private static final String TO = "to=";

    private Classroom() {}

    public static void main(String[] args) {
        int status = run(args, System.out, System.err);
        if (status != 0) {
            System.exit(status);
        }
    }

    static int run(String[] args, PrintStream out, PrintStream err) {
        Map<String, Supplier<Lesson>> lessons = Lesson.all();
        Path folder = Path.of("target", "classroom");
        List<String> names = new ArrayList<>();
        for (String arg : args) {
            if (arg.startsWith(TO)) {
                folder = Path.of(arg.substring(TO.length()));
            } else if (lessons.containsKey(arg)) {
                names.add(arg);
            } else {
                err.println(
                        "classroom: there is no demonstration \""
                                + arg
                                + "\"; there are "
                                + String.join(", ", lessons.keySet()));
                return 2;
            }
        }
        folder = folder.toAbsolutePath().normalize();
        try {
            for (String name : names.isEmpty() ? List.copyOf(lessons.keySet()) : names) {
                Lesson lesson = lessons.get(name).get();
                out.println(TextForm.of(lesson.document()));
                write(lesson, folder);
                out.println(
                        "Page: "
                                + folder.resolve(name + ".html")
                                + "; drawings beside it: "
                                + String.join(", ", lesson.pictures().keySet())
                                + " (.svg and .png)\n");
            }
        } catch (IOException | UncheckedIOException e) {
            err.println("classroom: cannot write into " + folder + ": " + e.getMessage());
            return 2;
        }
        out.flush();
        return 0;
    }

    private static void write(Lesson lesson, Path folder) throws IOException {
        Files.createDirectories(folder);
        Files.writeString(
                folder.resolve(lesson.name() + ".html"),
                HtmlForm.of(lesson.document()),
                StandardCharsets.UTF_8);
        for (Map.Entry<String, LinePicture> picture : lesson.pictures().entrySet()) {
            picture.getValue().writeSvg(folder.resolve(picture.getKey() + ".svg").toString());
            picture.getValue().writePng(folder.resolve(picture.getKey() + ".png").toString());
        }
    }
}
