package org.proviso.core.deciding;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.MailBallot;
import org.proviso.core.adjudication.facts.MailBallotFact;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.Rules;

/**
 * Whether the mail-ballot desk refuses a voter's mail ballot because the provisional ballot counts. The desk has to be told,
 * and says whether it could: until then the envelope stays closed, because both might count (common practice).
 */
public final class MailBallotGivesWay {

    /** A mail ballot of which the desk has not said yet whether it counts. */
    private static final Set<MailBallotFact> UNDECIDED =
            EnumSet.of(MailBallotFact.OUTSTANDING, MailBallotFact.RETURNED, MailBallotFact.CURE_PENDING);

    private MailBallotGivesWay() {}

    /** Whether the rules ask this of the mail desk for any voter. */
    public static boolean isEverAsked(ResolvedPack pack) {
        return pack.isYes(Rules.COUNTED_LIST_TO_MAIL_DESK) || givesWay(pack);
    }

    /** Whether they ask it for a voter with mail ballots like these (null: not known). */
    public static boolean isAsked(ResolvedPack pack, @Nullable Set<MailBallotFact> ballots) {
        if (ballots == null) {
            return false;
        }
        boolean listed = pack.isYes(Rules.COUNTED_LIST_TO_MAIL_DESK) && !Collections.disjoint(ballots, UNDECIDED);
        return listed || (givesWay(pack) && ballots.contains(MailBallotFact.RETURNED));
    }

    /** Whether a mail ballot in this state may still be counted, or refused. */
    public static boolean isUndecided(MailBallot.State state) {
        return UNDECIDED.contains(MailBallotFact.valueOf(state.name()));
    }

    private static boolean givesWay(ResolvedPack pack) {
        return pack.of(Rules.MAIL_RETURNED).isFirm()
                && pack.word(Rules.MAIL_RETURNED).equals("gives_way");
    }
}
