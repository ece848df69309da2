package org.proviso.bench;

import java.util.Locale;

/** How each kind of envelope came out; what happened in the writing is counted over envelopes of voters only. */
final class KindTable {

    private KindTable() {}

    static String of(Links with, Links without, Truth truth) {
        StringBuilder table = new StringBuilder(
                "| envelopes | number | linked right | wrong | sure and right | sure and wrong | ambiguous "
                        + "| no last four: linked right | wrong | sure and right | sure and wrong | ambiguous |\n"
                        + "| --- |" + " ---: |".repeat(11) + "\n");
        for (Kind kind : Kind.values()) {
            Row first = Row.of(with, truth, kind);
            if (first.number > 0) {
                table.append(String.format(Locale.ROOT, "| %s | %d |", kind.words(), first.number));
                table.append(first).append(Row.of(without, truth, kind)).append("\n");
            }
        }
        return table.toString();
    }

    private static final class Row {

        private long number;
        private long right;
        private long wrong;
        private long sure;
        private long sureWrong;
        private long ambiguous;

        static Row of(Links links, Truth truth, Kind kind) {
            Row row = new Row();
            links.rows().stream()
                    .filter(link -> truth.isOf(link.envelope(), kind))
                    .forEach(link -> row.add(link, truth));
            return row;
        }

        private void add(Links.Row link, Truth truth) {
            boolean hit = truth.isRight(link.envelope(), link.voter());
            number++;
            right += link.isLink() && hit ? 1 : 0;
            wrong += link.isLink() && !hit ? 1 : 0;
            sure += link.isSure() && hit ? 1 : 0;
            sureWrong += link.isSure() && !hit ? 1 : 0;
            ambiguous += link.verdict().equals("ambiguous") ? 1 : 0;
        }

        @Override
        public String toString() {
            return String.format(
                    Locale.ROOT,
                    " %.4f | %.4f | %.4f | %.4f | %.4f |",
                    share(right),
                    share(wrong),
                    share(sure),
                    share(sureWrong),
                    share(ambiguous));
        }

        private double share(long count) {
            return (double) count / number;
        }
    }
}
