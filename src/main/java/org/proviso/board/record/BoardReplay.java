package org.proviso.board.record;

import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.board.BoardLedger;
import org.proviso.board.BoardMotion;
import org.proviso.board.BoardSession;
import org.proviso.board.MemberStore;
import org.proviso.board.MotionStore;
import org.proviso.board.SessionStore;
import org.proviso.board.motion.BoardVote;
import org.proviso.board.motion.VoteStore;
import org.proviso.core.BetweenRooms;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.Key;
import org.proviso.core.UserName;
import org.proviso.ledger.DifferenceCounter;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.ledger.TableComparison;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;

/** Compares sessions, motions and closed votes with the ledger, both ways; it changes nothing. */
@Service
@BetweenRooms
public class BoardReplay {

    private final SessionStore sessions;
    private final MotionStore motions;
    private final VoteStore votes;
    private final MemberStore members;
    private final BoardLedger pseudonyms;
    private final LedgerService ledger;

    BoardReplay(
            SessionStore sessions,
            MotionStore motions,
            VoteStore votes,
            MemberStore members,
            BoardLedger pseudonyms,
            LedgerService ledger) {
        this.sessions = sessions;
        this.motions = motions;
        this.votes = votes;
        this.members = members;
        this.pseudonyms = pseudonyms;
        this.ledger = ledger;
    }

    /** Tables and ledger are seen as of one moment. */
    @Transactional(readOnly = true, isolation = Isolation.SERIALIZABLE)
    public TableComparison replay(ElectionId electionId) {
        BoardLedgerEntries said = new BoardLedgerEntries();
        ledger.follow(LedgerChain.of(electionId), said::add);
        Map<String, String> there = new TreeMap<>();
        long count = 0;
        for (BoardSession session : sessions.all(electionId)) {
            put(there, session);
            for (BoardMotion motion : motions.all(session.key())) {
                put(there, motion);
                count++;
            }
        }
        DifferenceCounter differences = new DifferenceCounter();
        differences.compare(said.said(), there);
        return differences.result(count, "motions");
    }

    private void put(Map<String, String> there, BoardSession session) {
        String name = session.key().subject();
        there.put(name + " body", session.body().code());
        there.put(name + " called for", session.calledFor().toString());
        there.put(name + " quorum", String.valueOf(session.quorum()));
        there.put(name + " opened", session.openedAt() == null ? "" : "yes");
        there.put(name + " closed", session.closedAt() == null ? "" : "yes");
        there.put(
                name + " reopenings", number(sessions.reopenings(session.key()).size()));
        there.put(name + " arrivals", number(members.all(session.key()).size()));
        there.put(
                name + " keepers of the record",
                number(members.keepers(session.key()).size()));
        there.put(name + " recusals", number(members.recusals(session.key()).size()));
    }

    private void put(Map<String, String> there, BoardMotion motion) {
        String name = motion.key().subject();
        there.put(name + " outcome", motion.kind().code());
        there.put(name + " moved by", pseudonyms.pseudonym(motion.movedBy()));
        there.put(name + " seconded by", pseudonym(motion.secondedBy()));
        there.put(name + " reasons", motion.reasons().stream().map(Code::code).collect(Collectors.joining(", ")));
        there.put(name + " contests", String.join(", ", new TreeSet<>(motion.contests())));
        there.put(name + " reference", motion.legalReference());
        there.put(
                name + " against the rules",
                motion.envelopes().stream()
                        .flatMap(one -> one.against().stream()
                                .map(rules -> BoardLedgerEntries.against(
                                        one.envelopeNo(), rules.rulesSay().code(), rules.knownToHaveVoted())))
                        .collect(Collectors.joining(", ")));
        there.put(name + " put", motion.putAt() == null ? "" : "yes");
        there.put(name + " result", motion.end() == null ? "" : motion.end().code());
        if (motion.end() == null) {
            return;
        }
        there.put(name + " envelopes", Key.join(", ", motion.putNos()));
        for (BoardVote vote : votes.all(motion.key())) {
            there.put(
                    name + " vote of " + pseudonyms.pseudonym(vote.userName()),
                    vote.vote().code());
            if (vote.confirmed() != null) {
                there.put(
                        name + " confirmed by " + pseudonyms.pseudonym(vote.userName()),
                        vote.confirmed() ? "yes" : "no");
            }
        }
    }

    private String pseudonym(@Nullable UserName userName) {
        return userName == null ? "" : pseudonyms.pseudonym(userName);
    }

    private static String number(int count) {
        return count == 0 ? "" : String.valueOf(count);
    }
}
