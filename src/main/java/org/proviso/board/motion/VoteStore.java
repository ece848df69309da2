package org.proviso.board.motion;

import java.time.OffsetDateTime;
import java.util.List;
import org.proviso.board.MotionKey;
import org.proviso.core.UserName;
import org.proviso.core.deciding.Vote;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The table of votes. */
@Repository
public class VoteStore {

    private static final String OF_MEMBER =
            " where election_id = ? and session_no = ? and motion_no = ? and user_name = ?";

    private final JdbcClient jdbc;

    VoteStore(JdbcClient jdbc) {
        this.jdbc = jdbc;
    }

    public List<BoardVote> all(MotionKey key) {
        return jdbc.sql("""
                        select * from vote where election_id = ? and session_no = ? and motion_no = ?
                        order by user_name""")
                .params(key.session().electionId(), key.session().sessionNo(), key.motionNo())
                .query(BoardVote.class)
                .list();
    }

    /** The member says whether a vote that another noted is theirs. */
    void confirm(MotionKey key, UserName member, boolean theirs, OffsetDateTime at) {
        jdbc.sql("update vote set confirmed = ?, confirmed_at = ?" + OF_MEMBER)
                .params(theirs, at, key.session().electionId(), key.session().sessionNo(), key.motionNo(), member)
                .update();
    }

    void note(MotionKey key, UserName member, Vote vote, UserName notedBy, OffsetDateTime at) {
        takeBack(key, member);
        jdbc.sql("""
                        insert into vote (election_id, session_no, motion_no, user_name, vote, cast_at, noted_by)
                        values (?, ?, ?, ?, ?, ?, ?)""")
                .params(
                        key.session().electionId(),
                        key.session().sessionNo(),
                        key.motionNo(),
                        member,
                        vote.code(),
                        at,
                        notedBy)
                .update();
    }

    /** Whether there was one to take back. */
    boolean takeBack(MotionKey key, UserName member) {
        return jdbc.sql("delete from vote" + OF_MEMBER)
                        .params(key.session().electionId(), key.session().sessionNo(), key.motionNo(), member)
                        .update()
                > 0;
    }
}
