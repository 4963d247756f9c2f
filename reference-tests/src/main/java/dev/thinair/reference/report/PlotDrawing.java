package dev.thinair.reference.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Shape;
import java.awt.Stroke;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.apache.batik.svggen.SVGGraphics2D;
import org.jfree.chart.JFreeChart;
import org.jfree.chart.axis.LogAxis;
import org.jfree.chart.axis.NumberAxis;
import org.jfree.chart.axis.NumberTickUnit;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.ValueMarker;
import org.jfree.chart.plot.XYPlot;
import org.jfree.chart.renderer.xy.XYLineAndShapeRenderer;
import org.jfree.chart.text.TextUtils;
import org.jfree.chart.title.LegendTitle;
import org.jfree.chart.ui.RectangleEdge;
import org.jfree.chart.ui.RectangleInsets;
import org.jfree.data.xy.DefaultXYDataset;
import org.w3c.dom.Document;

/**
 * Draws a plot as SVG. The drawing library is given stand-in colours, which are then replaced by
 * the variables of the page's style, so that one drawing serves light and dark screens and paper;
 * series differ in dash and mark as well as in colour.
 */
final class PlotDrawing {

    private static final int WIDTH = 520;
    private static final int HEIGHT = 330;

    private static final Color INK = new Color(1, 2, 3);
    private static final Color SOFT = new Color(4, 5, 6);
    private static final Color LINE = new Color(7, 8, 9);
    private static final Color[] SERIES = {
        new Color(11, 1, 1), new Color(12, 1, 1), new Color(13, 1, 1), new Color(14, 1, 1)
    };
    private static final Map<Color, String> VARIABLES =
            Map.of(
                    INK, "ink", SOFT, "soft", LINE, "line", SERIES[0], "one", SERIES[1], "two",
                    SERIES[2], "three", SERIES[3], "four");

    private static final Font LABEL = new Font(Font.SANS_SERIF, Font.PLAIN, 14);
    private static final Font TICK = new Font(Font.SANS_SERIF, Font.PLAIN, 13);

    static {
        // Else turned lettering becomes outlines, which nobody can search or have read aloud.
        TextUtils.setUseDrawRotatedStringWorkaround(false);
    }

    private PlotDrawing() {}

    /**
     * The plot as an {@code svg} element that takes its colours from the page.
     *
     * @throws IllegalStateException if this Java runtime cannot draw text (no fonts installed)
     */
    static String svg(Plot plot) {
        SVGGraphics2D graphics;
        StringWriter out = new StringWriter();
        try {
            Document document =
                    DocumentBuilderFactory.newInstance()
                            .newDocumentBuilder()
                            .getDOMImplementation()
                            .createDocument("http://www.w3.org/2000/svg", "svg", null);
            graphics = new SVGGraphics2D(document);
            chart(plot).draw(graphics, new Rectangle2D.Double(0, 0, WIDTH, HEIGHT));
            graphics.stream(graphics.getRoot(), out, true, false);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (ParserConfigurationException | RuntimeException | InternalError e) {
            throw new IllegalStateException("this Java runtime cannot draw: " + e, e);
        } catch (LinkageError e) {
            throw new IllegalStateException("this Java runtime has no graphics: " + e, e);
        }
        return inPage(out.toString(), plot);
    }

    private static String inPage(String drawn, Plot plot) {
        String svg = drawn.substring(drawn.indexOf("<svg"));
        int body = svg.indexOf('>') + 1;
        // Names must be unique in a page with several drawings.
        String inner =
                svg.substring(body)
                        .replace(" id=\"", " id=\"" + plot.key() + "-")
                        .replace("url(#", "url(#" + plot.key() + "-")
                        .replace("xlink:href=\"#", "href=\"#" + plot.key() + "-");
        for (Map.Entry<Color, String> e : VARIABLES.entrySet()) {
            Color c = e.getKey();
            inner =
                    inner.replaceAll(
                            "rgb\\("
                                    + c.getRed()
                                    + ", ?"
                                    + c.getGreen()
                                    + ", ?"
                                    + c.getBlue()
                                    + "\\)",
                            "var(--" + e.getValue() + ")");
        }
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 "
                + WIDTH
                + " "
                + HEIGHT
                + "\" role=\"img\" aria-label=\""
                + Markup.escape(plot.title())
                + "\">"
                + inner.replaceAll("font-family:[^;\"]*", "font-family:inherit")
                        .replaceAll("\\r?\\n\\s*", "\n");
    }

    private static JFreeChart chart(Plot plot) {
        DefaultXYDataset data = new DefaultXYDataset();
        XYLineAndShapeRenderer renderer = new XYLineAndShapeRenderer();
        for (int i = 0; i < plot.series().size(); i++) {
            Plot.Series s = plot.series().get(i);
            data.addSeries(s.name(), new double[][] {s.x(), s.y()});
            renderer.setSeriesPaint(i, SERIES[i % SERIES.length]);
            renderer.setSeriesStroke(i, stroke(i));
            renderer.setSeriesLinesVisible(i, s.line());
            renderer.setSeriesShapesVisible(i, !s.line());
            renderer.setSeriesShape(i, mark(i));
            renderer.setSeriesShapesFilled(i, i % 2 == 0);
        }
        renderer.setDrawSeriesLineAsPath(true);
        renderer.setLegendLine(new java.awt.geom.Line2D.Double(-16, 0, 16, 0));
        NumberAxis y = new NumberAxis(plot.deviation());
        ValueAxis x = plot.logarithmic() ? powers(plot.across()) : new NumberAxis(plot.across());
        if (x instanceof NumberAxis linear) {
            linear.setAutoRangeIncludesZero(false);
        }
        if (plot.worst() == 0) {
            y.setRange(-1, 1);
        }
        XYPlot area = new XYPlot(data, x, y, renderer);
        area.setBackgroundPaint(null);
        area.setOutlinePaint(SOFT);
        area.setDomainGridlinePaint(LINE);
        area.setRangeGridlinePaint(LINE);
        area.setDomainGridlineStroke(new BasicStroke(1));
        area.setRangeGridlineStroke(new BasicStroke(1));
        area.setDomainZeroBaselineVisible(false);
        area.setAxisOffset(RectangleInsets.ZERO_INSETS);
        area.addRangeMarker(new ValueMarker(0, SOFT, new BasicStroke(1.2f)));
        for (ValueAxis axis : new ValueAxis[] {x, y}) {
            axis.setLabelFont(LABEL);
            axis.setTickLabelFont(TICK);
            axis.setLabelPaint(INK);
            axis.setTickLabelPaint(INK);
            axis.setAxisLinePaint(SOFT);
            axis.setTickMarkPaint(SOFT);
        }
        JFreeChart chart = new JFreeChart(null, null, area, plot.series().size() > 1);
        chart.setBackgroundPaint(null);
        chart.setPadding(new RectangleInsets(4, 2, 2, 12));
        LegendTitle legend = chart.getLegend();
        if (legend != null) {
            legend.setItemFont(TICK);
            legend.setItemPaint(INK);
            legend.setBackgroundPaint(null);
            legend.setFrame(org.jfree.chart.block.BlockBorder.NONE);
            legend.setPosition(RectangleEdge.TOP);
        }
        return chart;
    }

    private static LogAxis powers(String label) {
        LogAxis axis = new LogAxis(label);
        axis.setBase(10);
        axis.setTickUnit(new NumberTickUnit(1));
        axis.setNumberFormatOverride(new PowerFormat());
        axis.setMinorTickMarksVisible(false);
        return axis;
    }

    private static Stroke stroke(int i) {
        float[][] dashes = {null, {8, 4}, {2, 3}, {10, 3, 2, 3}};
        return new BasicStroke(
                1.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dashes[i % 4], 0);
    }

    private static Shape mark(int i) {
        if (i % 2 == 0) {
            return new Ellipse2D.Double(-3, -3, 6, 6);
        }
        Path2D diamond = new Path2D.Double();
        diamond.moveTo(0, -4.5);
        diamond.lineTo(4.5, 0);
        diamond.lineTo(0, 4.5);
        diamond.lineTo(-4.5, 0);
        diamond.closePath();
        return diamond;
    }
}
