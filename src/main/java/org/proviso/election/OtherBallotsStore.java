package org.proviso.election;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of the office's word that all mail and in-person ballots are counted. */
@Repository
class OtherBallotsStore {

    private final JdbcClient jdbc;
    private final Clock clock;

    OtherBallotsStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    boolean areCounted(ElectionId electionId) {
        return jdbc.sql("select count(*) from others_done where election_id = ?")
                        .param(electionId)
                        .query(Integer.class)
                        .single()
                > 0;
    }

    void markCounted(ElectionId electionId, UserName by) {
        try {
            jdbc.sql("insert into others_done (election_id, recorded_by, recorded_at) values (?, ?, ?)")
                    .params(electionId, by, now())
                    .update();
        } catch (DuplicateKeyException e) {
            throw new OptimisticLockingFailureException("Somebody recorded it at the same moment.", e);
        }
    }

    /** Holds the word for this transaction, so that nobody takes it back while a batch is begun to open. */
    void hold(ElectionId electionId) {
        jdbc.sql("select election_id from others_done where election_id = ? for update")
                .param(electionId)
                .query(String.class)
                .optional();
    }

    /** The word was given too early: it is kept apart, with the reason. */
    void takeBack(ElectionId electionId, UserName by, String because) {
        jdbc.sql("""
                        insert into others_done_taken_back (election_id, taken_no, recorded_by, recorded_at, because,
                            taken_back_by, taken_back_at)
                        select d.election_id, (select coalesce(max(t.taken_no), 0) + 1 from others_done_taken_back t
                            where t.election_id = d.election_id), d.recorded_by, d.recorded_at, cast(? as varchar),
                            cast(? as varchar), cast(? as timestamp with time zone)
                        from others_done d where d.election_id = ?""").params(because, by, now(), electionId).update();
        jdbc.sql("delete from others_done where election_id = ?")
                .param(electionId)
                .update();
    }

    /** The word was taken back so often, by whom and why. */
    List<WordTakenBack> takenBack(ElectionId electionId) {
        return jdbc.sql("""
                        select taken_no as number, taken_back_by as by, because from others_done_taken_back
                        where election_id = ? order by taken_no""").param(electionId).query(WordTakenBack.class).list();
    }

    private OffsetDateTime now() {
        return OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC);
    }
}
