package org.proviso.election.rules;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import org.proviso.core.CountyRuling;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The tables of county rulings: what holds now, and every signing. */
@Repository
class RulingStore {

    /** A signing under its number. */
    private record Act(
            ElectionId electionId, int number, CountyRuling ruling, UserName recordedBy, Instant recordedAt) {}

    private final JdbcClient jdbc;
    private final Clock clock;

    RulingStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** Puts a ruling in force, in the place of an earlier one on the same rule, and keeps the act; its number. */
    int sign(ElectionId electionId, CountyRuling ruling, UserName recordedBy) {
        jdbc.sql("delete from county_ruling where election_id = ? and rule = ?")
                .params(electionId, ruling.rule())
                .update();
        jdbc.sql("""
                        insert into county_ruling (election_id, rule, ruled_value, signed_by, signed_on, ground)
                        values (?, ?, ?, ?, ?, ?)""")
                .params(electionId, ruling.rule(), ruling.value(), ruling.signedBy(), ruling.on(), ruling.ground())
                .update();
        int number = jdbc.sql("select coalesce(max(act_no), 0) + 1 from ruling_act where election_id = ?")
                .param(electionId)
                .query(Integer.class)
                .single();
        jdbc.sql("""
                        insert into ruling_act (election_id, act_no, rule, ruled_value, signed_by, signed_on, ground,
                            recorded_by, recorded_at)
                        values (:electionId, :number, :ruling.rule, :ruling.value, :ruling.signedBy, :ruling.on,
                            :ruling.ground, :recordedBy, :recordedAt)""")
                .paramSource(new Act(electionId, number, ruling, recordedBy, clock.instant()))
                .update();
        return number;
    }

    List<RecordedRuling> acts(ElectionId electionId) {
        return jdbc.sql("""
                        select a.*, a.ruled_value as "value", a.signed_on as "on" from ruling_act a
                        where a.election_id = ? order by a.act_no""").param(electionId).query(RecordedRuling.class).list();
    }
}
