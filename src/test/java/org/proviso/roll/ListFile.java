package org.proviso.roll;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.proviso.intake.LoadedOffice;

/** A newer file of the samples' primary: the one it was loaded from with some lines changed. */
final class ListFile {

    private final List<String> lines;

    private ListFile(List<String> lines) {
        this.lines = lines;
    }

    static ListFile of(String name) {
        try {
            return new ListFile(new ArrayList<>(Files.readAllLines(Path.of("sample-cases", LoadedOffice.ID, name))));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** A file with this header and no rows. */
    static ListFile under(String header) {
        return new ListFile(new ArrayList<>(List.of(header)));
    }

    /** The first cell of a line; the header is line 0. */
    String key(int line) {
        return lines.get(line).split(",")[0];
    }

    String cell(int line, String column) {
        return cells(line)[place(column)];
    }

    ListFile set(int line, String column, String value) {
        String[] cells = cells(line);
        cells[place(column)] = value;
        lines.set(line, String.join(",", cells));
        return this;
    }

    ListFile add(String line) {
        lines.add(line);
        return this;
    }

    ListFile repeat(int line) {
        return add(lines.get(line));
    }

    ListFile remove(int line) {
        lines.remove(line);
        return this;
    }

    ListFile backwards() {
        Collections.reverse(lines.subList(1, lines.size()));
        return this;
    }

    Path write(Path folder, String name) {
        try {
            return Files.write(folder.resolve(name), lines);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private int place(String column) {
        return Arrays.asList(lines.get(0).split(",")).indexOf(column);
    }

    private String[] cells(int line) {
        return lines.get(line).split(",", -1);
    }
}
