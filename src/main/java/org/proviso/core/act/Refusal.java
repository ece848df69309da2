package org.proviso.core.act;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.rules.Reference;
import org.proviso.core.rules.ResolvedRule;

/**
 * Why an act cannot be done now: a coded ground, the sentence a person reads, and where the rule is written (null where
 * it is the program's own rule and no pack's). Where one box of a form is wrong, {@code field} is the name of the
 * command's part that came from it; where several envelopes are acted on together, {@code about} is the one in the way.
 * {@code people} are those whom the sentence names: by their user names until the door of acts puts in their own.
 */
public record Refusal(
        Why why,
        String words,
        @Nullable String field,
        @Nullable EnvelopeNumber about,
        @Nullable Reference reference,
        List<String> people) {

    private static final String WHO = "{who}";

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
        SECRECY,
        NUMBER_TAKEN,
        NO_SUCH_ENVELOPE,
        NO_SUCH_STYLE,
        MISTYPED,
        MOMENT_NOT_POSSIBLE,
        KEYED_BY_YOU,
        SCAN_KEPT,
        ROLES_NOT_TOGETHER,
        PASSWORD_NOT_GOOD,
        LAST_ADMINISTRATOR,
        NOT_A_DEMONSTRATION,
        NO_SUCH_RULE_PACK,
        RULES_NOT_READABLE,
        RULES_BREAK_A_PROMISE,
        NOTHING_NEW,
        NO_ELECTION,
        COUNTED_NOT_NOTED,
        OUT_OF_BALANCE,
        CONTRADICTED,
        MAIL_DESK_NOT_ANSWERED
    }

    public static Refusal of(Why why, String words) {
        return new Refusal(why, words, null, null, null, List.of());
    }

    /** Refused with a sentence that names people where it says {@code {who}}. */
    public static Refusal naming(Why why, Collection<UserName> who, String words) {
        List<String> people = who.stream().map(UserName::value).sorted().toList();
        return new Refusal(why, words, null, null, null, people);
    }

    /** The same with people's own names. */
    public Refusal named(UnaryOperator<String> ownName) {
        return new Refusal(
                why,
                words,
                field,
                about,
                reference,
                people.stream().map(ownName).toList());
    }

    /** The sentence a person reads. */
    @Override
    public String words() {
        return people.isEmpty() ? words : words.replace(WHO, String.join(", ", people));
    }

    /** Refused for what stands in one part of the command. */
    public static Refusal at(String field, Why why, String words) {
        return new Refusal(why, words, field, null, null, List.of());
    }

    /** Refused by a rule of the pack. */
    public static Refusal under(ResolvedRule rule, Why why, String words) {
        return under(rule.reference(), why, words);
    }

    /** Refused by a rule that is written there. */
    public static Refusal under(@Nullable Reference reference, Why why, String words) {
        return new Refusal(why, words, null, null, reference, List.of());
    }

    /** The same, of one envelope among several. */
    public Refusal about(EnvelopeNumber envelopeNo) {
        return new Refusal(why, words, field, envelopeNo, reference, people);
    }

    /** A refusal where something is wrong, for a chain of checks. */
    public static Optional<Refusal> when(boolean wrong, Why why, String words) {
        return wrong ? Optional.of(of(why, words)) : Optional.empty();
    }

    /** The sentence, after the number of the envelope it is about. */
    public String spoken() {
        return about == null ? words() : about + ": " + words();
    }
}
