package org.proviso.election.rules;

import java.time.Clock;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
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

    /** Puts a recorded ruling in force, in the place of an earlier one on the same rule. */
    void putInForce(ElectionId electionId, RecordedRuling recorded, UserName by) {
        CountyRuling ruling = recorded.ruling();
        jdbc.sql("delete from county_ruling where election_id = ? and rule = ?")
                .params(electionId, ruling.rule())
                .update();
        jdbc.sql("""
                        insert into county_ruling (election_id, rule, ruled_value, signed_by, signed_on, ground)
                        values (?, ?, ?, ?, ?, ?)""")
                .params(electionId, ruling.rule(), ruling.value(), ruling.signedBy(), ruling.on(), ruling.ground())
                .update();
        jdbc.sql("update ruling_act set in_force_by = ?, in_force_at = ? where election_id = ? and act_no = ?")
                .params(by, clock.instant(), electionId, recorded.actNo())
                .update();
    }

    void takeBack(ElectionId electionId, RecordedRuling recorded, UserName by) {
        jdbc.sql("update ruling_act set taken_back_by = ?, taken_back_at = ? where election_id = ? and act_no = ?")
                .params(by, clock.instant(), electionId, recorded.actNo())
                .update();
    }

    /** Keeps a ruling that is not in force yet; its number. */
    int record(ElectionId electionId, CountyRuling ruling, UserName recordedBy) {
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

    /** One ruling, held until the end of the transaction. */
    Optional<RecordedRuling> locked(ElectionId electionId, int actNo) {
        return jdbc.sql("""
                        select a.*, a.ruled_value as "value", a.signed_on as "on" from ruling_act a
                        where a.election_id = ? and a.act_no = ? for update""")
                .params(electionId, actNo)
                .query(RecordedRuling.class)
                .optional();
    }

    List<RecordedRuling> acts(ElectionId electionId) {
        return jdbc.sql("""
                        select a.*, a.ruled_value as "value", a.signed_on as "on" from ruling_act a
                        where a.election_id = ? order by a.act_no""").param(electionId).query(RecordedRuling.class).list();
    }
}
