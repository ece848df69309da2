package org.proviso.database;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.proviso.core.EnvelopeNumber;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * Makes an election larger row by row, on H2: an envelope with all that was written, found, recorded and decided about it
 * is there again under another number, of another voter who is on the roll too. Nobody acted on the copies, so the ledger
 * has nothing of them.
 */
public final class CopiedEnvelopes {

    /** What an envelope rests on, then the envelope and what was made of it. */
    private static final List<String> OF_VOTERS = List.of("voter", "mail_ballot", "check_in", "person");

    private static final List<String> OF_ENVELOPES = List.of(
            "envelope",
            "affirmation",
            "affirmation_field",
            "envelope_image",
            "cure_evidence",
            "cure_defect",
            "envelope_case",
            "link",
            "assessment",
            "answer_given",
            "voter_search",
            "research_request",
            "proposal",
            "second_review",
            "ask_told",
            "group_choice",
            "decision",
            "notice",
            "notice_attempt",
            "batch_envelope");

    private static final List<String> OF_BATCHES = List.of("release_batch", "remake_sheet");

    private static final List<String> NAMES =
            List.of("envelope_no", "receipt_no", "receipt_compared", "voter_id", "person_id", "counted_person");
    private static final Map<String, Integer> NUMBERS = Map.of("row_no", 100_000, "batch_no", 100);

    private final JdbcClient jdbc;

    public CopiedEnvelopes(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** Every envelope so many times more, with the batches of those to be opened. */
    public void all(int copies) {
        copy("", copies);
    }

    /** One envelope so many times more; its copies end in {@code +1}, {@code +2} and so on. */
    public void of(EnvelopeNumber envelopeNo, int copies) {
        copy(envelopeNo.value(), copies);
    }

    private void copy(String only, int copies) {
        jdbc.sql("set referential_integrity false").update();
        for (int copy = 1; copy <= copies; copy++) {
            for (String table : OF_VOTERS) {
                copy(table, copy, "voter_id in (select voter_id from link where " + which("envelope_no", only) + ")");
            }
            for (String table : OF_ENVELOPES) {
                copy(table, copy, which("envelope_no", only));
            }
            if (only.isEmpty()) {
                for (String table : OF_BATCHES) {
                    copy(table, copy, "batch_no < 100");
                }
            }
        }
        jdbc.sql("set referential_integrity true").update();
    }

    /** What was no copy before. */
    private static String which(String column, String only) {
        return only.isEmpty() ? column + " not like '%+%'" : column + " = '" + only + "'";
    }

    private void copy(String table, int copy, String which) {
        List<String> columns = jdbc.sql("select lower(column_name) from information_schema.columns"
                        + " where lower(table_schema) = 'public' and lower(table_name) = ? order by ordinal_position")
                .param(table)
                .query(String.class)
                .list();
        jdbc.sql("insert into " + table + " (" + String.join(", ", columns) + ") select "
                        + columns.stream().map(column -> copied(column, copy)).collect(Collectors.joining(", "))
                        + " from " + table + " where " + which)
                .update();
    }

    private static String copied(String column, int copy) {
        if (NAMES.contains(column)) {
            return column + " || '+" + copy + "'";
        }
        return NUMBERS.containsKey(column) ? column + " + " + copy * NUMBERS.get(column) : column;
    }
}
