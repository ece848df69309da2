package org.proviso.database;

import org.jspecify.annotations.Nullable;
import org.proviso.core.UserName;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Writes the fewest rows that a test of the tables needs. */
final class Rows {

    private final JdbcClient jdbc;

    Rows(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    void election(String id) {
        jdbc.sql("""
                        insert into election (election_id, name, held_on, kind, jurisdiction, zone, rule_pack,
                          deciding_members, deciding_quorum, office_name, office_address, office_phone,
                          office_email, polls_close, languages, content_hash, loaded_at, version)
                        values (?, 'Test', date '2026-11-03', 'general', 'Test County', 'America/Detroit',
                          'example', 3, 2, '', '', '', '', time '20:00:00', 'en', ?, current_timestamp, 0)""").params(id, id).update();
    }

    void envelope(String election, String envelope, String receipt) {
        jdbc.sql("""
                        insert into envelope (election_id, envelope_no, receipt_no, place, source, voting_location,
                          precinct_cast, style_cast, party_ballot_cast, extended_hours, in_line_at_close, issue_reasons,
                          id_shown, id_kind, declaration, mail_ballot_surrendered, sent_here_by_official, official_note,
                          voter_signed, mark_witness, official_signed, condition, signature_image, recorded_at, version)
                        values (?, ?, ?, 1, 'poll', '', '', '', '', 'no', 'unknown', '', 'unknown', '', '', 'unknown',
                          'unknown', '', 'yes', 'unknown', 'yes', 'sealed', '', current_timestamp, 0)""").params(election, envelope, receipt).update();
    }

    void person(String election, String person) {
        jdbc.sql("insert into person values (?, ?, null, 'affidavit', current_timestamp)")
                .params(election, person)
                .update();
    }

    void caseOf(String election, String envelope, String person, @Nullable String counted) {
        jdbc.sql("""
                        insert into envelope_case (election_id, envelope_no, state, person_id, counted_person, taken_by,
                            taken_at, changed_at, version)
                        values (?, ?, 'open', ?, ?, null, null, current_timestamp, 0)""").params(election, envelope, person, counted).update();
    }

    void user(String name) {
        jdbc.sql("insert into office_user values (?, ?, '', ?, '', false, true, false, current_timestamp, 0)")
                .params(name, name, name)
                .update();
    }

    void proposal(String election, String envelope, UserName by) {
        jdbc.sql("""
                        insert into proposal values (?, ?, 1, 'count', '', '', null, 1, ?, current_timestamp,
                          'standing', 0)""").params(election, envelope, by).update();
    }

    void secondReview(String election, String envelope, UserName proposedBy, UserName by) {
        jdbc.sql("insert into second_review values (?, ?, 1, ?, ?, true, '', current_timestamp)")
                .params(election, envelope, proposedBy, by)
                .update();
    }
}
