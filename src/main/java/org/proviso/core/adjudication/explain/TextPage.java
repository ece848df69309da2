package org.proviso.core.adjudication.explain;

import java.util.Locale;

/** Lays out a page of plain text: titles, labelled lines, wrapped paragraphs. */
final class TextPage {

    private static final int WIDTH = 100;
    private static final int LABEL = 17;

    private final StringBuilder text = new StringBuilder();

    TextPage line(String line) {
        text.append(line.stripTrailing()).append('\n');
        return this;
    }

    TextPage blank() {
        return line("");
    }

    TextPage title(String title) {
        return blank().line(title.toUpperCase(Locale.ROOT));
    }

    /** A label and what it says, left out where it says nothing. */
    TextPage labelled(String label, String value) {
        if (!value.isBlank()) {
            wrapped("  " + String.format("%-" + LABEL + "s", label), value);
        }
        return this;
    }

    /** Words to the left, words to the right edge. */
    TextPage edges(String left, String right) {
        int gap = Math.max(2, WIDTH - left.length() - right.length());
        return line(left + " ".repeat(gap) + right);
    }

    /** A paragraph after a lead; further lines stand under the first word. */
    TextPage wrapped(String lead, String words) {
        StringBuilder row = new StringBuilder(lead);
        int start = lead.length();
        for (String word : words.split(" ", 0)) {
            if (row.length() > start && row.length() + 1 + word.length() > WIDTH) {
                line(row.toString());
                row = new StringBuilder(" ".repeat(lead.length()));
            }
            row.append(row.length() > start ? " " : "").append(word);
        }
        return line(row.toString());
    }

    @Override
    public String toString() {
        return text.toString();
    }
}
