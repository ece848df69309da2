package org.proviso.core.rules;

import static org.proviso.core.rules.RuleType.DEADLINE;
import static org.proviso.core.rules.RuleType.FLAG;
import static org.proviso.core.rules.RuleType.NUMBER;
import static org.proviso.core.rules.RuleType.TEXT;
import static org.proviso.core.rules.RuleType.WORD;
import static org.proviso.core.rules.RuleType.WORDS;

import java.util.List;

/** What a pack tells people without any answer turning on it: shown on the rules page, in letters, in the calendar. */
public final class InformationRules {

    /** Read by a vote, and optional; its place in the vocabulary is older than that, and goes into hashes. */
    public static final Rule VOTE_TO_COUNT = new Rule(
            "decider.vote_to_count",
            WORD,
            List.of("one", "majority", "majority_of_members", "majority_of_votes_cast", "unanimous"),
            "the vote needed to count",
            Rule.Use.OPTIONAL);

    /** Read before a decision, and optional. */
    public static final Rule DECISION_AFTER_ALL_OTHERS = new Rule(
            "gate.decision_after_all_others",
            FLAG,
            List.of(),
            "whether no envelope is decided until mail and in-person counting is complete",
            Rule.Use.OPTIONAL);

    /** Printed in letters and on the voter's page. */
    public static final Rule ID_ACCEPTS = rule(
            "identification.accepts",
            WORDS,
            "what is accepted as identification",
            "photo_id",
            "document_with_name_and_address",
            "number_on_affidavit",
            "personal_acknowledgment");

    public static final Rule ID_DECLARATIONS = rule(
            "identification.declarations",
            WORDS,
            "which sworn declarations take the place of identification",
            "reasonable_impediment",
            "religious_objection",
            "indigence",
            "natural_disaster",
            "identity_affidavit");

    public static final Rule REGISTERS_THE_VOTER = rule(
            "rejected.registers_the_voter",
            FLAG,
            "whether an unregistered voter's envelope serves as a registration application");

    private static final List<Rule> ALL = List.of(
            rule(
                    "provisional.exempt",
                    FLAG,
                    "whether the state is exempt from the federal duty to offer provisional ballots"),
            rule(
                    "provisional.carries",
                    WORD,
                    "which contests a provisional ballot carries",
                    "full_ballot",
                    "federal_contests"),
            rule(
                    "places.model",
                    WORD,
                    "whether voters vote by precinct or at vote centers",
                    "precincts",
                    "vote_centers",
                    "county_chooses",
                    "all_by_mail"),
            rule(
                    "registration.same_day_ballot",
                    WORD,
                    "which ballot a same-day registrant receives",
                    "regular",
                    "provisional",
                    "either"),
            ID_ACCEPTS,
            ID_DECLARATIONS,
            rule(
                    "identification.declaration_confirmed_by",
                    WORD,
                    "what must support such a declaration",
                    "nothing",
                    "numbers",
                    "signature",
                    "proof_afterward"),
            rule(
                    "signature.compared_with",
                    WORD,
                    "which signatures on file are used for comparison",
                    "any_on_file",
                    "newest_on_file",
                    "registration_form"),
            rule("signature.presumed_genuine", FLAG, "whether a signature is presumed to be the voter's"),
            rule(
                    "signature.standard",
                    WORD,
                    "how clearly a signature must differ",
                    "not_stated",
                    "preponderance",
                    "clear_and_convincing",
                    "obvious_differences",
                    "beyond_reasonable_doubt"),
            rule("mail.postmark", DEADLINE, "the latest postmark on a mail ballot"),
            rule(
                    "mail.voter_at_the_polls",
                    WORD,
                    "what a voter who was sent a mail ballot must do to vote in person",
                    "surrender_it",
                    "affirm",
                    "surrender_or_affirm",
                    "provisional_only"),
            rule(
                    "decider.first_body",
                    WORD,
                    "who reviews first when two bodies decide",
                    "official",
                    "registrars",
                    "bipartisan_team",
                    "counting_board",
                    "election_board"),
            rule(
                    "decider.second_body",
                    WORD,
                    "who decides after the first review",
                    "official",
                    "election_board",
                    "canvassing_board",
                    "county_commission",
                    "court"),
            VOTE_TO_COUNT,
            rule("decider.of_different_parties", FLAG, "whether those who decide must be from different parties"),
            DECISION_AFTER_ALL_OTHERS,
            rule("decision.in_open_meeting", FLAG, "whether decisions are made in an open meeting"),
            rule("decision.appeal_by", DEADLINE, "the deadline to appeal a decision"),
            rule("challenge.by", DEADLINE, "the deadline to challenge a provisional ballot"),
            rule(
                    "extended_hours.order_against_by",
                    DEADLINE,
                    "the deadline for a court to order such ballots not counted"),
            rule("certification.state_by", DEADLINE, "the deadline for the state to certify"),
            rule("sending_on.by", DEADLINE, "the deadline for sending on another county voter's envelope"),
            rule(
                    "sending_on.counts",
                    WORD,
                    "which contests count in the voter's home county",
                    "full_ballot",
                    "shared_contests",
                    "statewide_contests"),
            rule("notice.outcome", DEADLINE, "the deadline for telling a voter the outcome"),
            rule(
                    "notice.outcome_to",
                    WORD,
                    "which voters are told the outcome without asking",
                    "nobody",
                    "rejected",
                    "rejected_or_in_part",
                    "everyone"),
            rule(
                    "notice.channels",
                    WORDS,
                    "how notices are sent",
                    "letter",
                    "email",
                    "phone",
                    "text_message",
                    "website"),
            rule("notice.at_polls", FLAG, "whether the voter receives written information when casting the ballot"),
            rule("notice.pending_number_by", DEADLINE, "the deadline for publishing the number of provisional ballots"),
            rule("notice.meeting_hours_before", NUMBER, "how many hours ahead a meeting must be posted"),
            rule(
                    "access.free",
                    FLAG,
                    "whether a voter can find out free of charge whether the ballot counted and why not"),
            rule(
                    "access.ways",
                    WORDS,
                    "how a voter finds out",
                    "website",
                    "toll_free_line",
                    "office_phone",
                    "in_person",
                    "letter"),
            rule("access.from", DEADLINE, "when a voter can first find out"),
            REGISTERS_THE_VOTER,
            rule("records.keep_months", NUMBER, "how many months records are kept after the election"),
            rule("terms.provisional_ballot", TEXT, "what the state calls a provisional ballot"),
            rule("terms.envelope", TEXT, "what the state calls the envelope"),
            rule("terms.affirmation", TEXT, "what the state calls the affirmation"),
            rule("terms.decider", TEXT, "what the state calls who decides"),
            rule("terms.official", TEXT, "what the state calls the county's election official"),
            rule("terms.canvass", TEXT, "what the state calls the canvass"),
            rule("terms.county", TEXT, "what the state calls the county"));

    private InformationRules() {}

    static List<Rule> fixed() {
        return ALL;
    }

    private static Rule rule(String key, RuleType type, String meaning, String... words) {
        return new Rule(key, type, List.of(words), meaning, Rule.Use.TOLD);
    }
}
