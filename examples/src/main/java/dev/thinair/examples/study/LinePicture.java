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
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.block.BlockBorder;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
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
    private static final float[][] DASHES = {null, {9, 4}, {2, 4}, {9, 4, 2, 4}};
    private static final Color INK = new Color(0x202020);
    private static final int WIDTH = 760;
    private static final int HEIGHT = 480;

    private record Line(String name, double[] x, double[] y) {}

    private final String title;
    private final String x;
    private final String y;
    private final List<Line> lines;

    private LinePicture(String title, String x, String y, List<Line> lines) {
        this.title = title;
        this.x = x;
        this.y = y;
        this.lines = lines;
    }

    /**
     * A picture without lines yet.
     *
     * @param x name of the horizontal axis, with its unit
     * @param y name of the vertical axis, with its unit
     */
    public static LinePicture of(String x, String y) {
        return new LinePicture("", x, y, List.of());
    }

    /**
     * The same picture under a title.
     *
     * @param text the title
     */
    public LinePicture titled(String text) {
        return new LinePicture(text, x, y, lines);
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
        if (xs.length != ys.length) {
            throw new IllegalArgumentException(
                    "line \"" + name + "\" has " + xs.length + " x and " + ys.length + " y");
        }
        List<Line> more = new ArrayList<>(lines);
        more.add(new Line(name, xs.clone(), ys.clone()));
        return new LinePicture(title, x, y, List.copyOf(more));
    }

    private JFreeChart chart() {
        XYSeriesCollection data = new XYSeriesCollection();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer(true, true);
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            XYSeries series = new XYSeries(line.name + " ".repeat(i), false, true);
            for (int k = 0; k < line.x.length; k++) {
                if (Double.isFinite(line.x[k]) && Double.isFinite(line.y[k])) {
                    series.add(line.x[k], line.y[k]);
                }
            }
            data.addSeries(series);
            renderer.setSeriesPaint(i, COLOURS[i % COLOURS.length]);
            renderer.setSeriesStroke(
                    i,
                    new BasicStroke(
                            2.2f,
                            BasicStroke.CAP_ROUND,
                            BasicStroke.JOIN_ROUND,
                            1,
                            DASHES[i % DASHES.length],
                            0));
            renderer.setSeriesShape(i, mark(i));
        }
        renderer.setDrawSeriesLineAsPath(true);
        XYPlot plot = new XYPlot(data, axis(x, false), axis(y, false), renderer);
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
                        true);
        chart.setBackgroundPaint(Color.WHITE);
        chart.setPadding(new RectangleInsets(10, 10, 10, 18));
        if (chart.getTitle() != null) {
            chart.getTitle().setPaint(INK);
        }
        chart.getLegend().setPosition(RectangleEdge.BOTTOM);
        chart.getLegend().setFrame(BlockBorder.NONE);
        chart.getLegend().setItemFont(new Font(Font.SANS_SERIF, Font.PLAIN, 14));
        return chart;
    }

    private static NumberAxis axis(String name, boolean fromZero) {
        NumberAxis axis = new NumberAxis(name);
        axis.setAutoRangeIncludesZero(fromZero);
        axis.setLabelFont(new Font(Font.SANS_SERIF, Font.PLAIN, 14));
        axis.setTickLabelFont(new Font(Font.SANS_SERIF, Font.PLAIN, 13));
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
