package org.proviso.files.mapping;

/** One column of a fixed-width file: its name, and the first and last character of it, counted from 1. */
public record FixedColumn(String name, int from, int to) {

    String cell(String line) {
        return from > line.length() ? "" : line.substring(from - 1, Math.min(to, line.length()));
    }
}
