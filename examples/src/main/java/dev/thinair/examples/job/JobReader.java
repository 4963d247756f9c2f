package dev.thinair.examples.job;

import dev.thinair.units.QuantityText;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.ReaderException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * Reads a job file strictly: every key must be known, every required key present, every number must
 * carry a unit of the right kind and lie within its limits. The first fault ends the reading with
 * one line that names the place.
 *
 * <p>The file is composed to YAML nodes and no further, so that each value keeps its line and
 * column, and no value is taken for anything but the text the user wrote ("off" stays a word).
 */
public final class JobReader {
    private static final int LARGEST_BYTES = 1_000_000;
    private static final int DEEPEST = 40;
    private static final Pattern BARE_NUMBER =
            Pattern.compile("[-+]?(\\d+(\\.\\d*)?|\\.\\d+)([eE][-+]?\\d+)?");
    private static final Pattern MONEY =
            Pattern.compile("(\\d+(?:\\.\\d+)?) ?([A-Z]{3}|[$\u20AC\u00A3]) ?/ ?([A-Za-z]+)");
    private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N} .,'/&()+-]*");

    private final String file;

    private JobReader(String file) {
        this.file = file;
    }

    /** Reads a file of the user's. */
    public static Part read(Path path) throws JobFileException {
        String name = path.toString();
        byte[] bytes;
        try {
            if (Files.isDirectory(path)) {
                throw new JobFileException(name + ": is a directory; give the path of a job file");
            }
            if (Files.size(path) > LARGEST_BYTES) {
                throw new JobFileException(
                        name
                                + ": is larger than "
                                + LARGEST_BYTES
                                + " bytes; a job file is a few pages of text");
            }
            bytes = Files.readAllBytes(path);
        } catch (NoSuchFileException e) {
            throw new JobFileException(name + ": no such file; give the path of a job file");
        } catch (AccessDeniedException e) {
            throw new JobFileException(
                    name + ": may not be read; give the path of a job file you can read");
        } catch (IOException e) {
            throw new JobFileException(
                    name
                            + ": cannot be read ("
                            + e.getMessage()
                            + "); give the path of a job file");
        }
        return new JobReader(name).read(bytes);
    }

    /** Reads a job file from a stream, such as the one shipped with the program. */
    public static Part read(InputStream stream, String name) throws JobFileException, IOException {
        return new JobReader(name).read(stream.readNBytes(LARGEST_BYTES));
    }

    /** Reads a job file held in memory. */
    public static Part read(String text, String name) throws JobFileException {
        return new JobReader(name).read(text.getBytes(StandardCharsets.UTF_8));
    }

    private Part read(byte[] bytes) throws JobFileException {
        String text = decode(bytes);
        if (text.startsWith("\uFEFF")) {
            text = text.substring(1);
        }
        Place top = new Place(file, 1, 1, "");
        if (text.isBlank()) {
            throw JobFileException.at(
                    top, "the file is empty", "a job file starts with " + JobSchema.firstKeys());
        }
        Optional<Node> root;
        try {
            LoadSettings settings =
                    LoadSettings.builder().setLabel(file).setMaxAliasesForCollections(20).build();
            root = new Compose(settings).composeString(text);
        } catch (MarkedYamlEngineException e) {
            Mark mark = e.getProblemMark().or(e::getContextMark).orElse(null);
            Place place =
                    mark == null
                            ? top
                            : new Place(file, mark.getLine() + 1, mark.getColumn() + 1, "");
            throw JobFileException.at(
                    place,
                    "not YAML here: " + (e.getProblem() == null ? e.getContext() : e.getProblem()),
                    "write key: value lines, indented with spaces; quote text that holds \": \" or \" #\"");
        } catch (ReaderException e) {
            throw JobFileException.at(
                    placeAt(text, e.getPosition()),
                    "a character that may not stand in the file (code "
                            + Integer.toHexString(e.getCodePoint())
                            + " hex)",
                    "printable text in UTF-8");
        } catch (YamlEngineException e) {
            throw JobFileException.at(
                    top,
                    "not YAML: " + e.getMessage(),
                    "write key: value lines, indented with spaces");
        } catch (StackOverflowError e) {
            throw JobFileException.at(
                    top, "nested too deeply", "at most " + DEEPEST + " levels of indentation");
        }
        if (root.isEmpty()) {
            throw JobFileException.at(
                    top,
                    "the file holds only comments",
                    "a job file starts with " + JobSchema.firstKeys());
        }
        Part job = (Part) check(root.get(), JobSchema.ROOT, at(root.get(), top), 0);
        JobLinks.check(job);
        return job;
    }

    private String decode(byte[] bytes) throws JobFileException {
        CharsetDecoder decoder =
                StandardCharsets.UTF_8
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPORT)
                        .onUnmappableCharacter(CodingErrorAction.REPORT);
        ByteBuffer in = ByteBuffer.wrap(bytes);
        CharBuffer out = CharBuffer.allocate(bytes.length + 1);
        CoderResult result = decoder.decode(in, out, true);
        String read = out.flip().toString();
        if (result.isError()) {
            throw JobFileException.at(
                    placeAt(read, read.codePointCount(0, read.length())),
                    "byte "
                            + Integer.toHexString(bytes[in.position()] & 0xff)
                            + " hex is not UTF-8 text",
                    "save the file as UTF-8");
        }
        return read;
    }

    private Place placeAt(String text, int codePoints) {
        int line = 1;
        int column = 1;
        int n = 0;
        for (int i = 0; i < text.length() && n < codePoints; n++) {
            int c = text.codePointAt(i);
            i += Character.charCount(c);
            if (c == '\n') {
                line++;
                column = 1;
            } else {
                column++;
            }
        }
        return new Place(file, line, column, "");
    }

    private static Place at(Node node, Place place) {
        Mark m = node.getStartMark().orElseThrow();
        return new Place(place.file(), m.getLine() + 1, m.getColumn() + 1, place.path());
    }

    private Object check(Node node, Shape shape, Place place, int depth) throws JobFileException {
        if (depth > DEEPEST) {
            throw JobFileException.at(
                    place, "nested too deeply", "at most " + DEEPEST + " levels of indentation");
        }
        if (shape instanceof Shape.Fields fields) {
            return fields(node, fields, place, depth);
        }
        if (shape instanceof Shape.Items items) {
            return items(node, items, place, depth);
        }
        if (!(node instanceof ScalarNode scalar)) {
            throw JobFileException.at(place, "is " + whatIs(node), "allowed is " + allowed(shape));
        }
        String text = scalar.getValue().strip();
        if (text.isEmpty() || scalar.isPlain() && (text.equals("~") || text.equals("null"))) {
            throw JobFileException.at(place, "has no value", "allowed is " + allowed(shape));
        }
        return scalar(text, shape, place);
    }

    private Part fields(Node node, Shape.Fields fields, Place place, int depth)
            throws JobFileException {
        if (!(node instanceof MappingNode mapping)) {
            throw JobFileException.at(
                    place, "is " + whatIs(node), "allowed is a group of keys: " + names(fields));
        }
        Map<String, Part.Entry> entries = new LinkedHashMap<>();
        for (NodeTuple tuple : mapping.getValue()) {
            Mark mark = tuple.getKeyNode().getStartMark().orElseThrow();
            if (!(tuple.getKeyNode() instanceof ScalarNode keyNode)) {
                throw JobFileException.at(
                        at(tuple.getKeyNode(), place),
                        "a key must be a word",
                        "known keys here: " + names(fields));
            }
            String name = keyNode.getValue();
            Place keyPlace = place.child(shortened(name), mark.getLine() + 1, mark.getColumn() + 1);
            Shape.Key key = fields.keys().get(name);
            if (key == null) {
                throw JobFileException.at(
                        keyPlace,
                        "unknown key",
                        Nearest.of(name, fields.keys().keySet())
                                        .map(n -> "did you mean " + n + "? ")
                                        .orElse("")
                                + "known keys here: "
                                + names(fields));
            }
            if (entries.containsKey(name)) {
                throw JobFileException.at(
                        keyPlace,
                        "key given twice",
                        "give it once (first on line " + entries.get(name).place().line() + ")");
            }
            Place valuePlace = at(tuple.getValueNode(), keyPlace);
            entries.put(
                    name,
                    new Part.Entry(
                            valuePlace,
                            check(tuple.getValueNode(), key.shape(), valuePlace, depth + 1)));
        }
        for (Shape.Key key : fields.keys().values()) {
            if (key.required() && !entries.containsKey(key.name())) {
                throw JobFileException.at(
                        place.child(key.name(), place.line(), place.column()),
                        "missing key",
                        "needed is " + allowed(key.shape()) + " (" + key.help() + ")");
            }
        }
        for (List<List<String>> choice : fields.choices()) {
            oneOf(choice, entries, place);
        }
        return new Part(place, entries);
    }

    private static void oneOf(
            List<List<String>> alternatives, Map<String, Part.Entry> entries, Place place)
            throws JobFileException {
        TreeSet<String> given = new TreeSet<>();
        alternatives.forEach(a -> a.stream().filter(entries::containsKey).forEach(given::add));
        boolean fits = alternatives.stream().anyMatch(a -> new TreeSet<>(a).equals(given));
        if (!fits) {
            List<String> words = alternatives.stream().map(a -> String.join(" with ", a)).toList();
            throw JobFileException.at(
                    place,
                    given.isEmpty()
                            ? "missing key"
                            : "these keys do not fit together: " + String.join(", ", given),
                    "give exactly one of: " + String.join(" | ", words));
        }
    }

    private List<Part.Entry> items(Node node, Shape.Items items, Place place, int depth)
            throws JobFileException {
        if (!(node instanceof SequenceNode sequence)) {
            throw JobFileException.at(
                    place, "is " + whatIs(node), "allowed is a list, each entry after \"- \"");
        }
        List<Part.Entry> list = new ArrayList<>();
        int number = 1;
        for (Node entry : sequence.getValue()) {
            Mark m = entry.getStartMark().orElseThrow();
            Place p = place.item(number++, m.getLine() + 1, m.getColumn() + 1);
            list.add(new Part.Entry(p, check(entry, items.item(), p, depth + 1)));
        }
        if (list.size() < items.least() || list.size() > items.most()) {
            throw JobFileException.at(
                    place,
                    "has " + list.size() + " entries",
                    "allowed are " + items.least() + " to " + items.most());
        }
        return list;
    }

    private static Object scalar(String text, Shape shape, Place place) throws JobFileException {
        if (shape instanceof Shape.Amount<?> amount) {
            return amount(text, amount, place);
        }
        if (shape instanceof Shape.Count count) {
            int value;
            try {
                value = Integer.parseInt(text);
            } catch (NumberFormatException e) {
                throw JobFileException.at(
                        place,
                        quoted(text) + " is not a whole number",
                        "allowed is " + allowed(shape));
            }
            if (value < count.low() || value > count.high()) {
                throw JobFileException.at(
                        place, value + " is out of range", "allowed is " + allowed(shape));
            }
            return value;
        }
        if (shape instanceof Shape.Choice choice) {
            if (!choice.words().contains(text)) {
                throw JobFileException.at(
                        place, quoted(text) + " is not known here", "allowed is " + allowed(shape));
            }
            return text;
        }
        if (shape instanceof Shape.DayOfYear) {
            try {
                return MonthDay.parse("--" + text);
            } catch (DateTimeException e) {
                throw JobFileException.at(
                        place,
                        quoted(text) + " is not a day of the year",
                        "allowed is " + allowed(shape));
            }
        }
        if (shape instanceof Shape.Price price) {
            Matcher m = MONEY.matcher(text);
            if (!m.matches() || !m.group(3).equals(price.per())) {
                throw JobFileException.at(
                        place, quoted(text) + " is not a price", "allowed is " + allowed(shape));
            }
            double amount = Double.parseDouble(m.group(1));
            if (amount > 1000) {
                throw JobFileException.at(
                        place, text + " is out of range", "allowed is " + allowed(shape));
            }
            return new Shape.Price.Money(amount, m.group(2));
        }
        if (shape instanceof Shape.Name && !(text.length() <= 60 && NAME.matcher(text).matches())) {
            throw JobFileException.at(
                    place, quoted(text) + " cannot be a name", "allowed is " + allowed(shape));
        }
        if (shape instanceof Shape.Words words && text.length() > words.longest()) {
            throw JobFileException.at(
                    place, "has " + text.length() + " characters", "allowed is " + allowed(shape));
        }
        return text;
    }

    private static <Q extends Quantity<Q>> Part.Read<Q> amount(
            String text, Shape.Amount<Q> amount, Place place) throws JobFileException {
        String unitless = text;
        boolean bare = BARE_NUMBER.matcher(text).matches();
        if (bare && amount.type() == Dimensionless.class) {
            unitless = text + " 1";
        } else if (bare) {
            throw JobFileException.at(
                    place, quoted(text) + " has no unit", "allowed is " + allowed(amount));
        }
        Quantity<Q> q;
        try {
            q = QuantityText.parse(unitless, amount.type());
        } catch (IllegalArgumentException e) {
            throw JobFileException.at(place, e.getMessage(), "allowed is " + allowed(amount));
        }
        double v = si(q);
        double low = si(amount.low());
        double high = si(amount.high());
        double slack = 1e-9 * Math.max(Math.abs(low), Math.abs(high));
        if (!(v >= low - slack && v <= high + slack)) {
            String inUnit =
                    sameText(q, amount.low())
                            ? ""
                            : " ("
                                    + QuantityText.format(amount.low().to(q.getUnit()))
                                    + " to "
                                    + QuantityText.format(amount.high().to(q.getUnit()))
                                    + ")";
            throw JobFileException.at(
                    place, text + " is out of range", "allowed is " + allowed(amount) + inUnit);
        }
        return new Part.Read<>(amount.type(), q);
    }

    private static <Q extends Quantity<Q>> boolean sameText(Quantity<Q> a, Quantity<Q> b) {
        return a.getUnit().equals(b.getUnit());
    }

    private static <Q extends Quantity<Q>> double si(Quantity<Q> q) {
        return q.toSystemUnit().getValue().doubleValue();
    }

    static String allowed(Shape shape) {
        if (shape instanceof Shape.Amount<?> a) {
            return a.kind() + " from " + a.lowText() + " to " + a.highText();
        }
        if (shape instanceof Shape.Count c) {
            return "a whole number from " + c.low() + " to " + c.high();
        }
        if (shape instanceof Shape.Choice c) {
            return String.join(" | ", c.words());
        }
        if (shape instanceof Shape.Price p) {
            return "a price from 0 to 1000 with its currency, such as 0.14 USD/" + p.per();
        }
        if (shape instanceof Shape.DayOfYear) {
            return "month-day such as 07-21";
        }
        if (shape instanceof Shape.Name) {
            return "a name of up to 60 letters, digits and spaces";
        }
        if (shape instanceof Shape.Words w) {
            return "text of up to " + w.longest() + " characters";
        }
        if (shape instanceof Shape.Items i) {
            return "a list of " + i.least() + " to " + i.most() + " entries";
        }
        return "a group of keys";
    }

    private static String names(Shape.Fields fields) {
        return String.join(", ", fields.keys().keySet());
    }

    private static String whatIs(Node node) {
        if (node instanceof MappingNode) {
            return "a group of keys";
        }
        if (node instanceof SequenceNode) {
            return "a list";
        }
        String value = ((ScalarNode) node).getValue();
        return value.isBlank() ? "empty" : "the single value " + quoted(value);
    }

    private static String shortened(String text) {
        String line = JobFileException.oneLine(text);
        return line.length() <= 40 ? line : line.substring(0, 37) + "...";
    }

    static String quoted(String text) {
        return "\"" + shortened(text) + "\"";
    }
}
