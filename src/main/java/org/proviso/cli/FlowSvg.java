package org.proviso.cli;

import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.proviso.core.adjudication.Recommendation;
import org.proviso.core.adjudication.explain.Mark;

/** Draws a flow: reasons of issue to the left, outlooks to the right, a band for each pair as wide as its count. */
final class FlowSvg {

    private static final int WIDTH = 880;
    private static final int LEFT = 230;
    private static final int RIGHT = 640;
    private static final int BAR = 10;
    private static final int GAP = 22;
    private static final int TOP = 24;
    private static final double BANDS = 360;

    private final Flow flow;
    private final double unit;
    private final StringBuilder svg = new StringBuilder();

    private FlowSvg(Flow flow) {
        this.flow = flow;
        this.unit = BANDS / Math.max(1, flow.all());
    }

    static String of(Flow flow) {
        return new FlowSvg(flow).draw();
    }

    private String draw() {
        Map<String, Double> lefts = new LinkedHashMap<>();
        double y = TOP;
        for (String reason : flow.counts().keySet()) {
            lefts.put(reason, y);
            y += flow.from(reason) * unit + GAP;
        }
        double leftEnd = y;
        Map<Recommendation, Double> rights = new EnumMap<>(Recommendation.class);
        y = TOP;
        for (Recommendation outlook : Recommendation.values()) {
            if (flow.to(outlook) > 0) {
                rights.put(outlook, y);
                y += flow.to(outlook) * unit + GAP;
            }
        }
        open(Math.max(leftEnd, y));
        bars(lefts, rights);
        bands(lefts, rights);
        return svg.append("</svg>\n").toString();
    }

    private void open(double height) {
        svg.append(String.format(
                Locale.ROOT,
                "<svg viewBox=\"0 0 %d %.0f\" role=\"img\" aria-labelledby=\"flow-title\">\n"
                        + "<title id=\"flow-title\">From the reason of issue to the outlook; the table below has the"
                        + " same figures</title>\n",
                WIDTH,
                height));
    }

    private void bars(Map<String, Double> lefts, Map<Recommendation, Double> rights) {
        lefts.forEach((reason, y) -> {
            double height = flow.from(reason) * unit;
            bar("from", LEFT, y, height);
            text(LEFT - 8, y + height / 2, "end", reason, flow.from(reason));
        });
        rights.forEach((outlook, y) -> {
            double height = flow.to(outlook) * unit;
            bar(style(outlook), RIGHT, y, height);
            text(RIGHT + BAR + 8, y + height / 2, "start", Mark.beside(outlook), flow.to(outlook));
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
                Html.escape(words),
                count));
    }

    private void bands(Map<String, Double> lefts, Map<Recommendation, Double> rights) {
        Map<Recommendation, Double> next = new EnumMap<>(rights);
        flow.counts().forEach((reason, row) -> {
            double from = lefts.get(reason);
            for (Map.Entry<Recommendation, Integer> one : row.entrySet()) {
                double height = one.getValue() * unit;
                double to = next.get(one.getKey());
                band(style(one.getKey()), from, to, height);
                from += height;
                next.put(one.getKey(), to + height);
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

    private static String style(Recommendation outlook) {
        return outlook.words().replace(' ', '-');
    }
}
