package org.proviso.board.motion;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proviso.board.BoardClock;
import org.proviso.board.BoardLedger;
import org.proviso.board.BoardMotion;
import org.proviso.board.MotionKey;
import org.proviso.board.MotionStore;
import org.proviso.core.UserName;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.deciding.Vote;
import org.proviso.core.deciding.VoteResult;
import org.proviso.ledger.LedgerLine;
import org.springframework.stereotype.Component;

/** Writes how a vote ended: in the motion, in the votes of recused members who said nothing, and for the ledger. */
@Component
class VoteResultWriter {

    private final MotionStore motions;
    private final VoteStore votes;
    private final BodyVotes polls;
    private final BoardClock clock;
    private final BoardLedger ledger;

    VoteResultWriter(MotionStore motions, VoteStore votes, BodyVotes polls, BoardClock clock, BoardLedger ledger) {
        this.motions = motions;
        this.votes = votes;
        this.polls = polls;
        this.clock = clock;
        this.ledger = ledger;
    }

    /** A vote that was written: how it was closed, how it ended in this body, and what it came to. */
    record WrittenVote(
            BoardMotion motion, VoteResult.Stands own, VoteResult.Stands result, Optional<BoardMotion> twin) {}

    /** With the motion as it is then. In a body of two it ends as its own votes say, whatever both together come to. */
    WrittenVote write(VoteClosing.ClosingMotion ballot, VoteResult.Stands result, Optional<BoardMotion> twin) {
        MotionKey key = ballot.motion().key();
        for (UserName silent : polls.silentlyRecused(ballot.motion(), ballot.poll())) {
            votes.note(key, silent, Vote.RECUSED, ballot.by().userName(), clock.now());
        }
        VoteResult.Stands own = twin.isEmpty() ? result : (VoteResult.Stands) ballot.alone();
        motions.end(key, own.end(), clock.now(), result.recorded());
        twin.ifPresent(other -> motions.join(key, other.key()));
        return new WrittenVote(motions.find(key).orElseThrow(), own, result, twin);
    }

    /** What the ledger is to say of it. */
    LedgerLine line(WrittenVote written) {
        MotionKey key = written.motion().key();
        return ledger.line("vote_closed", key.session(), key.subject(), what(written));
    }

    private Map<String, Object> what(WrittenVote written) {
        BoardMotion motion = written.motion();
        List<BoardVote> cast = votes.all(motion.key());
        Map<String, Object> what = new LinkedHashMap<>();
        what.put("motion", motion.key().motionNo());
        what.put("outcome", motion.kind().code());
        what.put("envelopes", motion.putNos());
        what.put("result", written.own().end().code());
        DecisionOutcome decided = written.result().decided();
        what.put("decided", decided == null ? "" : decided.code());
        if (!written.result().keptOpen().isEmpty()) {
            what.put("kept_open", List.copyOf(written.result().keptOpen()));
        }
        for (Vote vote : Vote.values()) {
            what.put(vote.code(), (int)
                    cast.stream().filter(boardVote -> boardVote.vote() == vote).count());
        }
        what.put("votes", cast.stream().map(this::vote).toList());
        written.twin().ifPresent(other -> what.put("read_with", other.key().subject()));
        return what;
    }

    private Map<String, Object> vote(BoardVote vote) {
        Map<String, Object> what = new LinkedHashMap<>();
        what.put("member", ledger.pseudonym(vote.userName()));
        what.put("vote", vote.vote().code());
        if (!vote.notedBy().equals(vote.userName().value())) {
            what.put("noted_by", ledger.pseudonym(new UserName(vote.notedBy())));
        }
        return what;
    }
}
