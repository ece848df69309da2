package org.proviso.review;

import java.util.List;
import org.proviso.core.EnvelopeNumber;

/** A change of a row that no service makes, and the sentence that names it. */
public record Tampering(String sql, String sentence) {

    public static List<Tampering> all(EnvelopeNumber counted, EnvelopeNumber rejected, EnvelopeNumber worked) {
        return List.of(
                of(
                        "update envelope_case set state = 'ready' where envelope_no = '" + counted + "'",
                        counted,
                        "in the table the case is ready, by the ledger it is decided."),
                of(
                        "update envelope_case set counted_person = null where envelope_no = '" + counted + "'",
                        counted,
                        "by the ledger it counts, and the table does not keep its voter from counting again."),
                of(
                        "update envelope_case set person_id = null, counted_person = null where envelope_no = '"
                                + counted + "'",
                        counted,
                        "in the table the case is of another person than by the ledger."),
                decision("outcome = 'count'", rejected, "outcome"),
                decision("reasons = 'not_registered;no_signature'", rejected, "reasons"),
                decision("legal_reference = 'Another section'", rejected, "legal reference"),
                decision("departs_because = 'So be it.'", rejected, "departs because"),
                decision("decider = 'official'", rejected, "decider"),
                decision("assessment_no = 77", rejected, "assessment no"),
                decision("style_right = 'Z-9'", rejected, "style right"),
                decision("held_apart = not held_apart", rejected, "held apart"),
                decision("set_aside_at = decided_at, set_aside_because = 'Away with it.'", rejected, "set aside at"),
                count("delete from decision where envelope_no = '" + rejected + "'", rejected, "decision", 0, 1),
                of(
                        "update link set voter_id = 'V-000' where linked_by is not null and envelope_no = '" + counted
                                + "'",
                        counted,
                        "settled link 1 has another voter id than entry %"),
                count("delete from answer_given where envelope_no = '" + counted + "'", counted, "answer", 0, 1),
                of(
                        "update answer_given set fact_words = 'differs_by_two' where envelope_no = '" + counted + "'",
                        counted,
                        "answer 1 has another fact words than entry %"),
                of(
                        "update case_note set words = 'Never mind.' where note_no = 1 and envelope_no = '" + worked
                                + "'",
                        worked,
                        "note 1 has another words than entry %"),
                count(
                        "delete from case_note where note_no = 2 and envelope_no = '" + worked + "'",
                        worked,
                        "note",
                        1,
                        2),
                of(
                        "update answer_given set given_by = 'ben' where envelope_no = '" + counted + "'",
                        counted,
                        "answer 1 has another given by than entry %"),
                of(
                        "update answer_given set withdrawn_at = given_at where envelope_no = '" + counted + "'",
                        counted,
                        "answer 1 has another withdrawn at than entry %"),
                of(
                        "update proposal set state = 'withdrawn' where envelope_no = '" + counted + "'",
                        counted,
                        "proposal 1 has another state than entry %"),
                of(
                        "update second_review set note = 'Fine.' where envelope_no = '" + rejected + "'",
                        rejected,
                        "second review 1 has another note than entry %"),
                of(
                        "update research_request set found = 'No.' where request_no = 1 and envelope_no = '" + worked
                                + "'",
                        worked,
                        "research request 1 has another found than entry %"),
                of(
                        "update envelope_case set version = version + 1 where envelope_no = '" + counted + "'",
                        counted,
                        "the row of the case was changed %"));
    }

    private static Tampering of(String sql, EnvelopeNumber envelope, String what) {
        return new Tampering(sql, "Envelope " + envelope + ": " + what);
    }

    private static Tampering decision(String change, EnvelopeNumber envelope, String column) {
        return of(
                "update decision set " + change + " where envelope_no = '" + envelope + "'",
                envelope,
                "decision 1 has another " + column + " than entry %");
    }

    private static Tampering count(String sql, EnvelopeNumber envelope, String kind, int table, int ledger) {
        return of(sql, envelope, "of the kind " + kind + " the table has " + table + " and the ledger " + ledger + ".");
    }

    /** Whether a replay named it; the sentence may end in the number of an entry. */
    public boolean isNamedIn(List<String> sentences) {
        int open = sentence.indexOf('%');
        return sentences.stream()
                .anyMatch(said -> open < 0 ? said.equals(sentence) : said.startsWith(sentence.substring(0, open)));
    }
}
