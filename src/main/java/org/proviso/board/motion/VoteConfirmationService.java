package org.proviso.board.motion;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.access.StaffList;
import org.proviso.board.BoardClock;
import org.proviso.board.BoardLedger;
import org.proviso.board.BoardMotion;
import org.proviso.board.MotionKey;
import org.proviso.board.MotionStore;
import org.proviso.board.SessionKey;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.deciding.Vote;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Votes that another member recorded, for a member without a device who said the vote aloud. The member confirms on the
 * minutes that it is theirs, or that it is not: then the record says so, and what was decided stands until people reopen it.
 */
@Service
public class VoteConfirmationService {

    private final MotionStore motions;
    private final VoteStore votes;
    private final AccessService access;
    private final StaffList staff;
    private final BoardClock clock;
    private final BoardLedger ledger;
    private final ActDoor door;

    VoteConfirmationService(
            MotionStore motions,
            VoteStore votes,
            AccessService access,
            StaffList staff,
            BoardClock clock,
            BoardLedger ledger,
            ActDoor door) {
        this.motions = motions;
        this.votes = votes;
        this.access = access;
        this.staff = staff;
        this.clock = clock;
        this.ledger = ledger;
        this.door = door;
    }

    /** A vote of yours that somebody else recorded, by name, and that you have not confirmed. */
    public record RecordedForYou(MotionKey motion, Vote vote, String by) {}

    /** Votes of a session that wait for the reader's confirmation, once the vote is closed; in the order of the motions. */
    @Transactional(readOnly = true)
    public List<RecordedForYou> waiting(SessionKey session) {
        UserName reader = access.demand(Permission.VOTE).userName();
        return motions.all(session).stream()
                .filter(motion -> motion.end() != null)
                .flatMap(motion -> own(motion.key(), reader)
                        .filter(vote -> vote.isByAnother() && vote.confirmed() == null)
                        .map(vote -> new RecordedForYou(motion.key(), vote.vote(), name(new UserName(vote.notedBy()))))
                        .stream())
                .toList();
    }

    /** The member says whether the vote that another recorded is theirs. What is new is the motion. */
    @Transactional
    public ActResult<MotionKey> confirm(MotionKey key, boolean theirs) {
        ActDoor.Permitted member = door.demand(Permission.VOTE);
        UserName userName = member.user().userName();
        return member.lock(() -> motion(key))
                .refuse(motion -> clock.closed(key.session().electionId()))
                .refuse(motion -> Refusal.when(
                        motion.end() == null,
                        Why.NOT_IN_THIS_STATE,
                        "The vote on this motion is not closed yet. Change your vote while it is open."))
                .refuse(motion -> notToConfirm(own(key, userName)))
                .save(motion -> {
                    votes.confirm(key, userName, theirs, clock.now());
                    return key;
                })
                .record(confirmed -> ledger.line(
                        theirs ? "vote_confirmed" : "vote_disputed",
                        key.session(),
                        key.subject(),
                        Map.of("motion", key.motionNo(), "member", ledger.pseudonym(userName))));
    }

    private BoardMotion motion(MotionKey key) {
        return motions.find(key)
                .orElseThrow(() -> new IllegalArgumentException("There is no motion " + key.motionNo() + "."));
    }

    private Optional<BoardVote> own(MotionKey key, UserName member) {
        return votes.all(key).stream()
                .filter(vote -> vote.userName().equals(member))
                .findFirst();
    }

    private static Optional<Refusal> notToConfirm(Optional<BoardVote> own) {
        boolean byAnother = own.filter(BoardVote::isByAnother).isPresent();
        boolean said = own.filter(vote -> vote.confirmed() != null).isPresent();
        return Refusal.when(
                        !byAnother,
                        Why.NOT_IN_THIS_STATE,
                        "Nobody else recorded a vote of yours on this motion: there is nothing to confirm.")
                .or(() -> Refusal.when(said, Why.NOTHING_NEW, "You have said already whether this vote is yours."));
    }

    private String name(UserName userName) {
        return staff.user(userName).map(OfficeUser::fullName).orElse(userName.value());
    }
}
