package org.proviso.core.rules;

import static org.proviso.core.rules.RuleType.DEADLINE;
import static org.proviso.core.rules.RuleType.FLAG;
import static org.proviso.core.rules.RuleType.NUMBER;
import static org.proviso.core.rules.RuleType.TIME;
import static org.proviso.core.rules.RuleType.WORD;
import static org.proviso.core.rules.RuleType.WORDS;

import java.util.Arrays;
import java.util.List;
import org.proviso.core.Code;
import org.proviso.core.Envelope;
import org.proviso.core.calendar.Holiday;

/** The rules that the code base asks for by name. */
public final class Rules {

    public static final Rule REGISTRATION_NEEDED =
            rule("registration.needed", FLAG, "whether a voter must be registered");
    public static final Rule REGISTER_IN_PERSON = rule(
            "registration.in_person",
            DEADLINE,
            "the last day to register in person, at an agency or through a registration drive");
    public static final Rule REGISTER_ONLINE = rule("registration.online", DEADLINE, "the last day to register online");
    public static final Rule REGISTER_MAIL_POSTMARK =
            rule("registration.mail_postmark", DEADLINE, "the latest postmark on a mailed application");
    public static final Rule REGISTER_MAIL_RECEIVED =
            rule("registration.mail_received", DEADLINE, "the last day for a mailed application to arrive");
    public static final Rule REGISTRATION_BOUND_DAYS = rule(
            "registration.bound_days",
            NUMBER,
            "the longest period a state may close registration before a federal election");
    public static final Rule SAME_DAY = rule(
            "registration.same_day",
            WORD,
            "whether a person may register and vote on the same day",
            "not_offered",
            "counts_when_accepted",
            "counts_for_president");
    public static final Rule MOVES = rule(
            "moves.within_county",
            WORD,
            "which address decides the ballot for a voter who moved within the county",
            "registered_address",
            "new_address",
            "either",
            "by_move_date");
    public static final Rule PRIMARY = rule(
            "primary.open_to",
            WORD,
            "which party's ballot a voter may vote in a primary",
            "own_party",
            "own_party_or_unaffiliated",
            "every_voter",
            "parties_decide");
    public static final Rule REQUIRED_FIELDS = rule(
            "affirmation.required_fields",
            WORDS,
            "the affirmation fields the law requires",
            codes(Envelope.Field.values()));
    public static final Rule OMISSIONS_MATTER = rule(
            "affirmation.omissions_matter",
            WORD,
            "when a missing required field keeps a ballot from counting",
            "never",
            "when_voter_unknown",
            "always");
    public static final Rule ID_REQUIRED_OF = rule(
            "identification.required_of",
            WORD,
            "who must show identification",
            "nobody",
            "first_time_mail",
            "everyone");
    public static final Rule DECLARATION_EXCUSES = rule(
            "identification.declaration_excuses",
            FLAG,
            "whether a sworn declaration takes the place of identification");
    public static final Rule MAIL_RECEIPT =
            rule("mail.receipt", DEADLINE, "the deadline for a voted mail ballot to arrive and count");
    public static final Rule MAIL_RETURNED = rule(
            "mail.returned",
            WORD,
            "what happens when a mail ballot was returned and is not decided yet",
            "wait_for_its_decision",
            "stands_in_the_way",
            "gives_way");
    public static final Rule COUNTED_LIST_TO_MAIL_DESK = rule(
            "mail.counted_list_to_desk",
            FLAG,
            "whether the office tells the mail-ballot desk whose ballots it counted, so that a late mail ballot is refused");
    public static final Rule SIGNATURE_COMPARED =
            rule("signature.compared", FLAG, "whether the signature is compared with those on file");
    public static final Rule SIGNATURE_NO_EXEMPLAR = rule(
            "signature.no_exemplar", WORD, "what happens when no signature is on file", "accepted", "person_decides");
    public static final Rule SIGNATURE_ACCEPTED_BY =
            rule("signature.accepted_by", NUMBER, "how many reviewers are needed to accept a signature");
    public static final Rule SIGNATURE_REJECTED_BY = rule(
            "signature.rejected_by",
            WORD,
            "who must find a signature different",
            "two_reviewers",
            "two_reviewers_of_different_parties",
            "board_majority",
            "board_unanimous");
    public static final Rule SIGNATURE_BLIND =
            rule("signature.first_look_blind", FLAG, "whether the voter's name is hidden during the first comparison");
    public static final Rule EXTENDED_HELD_APART = rule(
            "extended_hours.held_apart",
            FLAG,
            "whether ballots cast in court-extended hours are kept apart permanently");
    public static final Rule EXTENDED_PENDING = rule(
            "extended_hours.order_pending",
            WORD,
            "what happens to ballots cast in extended hours while the order is still in dispute",
            "wait",
            "count_apart");
    public static final Rule DECISION = rule("decision.by", DEADLINE, "the deadline for deciding every envelope");
    public static final Rule CERTIFICATION =
            rule("certification.by", DEADLINE, "the deadline for the county to certify");
    public static final Rule DECIDER = rule("decider.kind", WORD, "who decides", "official", "board", "two_bodies");
    public static final Rule VOTE_TO_REJECT = rule(
            "decider.vote_to_reject",
            WORD,
            "the vote needed to reject",
            "one",
            "majority",
            "majority_of_members",
            "majority_of_votes_cast",
            "unanimous");
    public static final Rule TIE_MEANS =
            rule("decider.tie_means", WORD, "what a tied vote means", "count", "reject", "stays_open", "none");
    public static final Rule FAILED_MOTION_MEANS =
            rule("decider.failed_motion_means", WORD, "what a failed motion means", "count", "reject", "stays_open");
    public static final Rule BURDEN = rule(
            "decider.burden_of_proof",
            WORD,
            "who must be convinced",
            "counts_unless_shown_otherwise",
            "voter_must_show",
            "preponderance",
            "clear_and_convincing",
            "beyond_reasonable_doubt");
    public static final Rule GATE_REVIEW =
            rule("gate.review", DEADLINE, "the earliest time an envelope may be reviewed");
    public static final Rule GATE_DECISION =
            rule("gate.decision", DEADLINE, "the earliest time an envelope may be decided");
    public static final Rule GATE_OPEN = rule("gate.open", DEADLINE, "the earliest time an envelope may be opened");
    public static final Rule OPEN_AFTER_ALL_OTHERS = rule(
            "gate.open_after_all_others",
            FLAG,
            "whether envelopes stay sealed until mail and in-person counting is complete");
    public static final Rule HOLIDAYS =
            rule("office.holidays", WORDS, "the holidays on which the office is closed", codes(Holiday.values()));
    public static final Rule OFFICE_CLOSES = rule("office.closes", TIME, "the time that counts as close of business");
    public static final Rule REASON_ORDER =
            rule("reasons.order", WORDS, "which reason is listed first when there are several", codes(Reason.values()));

    private Rules() {}

    static List<Rule> fixed() {
        return List.of(
                REGISTRATION_NEEDED,
                REGISTER_IN_PERSON,
                REGISTER_ONLINE,
                REGISTER_MAIL_POSTMARK,
                REGISTER_MAIL_RECEIVED,
                REGISTRATION_BOUND_DAYS,
                SAME_DAY,
                MOVES,
                PRIMARY,
                REQUIRED_FIELDS,
                OMISSIONS_MATTER,
                ID_REQUIRED_OF,
                DECLARATION_EXCUSES,
                MAIL_RECEIPT,
                MAIL_RETURNED,
                COUNTED_LIST_TO_MAIL_DESK,
                SIGNATURE_COMPARED,
                SIGNATURE_NO_EXEMPLAR,
                SIGNATURE_ACCEPTED_BY,
                SIGNATURE_REJECTED_BY,
                SIGNATURE_BLIND,
                EXTENDED_HELD_APART,
                EXTENDED_PENDING,
                DECISION,
                CERTIFICATION,
                DECIDER,
                VOTE_TO_REJECT,
                TIE_MEANS,
                FAILED_MOTION_MEANS,
                BURDEN,
                GATE_REVIEW,
                GATE_DECISION,
                GATE_OPEN,
                OPEN_AFTER_ALL_OTHERS,
                HOLIDAYS,
                OFFICE_CLOSES,
                REASON_ORDER);
    }

    private static Rule rule(String key, RuleType type, String meaning, String... words) {
        return new Rule(key, type, List.of(words), meaning);
    }

    private static String[] codes(Code... values) {
        return Arrays.stream(values).map(Code::code).toArray(String[]::new);
    }
}
