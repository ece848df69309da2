package org.proviso.core.adjudication.questions;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The table of what each question answers to each word under the example pack, while every ask still runs. */
record AnswerTable(String question, String facts, String answer) {

    static List<AnswerTable> rows() {
        try (InputStream table = AnswerTable.class.getResourceAsStream("answers-under-example.csv")) {
            return new String(table.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .map(line -> line.split(",", 3))
                    .map(cells -> new AnswerTable(cells[0], cells[1], cells[2].replace("\"", "")))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The code of the reason a defect gives, or empty. */
    String reason() {
        boolean defect = !answer.startsWith("open") && answer.contains(": ");
        return defect ? answer.substring(answer.lastIndexOf(": ") + 2) : "";
    }

    boolean costsTheVoter() {
        return answer.startsWith("reject") || answer.startsWith("in_part");
    }
}
