package dev.thinair.examples.study;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.jfree.chart.ChartUtils;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.annotations.XYTextAnnotation;
import org.jfree.chart.axis.LogarithmicAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.chart.ui.TextAnchor;
import org.jfree.data.xy.XYSeries;
import org.jfree.data.xy.XYSeriesCollection;
import org.w3c.dom.Document;

/**
 * Lines over one variable, written as SVG or PNG. The lines differ in dash and mark as well as in
 * colour, so that they can be told apart on a grey print and by colour-blind readers.
 */
public final class LinePicture {
    // Palette for colour-blind readers: Okabe and Ito, "Color Universal Design", 2008; the yellow,
    // which is too light for a line on white, left out.
    private static final Color[] COLOURS = {
        new Color(0x0072B2),
        new Color(0xD55E00),
        new Color(0x009E73),
        new Color(0xCC79A7),
        new Color(0x56B4E9),
        new Color(0xE69F00),
        new Color(0x000000)
    };
    private static final float[][] DASHES = {
        null, {9, 4}, {2, 4}, {9, 4, 2, 4}, {16, 4, 2, 4, 2, 4}
    };
    private static final Color INK = new Color(0x202020);
    private static final Color GREY = new Color(0x8A8A8A);
    private static final int WIDTH = 760;
    private static final int HEIGHT = 480;

    /** How a line is drawn. */
    private enum Form {
        MARKED,
        CURVE,
        POINTS,
        THIN,
        SOLID,
        DASHED
    }

    /** How the axes run. */
    private enum Scale {
        PLAIN,
        LOGARITHMIC,
        TRACKS
    }

    private record Line(Form form, String name, double[] x, double[] y) {
        boolean colourless() {
            return form == Form.THIN || form == Form.SOLID || form == Form.DASHED;
        }
    }

    private record Label(double x, double y, String text, TextAnchor anchor) {}

    private final String title;
    private final String x;
    private final String y;
    private final List<Line> lines;
    private final List<Label> labels;
    private final Scale scale;
    private final double[] window;

    private LinePicture(
            String title,
            String x,
            String y,
            List<Line> lines,
            List<Label> labels,
            Scale scale,
            double[] window) {
        this.title = title;
        this.x = x;
        this.y = y;
        this.lines = lines;
        this.labels = labels;
        this.scale = scale;
        this.window = window;
    }

    /**
     * A picture without lines yet.
     *
     * @param x name of the horizontal axis, with its unit
     * @param y name of the vertical axis, with its unit
     */
    public static LinePicture of(String x, String y) {
        return new LinePicture("", x, y, List.of(), List.of(), Scale.PLAIN, null);
    }

    /**
     * The same picture under a title.
     *
     * @param text the title
     */
    public LinePicture titled(String text) {
        return new LinePicture(text, x, y, lines, labels, scale, window);
    }

    /**
     * The same picture with a line more. Points that are not finite are left out.
     *
     * @param name what the legend calls it
     * @param xs horizontal values
     * @param ys vertical values
     * @throws IllegalArgumentException if there are not as many of one as of the other
     */
    public LinePicture line(String name, double[] xs, double[] ys) {
        return with(Form.MARKED, name, xs, ys);
    }

    /**
     * The same picture with a line more that carries no marks: for many points close together.
     *
     * @param name what the legend calls it
     * @param xs horizontal values
     * @param ys vertical values
     * @throws IllegalArgumentException if there are not as many of one as of the other
     */
    public LinePicture curve(String name, double[] xs, double[] ys) {
        return with(Form.CURVE, name, xs, ys);
    }

    /**
     * The same picture with marks more, not joined.
     *
     * @param name what the legend calls them
     * @param xs horizontal values
     * @param ys vertical values
     * @throws IllegalArgumentException if there are not as many of one as of the other
     */
    public LinePicture points(String name, double[] xs, double[] ys) {
        return with(Form.POINTS, name, xs, ys);
    }

    /**
     * The same picture with a thin grey line more, for the eye to follow; the legend leaves it out.
     *
     * @param xs horizontal values
     * @param ys vertical values
     * @throws IllegalArgumentException if there are not as many of one as of the other
     */
    public LinePicture thin(double[] xs, double[] ys) {
        return with(Form.THIN, "", xs, ys);
    }

    /**
     * The same picture with a dark line more: one of a family that is told apart by labels.
     *
     * @param name what the legend calls the family, or an empty text for its further members
     * @param xs horizontal values
     * @param ys vertical values
     * @throws IllegalArgumentException if there are not as many of one as of the other
     */
    public LinePicture solid(String name, double[] xs, double[] ys) {
        return with(Form.SOLID, name, xs, ys);
    }

    /**
     * As {@link #solid}, dashed.
     *
     * @param name what the legend calls the family, or an empty text for its further members
     * @param xs horizontal values
     * @param ys vertical values
     * @throws IllegalArgumentException if there are not as many of one as of the other
     */
    public LinePicture dashed(String name, double[] xs, double[] ys) {
        return with(Form.DASHED, name, xs, ys);
    }

    /**
     * The same picture with words at a point, ending there.
     *
     * @param atX horizontal value
     * @param atY vertical value
     * @param text the words
     */
    public LinePicture label(double atX, double atY, String text) {
        return with(new Label(atX, atY, text + " ", TextAnchor.BOTTOM_RIGHT));
    }

    /**
     * The same picture with words at a point, beginning there and below it.
     *
     * @param atX horizontal value
     * @param atY vertical value
     * @param text the words
     */
    public LinePicture labelBelow(double atX, double atY, String text) {
        return with(new Label(atX, atY, " " + text, TextAnchor.TOP_LEFT));
    }

    /**
     * The same picture with words in the middle of a line, which is interrupted for them.
     *
     * @param atX horizontal value
     * @param atY vertical value
     * @param text the words
     */
    public LinePicture labelOn(double atX, double atY, String text) {
        return with(new Label(atX, atY, text, TextAnchor.CENTER));
    }

    private LinePicture with(Label label) {
        List<Label> more = new ArrayList<>(labels);
        more.add(label);
        return new LinePicture(title, x, y, lines, List.copyOf(more), scale, window);
    }

    /** The same picture without numbers at the vertical axis, where only the shape counts. */
    public LinePicture withoutVerticalNumbers() {
        return new LinePicture(title, x, y, lines, labels, Scale.TRACKS, window);
    }

    /** The same picture with both axes logarithmic. */
    public LinePicture logarithmic() {
        return new LinePicture(title, x, y, lines, labels, Scale.LOGARITHMIC, window);
    }

    /**
     * The same picture with these ranges of the axes; what lies outside is cut off.
     *
     * @param xLow left end
     * @param xHigh right end
     * @param yLow bottom
     * @param yHigh top
     * @throws IllegalArgumentException if a range is empty or not finite
     */
    public LinePicture within(double xLow, double xHigh, double yLow, double yHigh) {
        if (!(xLow < xHigh && yLow < yHigh)
                || Double.isInfinite(xHigh - xLow)
                || Double.isInfinite(yHigh - yLow)) {
            throw new IllegalArgumentException(
                    "the picture would span x ["
                            + xLow
                            + ", "
                            + xHigh
                            + "] and y ["
                            + yLow
                            + ", "
                            + yHigh
                            + "], but both must be finite and not empty");
        }
        return new LinePicture(
                title, x, y, lines, labels, scale, new double[] {xLow, xHigh, yLow, yHigh});
    }

    private LinePicture with(Form form, String name, double[] xs, double[] ys) {
        if (xs.length != ys.length) {
            throw new IllegalArgumentException(
                    "line \"" + name + "\" has " + xs.length + " x and " + ys.length + " y");
        }
        List<Line> more = new ArrayList<>(lines);
        more.add(new Line(form, name, xs.clone(), ys.clone()));
        return new LinePicture(title, x, y, List.copyOf(more), labels, scale, window);
    }

    private JFreeChart chart() {
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, true);
        int coloured = 0;
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            XYSeries series = new XYSeries(line.name + " ".repeat(i), false, true);
            for (int k = 0; k < line.x.length; k++) {
                if (Double.isFinite(line.x[k]) && Double.isFinite(line.y[k])) {
                    series.add(line.x[k], line.y[k]);
                }
            }
            data.addSeries(series);
            int c = line.colourless() ? 0 : coloured++;
            renderer.setSeriesPaint(
                    i,
                    line.form == Form.THIN
                            ? GREY
                            : line.colourless() ? INK : COLOURS[c % COLOURS.length]);
            renderer.setSeriesStroke(
                    i,
                    new BasicStroke(
                            line.form == Form.THIN ? 1f : line.colourless() ? 1.5f : 2.2f,
                            BasicStroke.CAP_ROUND,
                            BasicStroke.JOIN_ROUND,
                            1,
                            line.form == Form.DASHED
                                    ? new float[] {6, 4}
                                    : line.colourless() ? null : DASHES[c % DASHES.length],
                            0));
            renderer.setSeriesShape(i, mark(c));
            renderer.setSeriesShapesVisible(
                    i, line.form == Form.MARKED || line.form == Form.POINTS);
            renderer.setSeriesLinesVisible(i, line.form != Form.POINTS);
            renderer.setSeriesVisibleInLegend(i, !line.name.isEmpty());
        }
        renderer.setDrawSeriesLineAsPath(true);
        XYPlot plot = new XYPlot(data, axis(x, 0), axis(y, 2), renderer);
        for (Label label : labels) {
            XYTextAnnotation words = new XYTextAnnotation(label.text, label.x, label.y);
            words.setTextAnchor(label.anchor);
            words.setBackgroundPaint(Color.WHITE);
            words.setFont(new Font(Font.SANS_SERIF, Font.PLAIN, 12));
            words.setPaint(INK);
            plot.addAnnotation(words);
        }
        plot.setBackgroundPaint(Color.WHITE);
        plot.setDomainGridlinePaint(new Color(0xD0D0D0));
        plot.setRangeGridlinePaint(new Color(0xD0D0D0));
        plot.setOutlineVisible(false);
        plot.setAxisOffset(new RectangleInsets(4, 4, 4, 4));
        JFreeChart chart =
                new JFreeChart(
                        title.isEmpty() ? null : title,
                        new Font(Font.SANS_SERIF, Font.BOLD, 16),
                        plot,
                        lines.stream().anyMatch(line -> !line.name.isEmpty()));
        chart.setBackgroundPaint(Color.WHITE);
        chart.setPadding(new RectangleInsets(10, 10, 10, 18));
        if (chart.getTitle() != null) {
            chart.getTitle().setPaint(INK);
        }
        if (chart.getLegend() != null) {
            chart.getLegend().setPosition(RectangleEdge.BOTTOM);
            chart.getLegend().setFrame(BlockBorder.NONE);
            chart.getLegend().setItemFont(new Font(Font.SANS_SERIF, Font.PLAIN, 14));
        }
        return chart;
    }

    /** An axis; {@code at} is where its range stands in the window. */
    private ValueAxis axis(String name, int at) {
        NumberAxis axis;
        if (scale == Scale.LOGARITHMIC) {
            LogarithmicAxis log = new LogarithmicAxis(name);
            log.setLog10TickLabelsFlag(false);
            log.setExpTickLabelsFlag(false);
            axis = log;
        } else {
            axis = new NumberAxis(name);
            axis.setAutoRangeIncludesZero(false);
            // Otherwise marks at zero are cut in half by the edge.
            axis.setAutoRangeStickyZero(false);
        }
        if (window != null) {
            axis.setRange(window[at], window[at + 1]);
        }
        axis.setLabelFont(new Font(Font.SANS_SERIF, Font.PLAIN, 14));
        axis.setTickLabelFont(new Font(Font.SANS_SERIF, Font.PLAIN, 13));
        axis.setTickLabelsVisible(at == 0 || scale != Scale.TRACKS);
        axis.setLabelPaint(INK);
        axis.setTickLabelPaint(INK);
        return axis;
    }

    private static Shape mark(int i) {
        Shape shape =
                switch (i % 4) {
                    case 0 -> new Ellipse2D.Double(-4, -4, 8, 8);
                    case 1 -> new Rectangle2D.Double(-3.6, -3.6, 7.2, 7.2);
                    case 2 -> triangle();
                    default ->
                            AffineTransform.getRotateInstance(Math.PI / 4)
                                    .createTransformedShape(
                                            new Rectangle2D.Double(-3.6, -3.6, 7.2, 7.2));
                };
        return shape;
    }

    private static Shape triangle() {
        Path2D path = new Path2D.Double();
        path.moveTo(0, -5);
        path.lineTo(4.6, 3.6);
        path.lineTo(-4.6, 3.6);
        path.closePath();
        return path;
    }

    /** The picture as SVG text; lettering stays text. */
    public String svg() {
        Document document = empty();
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document);
        context.setComment(null);
        SVGGraphics2D graphics = new SVGGraphics2D(context, false);
        graphics.setSVGCanvasSize(new java.awt.Dimension(WIDTH, HEIGHT));
        chart().draw(graphics, new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
        StringWriter text = new StringWriter();
        try {
            graphics.stream(text, true);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            graphics.dispose();
        }
        return text.toString();
    }

    private static Document empty() {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            return factory.newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument("http://www.w3.org/2000/svg", "svg", null);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException(e);
        }
    }

    /**
     * Writes the picture as SVG.
     *
     * @param file where to; folders are made as needed
     * @return the file
     */
    public Path writeSvg(String file) {
        return Table.write(file, svg());
    }

    /**
     * Writes the picture as PNG, two pixels to the point.
     *
     * @param file where to; folders are made as needed
     * @return the file
     */
    public Path writePng(String file) {
        Path path = Path.of(file).toAbsolutePath().normalize();
        try {
            Files.createDirectories(path.getParent());
            try (var out = Files.newOutputStream(path)) {
                ChartUtils.writeScaledChartAsPNG(out, chart(), WIDTH, HEIGHT, 2, 2);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return path;
    }

    @Override
    public String toString() {
        return "picture of "
                + y
                + " over "
                + x
                + ", lines "
                + Arrays.toString(lines.stream().map(Line::name).toArray())
                + "; writeSvg(file) or writePng(file) writes it";
    }
}
