package org.proviso.election;

import java.time.LocalDateTime;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** When the board meets, from which deadlines may count: one row for each election that has a meeting called. */
@Repository
class BoardMeetingStore {

    private final JdbcClient jdbc;

    BoardMeetingStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    /** On the county's clock. */
    Optional<LocalDateTime> find(ElectionId electionId) {
        return jdbc.sql("select meets_at from board_meeting where election_id = ?")
                .param(electionId)
                .query(LocalDateTime.class)
                .optional();
    }

    void put(ElectionId electionId, LocalDateTime meetsAt) {
        remove(electionId);
        jdbc.sql("insert into board_meeting (election_id, meets_at) values (?, ?)")
                .params(electionId, meetsAt)
                .update();
    }

    void remove(ElectionId electionId) {
        jdbc.sql("delete from board_meeting where election_id = ?")
                .param(electionId)
                .update();
    }
}
