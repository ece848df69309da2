package org.proviso.review.news;

import java.time.Clock;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.springframework.dao.OptimisticLockingFailureException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of newer lists that wait for a second person. */
@Repository
class UnconfirmedListStore {

    private final JdbcClient jdbc;
    private final Clock clock;

    UnconfirmedListStore(JdbcClient jdbc, Clock clock) {
        this.jdbc = jdbc;
        this.clock = clock;
    }

    /** Who brought it and waits. */
    Optional<String> broughtBy(ElectionId electionId, int snapshotNo) {
        return jdbc.sql("""
                        select brought_by from waiting_list
                        where election_id = ? and snapshot_no = ? and confirmed_by is null""").params(electionId, snapshotNo).query(String.class).optional();
    }

    /** Those that still wait. */
    List<UnconfirmedList> waiting(ElectionId electionId) {
        return jdbc.sql("""
                        select * from waiting_list where election_id = ? and confirmed_by is null
                        order by snapshot_no""").param(electionId).query(UnconfirmedList.class).list();
    }

    void add(ElectionId electionId, int snapshotNo, UserName by) {
        if (broughtBy(electionId, snapshotNo).isEmpty()) {
            jdbc.sql("insert into waiting_list (election_id, snapshot_no, brought_by, brought_at) values (?, ?, ?, ?)")
                    .params(electionId, snapshotNo, by, now())
                    .update();
        }
    }

    void confirm(ElectionId electionId, int snapshotNo, UserName by) {
        int confirmed = jdbc.sql("""
                        update waiting_list set confirmed_by = ?, confirmed_at = ?
                        where election_id = ? and snapshot_no = ? and confirmed_by is null""").params(by, now(), electionId, snapshotNo).update();
        if (confirmed == 0) {
            throw new OptimisticLockingFailureException("This list was confirmed meanwhile.");
        }
    }

    private OffsetDateTime now() {
        return OffsetDateTime.ofInstant(clock.instant(), ZoneOffset.UTC);
    }
}
