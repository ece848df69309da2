package org.proviso.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Whether probabilities mean what they say: best candidates in bins of probability, against how many were right. */
final class Calibration {

    private static final double[] EDGES = {
        0, 0.01, 0.05, 0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.98, 0.99, 0.995, 0.999, 0.9999, 1.0001
    };
    private static final double FEWEST = 0.0002;

    private final List<Bin> bins = new ArrayList<>();

    Calibration(Links links, Truth truth) {
        for (int i = 0; i + 1 < EDGES.length; i++) {
            double low = EDGES[i];
            double high = EDGES[i + 1];
            List<Links.Row> rows = links.rows().stream()
                    .filter(row -> !row.voter().isEmpty() && row.probability() >= low && row.probability() < high)
                    .toList();
            long right = rows.stream()
                    .filter(row -> truth.isRight(row.envelope(), row.voter()))
                    .count();
            double mean =
                    rows.stream().mapToDouble(Links.Row::probability).average().orElse(0);
            if (!rows.isEmpty()) {
                bins.add(new Bin(low, mean, new Share(right, rows.size())));
            }
        }
    }

    private record Bin(double from, double mean, Share right) {}

    /** Right ones among the links offered at that probability or more. */
    static Share from(double least, Links links, Truth truth) {
        List<Links.Row> rows = links.rows().stream()
                .filter(row -> row.isLink() && row.probability() >= least)
                .toList();
        return new Share(
                rows.stream()
                        .filter(row -> truth.isRight(row.envelope(), row.voter()))
                        .count(),
                rows.size());
    }

    String table() {
        StringBuilder table = new StringBuilder("| from | best candidates | mean probability | right |\n")
                .append("| ---: | ---: | ---: | --- |\n");
        for (Bin bin : bins) {
            table.append(String.format(
                    Locale.ROOT,
                    "| %.4f | %d | %.5f | %s |%n",
                    bin.from(),
                    bin.right().of(),
                    bin.mean(),
                    bin.right()));
        }
        return table.toString();
    }

    /** The plot on axes of log odds, on which the ends can be read; the line is where they would be equal. */
    String svg(String title) {
        StringBuilder svg = new StringBuilder("<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 460 470\" "
                + "font-family=\"sans-serif\" font-size=\"11\" fill=\"#26231e\">\n"
                + "<rect width=\"460\" height=\"470\" fill=\"#fbf9f4\"/>\n");
        svg.append("<text x=\"60\" y=\"22\" font-size=\"13\">").append(title).append("</text>\n");
        svg.append("<path d=\"M60 420L440 40\" stroke=\"#8a8377\" stroke-dasharray=\"4 3\"/>\n");
        for (double tick : new double[] {0.001, 0.01, 0.1, 0.5, 0.9, 0.99, 0.999}) {
            svg.append(String.format(
                    Locale.ROOT,
                    "<path d=\"M%.1f 40V420M60 %.1fH440\" stroke=\"#e4dfd3\"/>"
                            + "<text x=\"%.1f\" y=\"436\" text-anchor=\"middle\">%s</text>"
                            + "<text x=\"54\" y=\"%.1f\" text-anchor=\"end\">%s</text>%n",
                    x(tick),
                    y(tick),
                    x(tick),
                    tick,
                    y(tick) + 4,
                    tick));
        }
        for (Bin bin : bins) {
            svg.append(String.format(
                    Locale.ROOT,
                    "<path d=\"M%.1f %.1fV%.1f\" stroke=\"#3d5a80\" stroke-width=\"1.5\"/>"
                            + "<circle cx=\"%.1f\" cy=\"%.1f\" r=\"4\" fill=\"#3d5a80\"/>%n",
                    x(bin.mean()),
                    y(bin.right().low()),
                    y(bin.right().high()),
                    x(bin.mean()),
                    y(bin.right().value())));
        }
        return svg.append("<text x=\"250\" y=\"458\" text-anchor=\"middle\">probability said</text>"
                        + "<text transform=\"translate(16 230) rotate(-90)\" text-anchor=\"middle\">share right, with 95 % "
                        + "interval</text>\n</svg>\n")
                .toString();
    }

    private static double x(double share) {
        return 60 + 380 * place(share);
    }

    private static double y(double share) {
        return 420 - 380 * place(share);
    }

    private static double place(double share) {
        double within = Math.min(1 - FEWEST, Math.max(FEWEST, share));
        double end = Math.log((1 - FEWEST) / FEWEST);
        return (Math.log(within / (1 - within)) + end) / (2 * end);
    }
}
