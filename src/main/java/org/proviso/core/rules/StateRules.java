package org.proviso.core.rules;

import static org.proviso.core.rules.RuleType.DEADLINE;
import static org.proviso.core.rules.RuleType.FLAG;
import static org.proviso.core.rules.RuleType.TIME;
import static org.proviso.core.rules.RuleType.WORD;

import java.util.List;
import java.util.Set;

/**
 * Rules that only some states have. A question reads each where a pack gives it; a pack that says nothing of one has
 * no such rule. A value that is {@code unknown} opens the question for exactly the cases that turn on it.
 */
public final class StateRules {

    public static final Rule PROVISIONAL_ISSUED =
            rule("provisional.issued", WORD, "whether the state issues provisional ballots", "issued", "not_issued");
    public static final Rule REGISTER_AGENCY = rule(
            "registration.agency",
            DEADLINE,
            "the last day to register at an agency or a motor vehicle office, where it differs from in person");
    public static final Rule REGISTER_LATE_IN_PERSON = rule(
            "registration.late_in_person",
            DEADLINE,
            "the last day to register in person at the office or an early voting site after the regular deadline");
    public static final Rule PROOF_INSTEAD = rule(
            "registration.proof_instead",
            FLAG,
            "whether proof of identity and residence, provided in time, can replace a registration not found");
    public static final Rule LATE_EXCUSE_AFTER = rule(
            "ballot.late_excuse_after",
            TIME,
            "the time from which a sworn reason excuses a ballot for another precinct");
    public static final Rule SIGNATURE_FOR_ID = rule(
            "identification.signature_instead",
            FLAG,
            "whether a signature that agrees takes the place of identification");
    public static final Rule SIGNATURE_VARIANT = rule(
            "signature.variant",
            WORD,
            "what happens when a signature differs only in initials, a nickname or handwriting unsteady from age",
            "accepted",
            "person_decides",
            "not_accepted");
    public static final Rule SIGNATURE_MARK = rule(
            "signature.mark", WORD, "what a voter's mark needs", "witness_needed", "no_witness_needed", "not_accepted");
    public static final Rule POWER_OF_ATTORNEY = rule(
            "signature.power_of_attorney",
            WORD,
            "what happens when another person signed the affirmation under a power of attorney",
            "accepted",
            "person_decides",
            "not_accepted");
    public static final Rule MAIL_REJECTED = rule(
            "mail.rejected",
            WORD,
            "what happens when a mail ballot was returned and finally rejected",
            "leaves_the_way_free",
            "stands_in_the_way");
    public static final Rule MAIL_LATE = rule(
            "mail.late",
            WORD,
            "what happens when a mail ballot was returned too late",
            "leaves_the_way_free",
            "stands_in_the_way");
    public static final Rule TWO_ENVELOPES = rule(
            "prevails.two_envelopes",
            WORD,
            "which of one voter's two provisional envelopes prevails",
            "first_cast",
            "last_cast",
            "person_decides");

    public static final Rule QUORUM_COUNTS_RECUSED = rule(
            "decider.quorum_counts_recused",
            FLAG,
            "whether a member who is present and recused counts toward the quorum");

    /**
     * Rules that joined the vocabulary when hashes of packs were kept already: one that no pack mentions has no line in a
     * hash, so that the same pack keeps its hash.
     */
    private static final Set<Rule> JOINED_LATER = Set.of(QUORUM_COUNTS_RECUSED);

    private StateRules() {}

    static boolean joinedLater(Rule rule) {
        return JOINED_LATER.contains(rule);
    }

    static List<Rule> fixed() {
        return List.of(
                PROVISIONAL_ISSUED,
                REGISTER_AGENCY,
                REGISTER_LATE_IN_PERSON,
                PROOF_INSTEAD,
                LATE_EXCUSE_AFTER,
                SIGNATURE_FOR_ID,
                SIGNATURE_VARIANT,
                SIGNATURE_MARK,
                POWER_OF_ATTORNEY,
                MAIL_REJECTED,
                MAIL_LATE,
                TWO_ENVELOPES,
                QUORUM_COUNTS_RECUSED);
    }

    private static Rule rule(String key, RuleType type, String meaning, String... words) {
        return new Rule(key, type, List.of(words), meaning, Rule.Use.OPTIONAL);
    }
}
