package org.proviso.core.deciding;

import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.rules.Reference;
import org.proviso.core.rules.ResolvedRule;

/**
 * Why an act is not legal now: a coded ground, the sentence a person reads, and where the rule is written (null where
 * it is the program's own rule and no pack's).
 */
public record Refusal(Why why, String words, @Nullable Reference reference) {

    /** The coded ground. */
    public enum Why implements Code {
        MOTION_ALREADY_DECIDED,
        NOTHING_PUT,
        MOTION_PENDING,
        NOT_ON_THE_AGENDA,
        ON_ANOTHER_AGENDA,
        NOT_ONE_GROUP,
        GATE_NOT_OPEN,
        RULE_NOT_SETTLED,
        WRONG_NUMBER_OF_BODIES,
        NO_SUCH_BODY,
        NO_MEMBER,
        MORE_PRESENT_THAN_MEMBERS,
        NOT_PRESENT,
        ALREADY_PRESENT,
        SITS_ON_THE_OTHER_BODY,
        RECUSED_MEMBER_MOVED,
        RECUSED_MEMBER_VOTED,
        NO_QUORUM,
        VOTE_MISSING,
        NOBODY_VOTED,
        QUESTION_STILL_OPEN,
        NO_REASON,
        NO_REFERENCE,
        DEPARTURE_WITHOUT_REASON,
        NOT_PROPOSED,
        NOT_READ_TWICE,
        OWN_ACT,
        NOT_IN_THIS_STATE,
        NOT_WITH_YOU,
        ELECTION_CLOSED,
        LINK_NOT_SETTLED,
        SEARCH_NOT_COMPLETE,
        NOT_ANSWERED_THIS_WAY,
        NOT_AS_RECOMMENDED,
        ANOTHER_ENVELOPE,
        NO_CONTESTS,
        HELD_BY_COURT,
        NO_SUCH_ORDER,
        SECRECY
    }

    public static Refusal of(Why why, String words) {
        return new Refusal(why, words, null);
    }

    static Refusal under(ResolvedRule rule, Why why, String words) {
        return new Refusal(why, words, rule.reference());
    }
}
