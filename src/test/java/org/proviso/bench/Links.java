package org.proviso.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The pairings that a run wrote. */
record Links(List<Row> rows) {

    /** One pairing; for a yardstick the probability is its score and the verdict empty. */
    record Row(String envelope, String voter, double probability, String verdict) {

        boolean isSure() {
            return verdict.equals("sure");
        }

        boolean isLink() {
            return isSure() || verdict.equals("likely");
        }
    }

    static Links read(Path file) throws IOException {
        List<Row> rows = new ArrayList<>();
        List<String> lines = Files.readAllLines(file);
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.replace("\"", "").split(",", -1);
            rows.add(new Row(cells[0], cells[1], Double.parseDouble(cells[2]), cells.length > 3 ? cells[3] : ""));
        }
        return new Links(rows);
    }

    /** How the pairings stand that count as links. */
    Quality quality(Truth truth, boolean sureOnly) {
        long links = 0;
        long right = 0;
        for (Row row : rows) {
            if (sureOnly ? row.isSure() : row.isLink()) {
                links++;
                right += truth.isRight(row.envelope(), row.voter()) ? 1 : 0;
            }
        }
        return new Quality(links, right, truth.onRoll());
    }

    /** A yardstick's quality at the threshold that suits it best, chosen with the truth in hand. */
    Quality best(Truth truth) {
        List<Row> sorted = new ArrayList<>(rows);
        sorted.sort(Comparator.comparingDouble(Row::probability).reversed());
        long onRoll = truth.onRoll();
        Quality best = new Quality(0, 0, onRoll);
        long right = 0;
        for (int i = 0; i < sorted.size(); i++) {
            right += truth.isRight(sorted.get(i).envelope(), sorted.get(i).voter()) ? 1 : 0;
            Quality here = new Quality(i + 1, right, onRoll);
            best = here.f1() > best.f1() ? here : best;
        }
        return best;
    }

    /** In how many envelopes the voter is among the candidates of the file: one row each, as {@code match} writes them. */
    static Share among(Path candidates, Truth truth) throws IOException {
        Set<String> found = new HashSet<>();
        try (var lines = Files.lines(candidates)) {
            lines.skip(1)
                    .map(line -> line.split(",", 4))
                    .filter(cells -> truth.isRight(cells[0], cells[2]))
                    .forEach(cells -> found.add(cells[0]));
        }
        return new Share(found.size(), truth.onRoll());
    }
}
