package org.proviso.review.replay;

import static org.proviso.review.replay.CaseColumn.hidden;
import static org.proviso.review.replay.CaseColumn.person;
import static org.proviso.review.replay.CaseColumn.plain;
import static org.proviso.review.replay.CaseColumn.words;

import java.util.List;
import org.proviso.review.replay.CaseColumn.Kind;

/** The tables of what was done to a case, each row of which has its entry in the ledger. */
enum CaseTable {
    LINK(
            "settled link",
            "link",
            "linked_by is not null",
            "link_no",
            plain("identity"),
            hidden("voter_id"),
            hidden("ground"),
            person("linked_by")),
    LINK_SET_BACK("link set back", "link", "linked_by is null and ground <> ''", "link_no", hidden("ground")),
    ANSWER(
            "answer",
            "answer_given",
            "answer_no > 0",
            "answer_no",
            plain("kind"),
            plain("fact"),
            words("fact_words"),
            hidden("reason"),
            CaseColumn.of("received_at", Kind.STAMP),
            person("given_by"),
            CaseColumn.of("withdrawn_at", Kind.GIVEN)),
    FINDING_SEEN(
            "finding seen before a second look",
            "signature_finding_seen",
            "seen_no > 0",
            "seen_no",
            plain("answer_no"),
            person("seen_by")),
    SEARCH(
            "search",
            "voter_search",
            "search_no > 0",
            "search_no",
            words("looked_in"),
            plain("found"),
            hidden("note"),
            person("searched_by"),
            CaseColumn.of("taken_back_at", Kind.GIVEN),
            hidden("taken_back_because")),
    REQUEST(
            "research request",
            "research_request",
            "request_no > 0",
            "request_no",
            hidden("asked"),
            person("asked_by"),
            hidden("found"),
            person("found_by")),
    NOTE("note", "case_note", "note_no > 0", "note_no", hidden("words"), plain("corrects"), person("written_by")),
    CHOICE(
            "choice of an envelope",
            "group_choice",
            "choice_no > 0",
            "chosen_at, choice_no",
            hidden("reason"),
            person("chosen_by")),
    PROPOSAL(
            "proposal",
            "proposal",
            "proposal_no > 0",
            "proposal_no",
            plain("outcome"),
            plain("reasons"),
            plain("legal_reference"),
            hidden("departs_because"),
            plain("assessment_no"),
            person("proposed_by"),
            plain("state")),
    SECOND_REVIEW(
            "second review",
            "second_review",
            "proposal_no > 0",
            "proposal_no",
            plain("proposal_no"),
            CaseColumn.of("agrees", Kind.YES_NO),
            hidden("note"),
            person("reviewed_by")),
    DECISION(
            "decision",
            "decision",
            "decision_no > 0",
            "decision_no",
            plain("outcome"),
            plain("reasons"),
            CaseColumn.of("legal_reference", Kind.REFERENCE),
            hidden("departs_because"),
            words("contests"),
            plain("assessment_no"),
            plain("decider"),
            plain("session_no"),
            plain("motion_no"),
            plain("style_cast"),
            hidden("style_right"),
            CaseColumn.of("held_apart", Kind.YES_NO),
            CaseColumn.of("set_aside_at", Kind.GIVEN),
            hidden("set_aside_because")),
    FOLLOW_UP(
            "follow-up",
            "follow_up",
            "follow_up_no > 0",
            "follow_up_no",
            plain("decision_no"),
            plain("assessment_no"),
            plain("says"),
            plain("reasons"),
            hidden("note"),
            plain("session_no"),
            plain("motion_no"),
            person("recorded_by")),
    END_PROPOSAL(
            "proposal to end",
            "end_proposal",
            "proposal_no > 0",
            "proposal_no",
            plain("ends_as"),
            hidden("to_county"),
            plain("reasons"),
            plain("legal_reference"),
            plain("assessment_no"),
            person("proposed_by"),
            plain("state"),
            person("read_by"),
            hidden("note")),
    COUNTY_RECEIPT(
            "receipt of another county",
            "county_receipt",
            "receipt_no > 0",
            "receipt_no",
            plain("received_on"),
            hidden("received_by"),
            hidden("county_reference"),
            person("recorded_by"),
            CaseColumn.of("set_aside_at", Kind.GIVEN)),
    MAIL_LINE(
            "line for the mail desk",
            "mail_desk_line",
            "list_no > 0",
            "list_no, line_no",
            plain("list_no"),
            plain("line_no"),
            plain("kind"),
            plain("decision_no"),
            hidden("voter_id"),
            hidden("voter_name"),
            hidden("receipt_no"),
            hidden("ballots"),
            person("sent_by")),
    MAIL_ANSWER(
            "answer of the mail desk",
            "mail_desk_answer",
            "answer_no > 0",
            "answer_no",
            plain("list_no"),
            plain("line_no"),
            plain("answer"),
            plain("answered_on"),
            hidden("answered_by"),
            hidden("because"),
            person("recorded_by"));

    private final String spoken;
    private final String table;
    private final String which;
    private final String order;
    private final List<CaseColumn> columns;

    CaseTable(String spoken, String table, String which, String order, CaseColumn... columns) {
        this.spoken = spoken;
        this.table = table;
        this.which = which;
        this.order = order;
        this.columns = List.of(columns);
    }

    /** What one row is, as it is said in a sentence. */
    String spoken() {
        return spoken;
    }

    String table() {
        return table;
    }

    /** Which rows have an entry. */
    String which() {
        return which;
    }

    /** The columns by which the rows of a case are in the order of their entries. */
    String order() {
        return order;
    }

    List<CaseColumn> columns() {
        return columns;
    }
}
