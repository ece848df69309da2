package org.proviso.review;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Consumer;
import org.proviso.core.VoterId;
import org.proviso.journey.Primary;

/** A roll of the sample primary as it might be a few days later. */
public final class NewerRollFile {

    private final List<String> lines = new ArrayList<>(Files.readAllLines(Primary.FOLDER.resolve("roll.csv")));
    private final List<String> columns = Arrays.asList(lines.get(0).split(","));

    public NewerRollFile() throws IOException {}

    /** Changes a voter's row, where it is there. */
    public NewerRollFile change(VoterId voterId, Consumer<Row> how) {
        for (int i = 1; i < lines.size(); i++) {
            if (lines.get(i).startsWith(voterId + ",")) {
                Row row = new Row(lines.get(i).split(",", -1));
                how.accept(row);
                lines.set(i, String.join(",", row.cells));
            }
        }
        return this;
    }

    public NewerRollFile remove(VoterId voterId) {
        lines.removeIf(line -> line.startsWith(voterId + ","));
        return this;
    }

    /** A relative at the same address, born on the same day. */
    NewerRollFile twin(VoterId voterId) {
        lines.stream()
                .filter(line -> line.startsWith(voterId + ","))
                .findFirst()
                .ifPresent(line -> {
                    Row row = new Row(line.split(",", -1));
                    row.set("voter_id", "N" + voterId).set("first_name", "Wilhelmina");
                    row.set("id_last4", "").set("drivers_license", "");
                    lines.add(String.join(",", row.cells));
                });
        return this;
    }

    /** Many voters change in many ways, above all those named. */
    public NewerRollFile shaken(Random random, Set<String> above) {
        for (VoterId voterId : lines.stream()
                .skip(1)
                .map(line -> new VoterId(line.split(",")[0]))
                .toList()) {
            if (random.nextInt(above.contains(voterId.value()) ? 3 : 40) == 0) {
                shake(voterId, random.nextInt(6));
            }
        }
        return this;
    }

    private void shake(VoterId voterId, int kind) {
        switch (kind) {
            case 0 -> remove(voterId);
            case 1 -> change(voterId, row -> row.set("last_name", "Quennell"));
            case 2 -> change(voterId, row -> row.set("house_number", "77001").set("unit", ""));
            case 3 -> change(voterId, row -> row.set("date_of_birth", "1951-02-03"));
            case 4 -> change(voterId, row -> row.set("status", "cancelled"));
            default -> twin(voterId);
        }
    }

    public Path in(Path folder) throws IOException {
        return Files.write(folder.resolve("roll.csv"), lines);
    }

    /** The cells of a row. */
    public final class Row {

        private final String[] cells;

        private Row(String[] cells) {
            this.cells = cells;
        }

        public Row set(String column, String value) {
            cells[columns.indexOf(column)] = value;
            return this;
        }
    }
}
