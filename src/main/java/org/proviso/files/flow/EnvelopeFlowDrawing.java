package org.proviso.files.flow;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;

/** Draws a flow as SVG: reasons of issue to the left, outcomes to the right, a band for each pair as wide as its count. */
public final class EnvelopeFlowDrawing {

    private static final int WIDTH = 880;
    private static final int LEFT = 230;
    private static final int RIGHT = 640;
    private static final int BAR = 10;
    private static final int GAP = 22;
    private static final int TOP = 24;
    private static final double BANDS = 360;

    private final EnvelopeFlow flow;
    private final double unit;
    private final StringBuilder svg = new StringBuilder();

    private EnvelopeFlowDrawing(EnvelopeFlow flow) {
        this.flow = flow;
        this.unit = BANDS / Math.max(1, flow.all());
    }

    /** The drawing with its title for screen readers; a table beside it has the same figures. */
    public static String of(EnvelopeFlow flow, String title) {
        return new EnvelopeFlowDrawing(flow).draw(title);
    }

    private String draw(String title) {
        Map<String, Double> lefts = new LinkedHashMap<>();
        double y = TOP;
        for (String reason : flow.counts().keySet()) {
            lefts.put(reason, y);
            y += flow.from(reason) * unit + GAP;
        }
        double leftEnd = y;
        Map<EnvelopeFlowEnd, Double> rights = new LinkedHashMap<>();
        y = TOP;
        for (EnvelopeFlowEnd outlook : flow.ends()) {
            if (flow.to(outlook) > 0) {
                rights.put(outlook, y);
                y += flow.to(outlook) * unit + GAP;
            }
        }
        open(Math.max(leftEnd, y), title);
        bars(lefts, rights);
        bands(lefts, rights);
        return svg.append("</svg>\n").toString();
    }

    private void open(double height, String title) {
        svg.append(String.format(Locale.ROOT, """
                <svg viewBox="0 0 %d %.0f" role="img" aria-labelledby="flow-title">
                <title id="flow-title">%s</title>
                """, WIDTH, height, escape(title)));
    }

    private void bars(Map<String, Double> lefts, Map<EnvelopeFlowEnd, Double> rights) {
        lefts.forEach((reason, y) -> {
            double height = flow.from(reason) * unit;
            bar("from", LEFT, y, height);
            text(LEFT - 8, y + height / 2, "end", reason, flow.from(reason));
        });
        rights.forEach((outlook, y) -> {
            double height = flow.to(outlook) * unit;
            bar(outlook.style(), RIGHT, y, height);
            text(RIGHT + BAR + 8, y + height / 2, "start", outlook.words(), flow.to(outlook));
        });
    }

    private void bar(String style, int x, double y, double height) {
        svg.append(String.format(
                Locale.ROOT,
                "<rect class=\"%s\" x=\"%d\" y=\"%.1f\" width=\"%d\" height=\"%.1f\"/>\n",
                style,
                x,
                y,
                BAR,
                height));
    }

    private void text(int x, double middle, String anchor, String words, int count) {
        svg.append(String.format(
                Locale.ROOT,
                "<text x=\"%d\" y=\"%.1f\" text-anchor=\"%s\">%s <tspan class=\"number\">%d</tspan></text>\n",
                x,
                middle + 5,
                anchor,
                escape(words),
                count));
    }

    private void bands(Map<String, Double> lefts, Map<EnvelopeFlowEnd, Double> rights) {
        Map<EnvelopeFlowEnd, Double> next = new LinkedHashMap<>(rights);
        flow.counts().forEach((reason, row) -> {
            double from = Objects.requireNonNull(lefts.get(reason), "every row begins at its bar");
            for (Map.Entry<EnvelopeFlowEnd, Integer> entry : row.entrySet()) {
                double height = entry.getValue() * unit;
                double to = Objects.requireNonNull(next.get(entry.getKey()), "every band ends at a bar");
                band(entry.getKey().style(), from, to, height);
                from += height;
                next.put(entry.getKey(), to + height);
            }
        });
    }

    private void band(String style, double from, double to, double height) {
        int start = LEFT + BAR;
        int middle = (start + RIGHT) / 2;
        svg.append(String.format(
                Locale.ROOT,
                "<path class=\"band %s\" d=\"M%d %.1f C%d %.1f %d %.1f %d %.1f V%.1f C%d %.1f %d %.1f %d %.1f Z\"/>\n",
                style,
                start,
                from,
                middle,
                from,
                middle,
                to,
                RIGHT,
                to,
                to + height,
                middle,
                to + height,
                middle,
                from + height,
                start,
                from + height));
    }

    private static String escape(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
