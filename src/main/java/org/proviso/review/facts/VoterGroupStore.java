package org.proviso.review.facts;

import java.sql.ResultSet;
import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.Collection;
import java.util.HashMap;
import java.util.Map;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
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

    public void choose(EnvelopeKey key, String personId, String reason, UserName by) {
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

    /** The envelopes that were put forward last for several persons, by person. */
    Map<String, EnvelopeNumber> chosen(ElectionId electionId, Collection<String> personIds) {
        Map<String, EnvelopeNumber> chosen = new HashMap<>();
        jdbc.sql("""
                        select g.person_id, g.envelope_no from unnest(cast(? as varchar array)) as wanted (id)
                        join group_choice g on g.election_id = ? and g.person_id = wanted.id order by g.choice_no""").param(personIds.toArray(String[]::new)).param(electionId).query((ResultSet row) -> {
            chosen.put(row.getString("person_id"), new EnvelopeNumber(row.getString("envelope_no")));
        });
        return chosen;
    }
}
