package org.proviso.review.facts;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Optional;
import org.proviso.review.CaseKey;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of which of a person's several envelopes was put forward as the one to count. */
@Repository
public class VoterGroupStore {

    private final JdbcClient jdbc;
    private final Clock clock;

    VoterGroupStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    public void choose(CaseKey key, String personId, String reason, String by) {
        int number = jdbc.sql("""
                        select coalesce(max(choice_no), 0) + 1 from group_choice
                        where election_id = ? and person_id = ?""")
                .params(key.electionId(), personId)
                .query(Integer.class)
                .single();
        jdbc.sql("""
                        insert into group_choice (election_id, person_id, choice_no, envelope_no, reason, chosen_by,
                            chosen_at)
                        values (?, ?, ?, ?, ?, ?, ?)""")
                .params(
                        key.electionId(),
                        personId,
                        number,
                        key.envelopeNo(),
                        reason,
                        by,
                        OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC))
                .update();
    }

    /** The envelope put forward last. */
    Optional<String> chosen(String electionId, String personId) {
        return jdbc.sql("""
                        select envelope_no from group_choice where election_id = ? and person_id = ?
                        order by choice_no desc limit 1""").params(electionId, personId).query(String.class).optional();
    }
}
