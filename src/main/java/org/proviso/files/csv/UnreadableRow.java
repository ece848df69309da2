package org.proviso.files.csv;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Path;
import java.util.Optional;

/** Says why a row cannot be told apart from the next, by looking at its characters once more. Not thread-safe. */
final class UnreadableRow {

    static final String TOO_LONG =
            "is longer than the limit of 1,000,000 characters; check for an opening quote that is never closed";

    private static final String NEVER_CLOSED = "this row has an opening quote that is never closed";
    private static final String TEXT_FOLLOWS = "text follows a closing quote; write a quote inside a quoted cell twice";

    private static final int END = -1;

    /** Where in a row the last character stood. */
    private enum Place {
        CELL_BEGINS,
        UNQUOTED,
        QUOTED,
        QUOTE_CLOSED
    }

    private final Reader characters;
    private Place place = Place.CELL_BEGINS;
    private int length;

    private UnreadableRow(Reader characters) {
        this.characters = characters;
    }

    /** Of the row that begins on that line, counted from 1; empty where it has none of these errors. */
    static Optional<String> reason(Path path, int line) throws IOException {
        try (BufferedReader characters = new BufferedReader(new Utf8Reader(path))) {
            for (int above = 1; above < line; above++) {
                String unused = characters.readLine();
            }
            return new UnreadableRow(characters).reason();
        }
    }

    private Optional<String> reason() throws IOException {
        for (int next = characters.read(); next != END; next = characters.read()) {
            length++;
            if (length > CsvCells.LONGEST_RECORD) {
                return Optional.of(TOO_LONG);
            }
            boolean endsLine = next == '\n' || next == '\r';
            if (endsLine && place != Place.QUOTED) {
                return Optional.empty();
            }
            if (place == Place.QUOTE_CLOSED && next != '"' && next != ',') {
                return Optional.of(TEXT_FOLLOWS);
            }
            place = after(next);
        }
        return place == Place.QUOTED ? Optional.of(NEVER_CLOSED) : Optional.empty();
    }

    private Place after(int next) {
        if (place == Place.QUOTED) {
            return next == '"' ? Place.QUOTE_CLOSED : Place.QUOTED;
        }
        if (next == ',') {
            return Place.CELL_BEGINS;
        }
        boolean opensQuote = next == '"' && place != Place.UNQUOTED;
        return opensQuote ? Place.QUOTED : Place.UNQUOTED;
    }
}
