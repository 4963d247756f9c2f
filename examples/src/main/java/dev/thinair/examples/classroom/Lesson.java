package dev.thinair.examples.classroom;

import dev.thinair.examples.report.Document;
import dev.thinair.examples.study.LinePicture;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One demonstration, worked out.
 *
 * @param name short name, for the command line and for files
 * @param document what is said, shown and tabulated
 * @param pictures its drawings by file name without ending, in order
 */
public record Lesson(String name, Document document, Map<String, LinePicture> pictures) {

    public Lesson {
        pictures = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(pictures));
    }

    /** All demonstrations, in teaching order, by name. */
    static Map<String, java.util.function.Supplier<Lesson>> all() {
        Map<String, java.util.function.Supplier<Lesson>> lessons = new LinkedHashMap<>();
        lessons.put(MoistAirLesson.NAME, MoistAirLesson::lesson);
        lessons.put(FrictionLesson.NAME, FrictionLesson::lesson);
        lessons.put(SixInchLesson.NAME, SixInchLesson::lesson);
        lessons.put(WallLesson.NAME, WallLesson::lesson);
        lessons.put(RegistersLesson.NAME, RegistersLesson::lesson);
        lessons.put(ParabolaLesson.NAME, ParabolaLesson::lesson);
        lessons.put(OversizeLesson.NAME, OversizeLesson::lesson);
        return lessons;
    }

    /** Collects a lesson; the drawing on the page and the one in the file are the same. */
    static final class Writer {
        private final String name;
        private final Document.Builder document = new Document.Builder();
        private final Map<String, LinePicture> pictures = new LinkedHashMap<>();

        Writer(String name) {
            this.name = name;
        }

        Writer section(String title) {
            document.section(title);
            return this;
        }

        Writer text(String words) {
            document.text(words);
            return this;
        }

        Writer points(String... items) {
            document.add(new Document.Points(List.of(items)));
            return this;
        }

        Writer caution(String words) {
            document.add(new Document.Caution(words));
            return this;
        }

        Writer working(dev.thinair.working.Working working) {
            document.add(new Document.Worked(working));
            return this;
        }

        Writer table(String caption, List<String> head, List<List<String>> rows) {
            document.table(caption, head, rows);
            return this;
        }

        Writer picture(String file, String caption, LinePicture picture) {
            pictures.put(file, picture);
            document.add(new Document.Picture(caption, picture.svg()));
            return this;
        }

        Lesson build(String title, String subtitle) {
            return new Lesson(name, document.build(title, subtitle), pictures);
        }
    }
}
