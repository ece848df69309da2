package org.proviso.core.deciding;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.proviso.core.Code;
import org.proviso.core.UserName;
import org.proviso.core.act.Refusal;
import org.proviso.core.adjudication.ClearCase;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.judging.ElectionClocks;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.adjudication.questions.QuestionContext;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.Reason;

/** What stands in the way of a decision on one case. */
class DecisionChecksTest {

    private static final ChangedPack EXAMPLE = ChangedPack.of("example");
    private static final Grounds FULL = new Grounds(List.of(Reason.NOT_REGISTERED), "section 4.1", "counsel's advice");
    private static final DecisionParticipants THREE_HANDS = new DecisionParticipants(
            UserName.orNull("rita"), UserName.orNull("sam"), Set.of(new UserName("ana"), new UserName("ben")));

    @ParameterizedTest
    @CsvSource({
        "count, identity, question_still_open",
        "count_in_part, identity, question_still_open",
        "count, check_in, question_still_open",
        "count, mail_ballots, question_still_open",
        "count_in_part, other_county, question_still_open",
        "count, identification, ''",
        "count, registration, ''",
        "reject, identity, ''",
        "reject, check_in, ''"
    })
    void counts_nothing_while_the_voter_or_an_earlier_vote_is_open(String as, String unknown, String refusals) {
        Assessment open = assessed(unknown + "=unknown");
        assertThat(codes(DecisionChecks.stillOpen(as(as), open.answered()).stream()
                        .toList()))
                .isEqualTo(refusals);
    }

    @Test
    void names_the_question_that_is_open() {
        assertThat(DecisionChecks.stillOpen(
                        DecisionOutcome.COUNT, assessed("check_in=unknown").answered()))
                .hasValueSatisfying(refusal -> assertThat(refusal.words())
                        .isEqualTo("A ballot cannot count while this question is open: Already voted?"));
    }

    @Test
    void counts_where_every_answer_is_clear() {
        assertThat(all(
                        "count",
                        "identity=confirmed",
                        new Grounds(List.of(), "", ""),
                        new DecisionParticipants(null, null, Set.of())))
                .isEmpty();
    }

    @Test
    void rejects_with_reason_reference_and_three_pairs_of_hands() {
        assertThat(all("reject", "registration=late", new Grounds(FULL.reasons(), "4.1", ""), THREE_HANDS))
                .isEmpty();
    }

    @Test
    void names_everything_that_stands_in_the_way_at_once() {
        List<Refusal> all = DecisionChecks.all(
                DecisionOutcome.REJECT,
                new CaseToDecide(
                        assessed("identity=confirmed"),
                        new Grounds(List.of(), "", ""),
                        new DecisionParticipants(UserName.orNull("a"), UserName.orNull("a"), Set.of())),
                EXAMPLE.book(),
                LocalDateTime.of(2026, 11, 4, 9, 0));
        assertThat(codes(all)).isEqualTo("gate_not_open no_reason departure_without_reason own_act");
    }

    @ParameterizedTest
    @CsvSource({"'', section 4.1, no_reason", "not_registered, ' ', no_reference", "not_registered, section 4.1, ''"})
    void never_rejects_without_reason_and_reference(String reason, String reference, String refusal) {
        List<Reason> reasons = reason.isEmpty() ? List.of() : List.of(Reason.NOT_REGISTERED);
        Grounds grounds = new Grounds(reasons, reference, "");
        assertThat(codes(DecisionChecks.grounds(DecisionOutcome.REJECT, grounds).stream()
                        .toList()))
                .isEqualTo(refusal);
        assertThat(DecisionChecks.grounds(DecisionOutcome.COUNT, grounds)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "count, COUNT, false",
        "count_in_part, COUNT_IN_PART, false",
        "reject, REJECT, false",
        "count, REJECT, true",
        "reject, COUNT, true",
        "count, COUNT_IN_PART, true",
        "reject, RESEARCH, true",
        "count, WAIT_FOR_THE_VOTER, true",
        "count, SENT_ON, true",
        "reject, ADMINISTRATIVE_END, true"
    })
    void asks_why_where_a_decision_departs_from_the_recommendation(String as, Recommendation said, boolean departs) {
        Grounds silent = new Grounds(FULL.reasons(), "section 4.1", " ");
        assertThat(DecisionChecks.departure(as(as), said, silent).isPresent()).isEqualTo(departs);
        assertThat(DecisionChecks.departure(as(as), said, FULL)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "rita, sam, ana, ''",
        ", sam, ana, not_proposed",
        "rita, , ana, not_read_twice",
        "rita, rita, ana, own_act",
        "ana, sam, ana, own_act",
        "rita, ben, ben, own_act"
    })
    void passes_a_rejection_through_three_pairs_of_hands(
            String proposer, String reader, UserName decider, String refusal) {
        DecisionParticipants acts =
                new DecisionParticipants(UserName.orNull(proposer), UserName.orNull(reader), Set.of(decider));
        assertThat(codes(DecisionChecks.ownActs(DecisionOutcome.REJECT, acts).stream()
                        .toList()))
                .isEqualTo(refusal);
        assertThat(DecisionChecks.ownActs(DecisionOutcome.COUNT_IN_PART, acts)).isEmpty();
    }

    /** What the rules reject or count less of, and what a record says was voted already. */
    @ParameterizedTest
    @CsvSource({
        "count, registration=late, no_reference departure_without_reason",
        "count_in_part, registration=late, no_reference departure_without_reason",
        "count, mail_ballots=accepted, no_reference departure_without_reason",
        "count, identity=confirmed, ''",
        "count, identification=unknown, departure_without_reason"
    })
    void counts_against_the_rules_only_on_a_place_in_the_law(String as, String facts, String refusals) {
        DecisionParticipants nobody = new DecisionParticipants(null, null, Set.of());
        assertThat(codes(all(as, facts, new Grounds(List.of(), " ", ""), nobody)))
                .isEqualTo(refusals);
        assertThat(all(as, facts, new Grounds(List.of(), "5.6", "The clerk erred."), nobody))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "count, REJECT, true",
        "count, COUNT_IN_PART, true",
        "count, SENT_ON, true",
        "count_in_part, REJECT, true",
        "count_in_part, COUNT_IN_PART, false",
        "count_in_part, COUNT, false",
        "count, COUNT, false",
        "count, RESEARCH, false",
        "reject, COUNT, false"
    })
    void goes_against_the_rules_where_it_counts_more_than_they_do(String as, Recommendation said, boolean against) {
        assertThat(CountAgainstRules.of(as(as), said, false).isPresent()).isEqualTo(against);
        assertThat(CountAgainstRules.of(as(as), said, true).isPresent())
                .as("known to have voted")
                .isEqualTo(!as.equals("reject"));
    }

    /** The voter's own ballot has no School contest: the rules count the three that both ballots have. */
    @ParameterizedTest
    @CsvSource({
        "count_in_part, PRES HOUSE, ''",
        "count_in_part, PRES HOUSE SHERIFF, ''",
        "count_in_part, PRES SCHOOL, no_reference departure_without_reason",
        "reject, PRES SCHOOL, departure_without_reason"
    })
    void goes_against_the_rules_where_it_counts_a_contest_that_they_do_not(
            String as, String contests, String refusals) {
        Assessment part = assessed(
                new ClearCase().with("ballot=other_style").ballots("PRES HOUSE SHERIFF SCHOOL", "PRES HOUSE SHERIFF"));
        assertThat(part.outcome().contests()).containsExactlyInAnyOrder("PRES", "HOUSE", "SHERIFF");
        String reference = as.equals("reject") ? "section 4.1" : "";
        CaseToDecide toDecide = new CaseToDecide(
                part, Set.of(contests.split(" ")), new Grounds(FULL.reasons(), reference, ""), THREE_HANDS);
        assertThat(codes(DecisionChecks.all(as(as), toDecide, EXAMPLE.book(), SmallBoard.OPEN)))
                .isEqualTo(refusals);
        CaseToDecide argued = new CaseToDecide(part, toDecide.contests(), FULL, THREE_HANDS);
        assertThat(DecisionChecks.all(as(as), argued, EXAMPLE.book(), SmallBoard.OPEN))
                .isEmpty();
    }

    /** Only a defect of the fourth heading says so; a question that is open does not. */
    @ParameterizedTest
    @CsvSource({
        "mail_ballots=accepted, true",
        "check_in=voted, true",
        "mail_ballots=returned, false",
        "check_in=elsewhere_unseen, false",
        "registration=late, false",
        "identity=confirmed, false"
    })
    void knows_whether_a_record_says_that_the_voter_voted(String facts, boolean voted) {
        assertThat(DecisionChecks.isKnownToHaveVoted(assessed(facts).answered()))
                .isEqualTo(voted);
    }

    @Test
    void says_what_it_goes_against() {
        assertThat(new CountAgainstRules(Recommendation.REJECT, true).words())
                .isEqualTo("This goes against the rules' answer, which is: reject. Records show that the voter already"
                        + " voted.");
        assertThat(new CountAgainstRules(Recommendation.COUNT, true).words())
                .isEqualTo("Records show that the voter already voted.");
    }

    @Test
    void names_whose_hands_it_passed_twice() {
        assertThat(DecisionChecks.ownActs(
                        DecisionOutcome.REJECT,
                        new DecisionParticipants(
                                UserName.orNull("rita"),
                                UserName.orNull("ben"),
                                Set.of(new UserName("ana"), new UserName("ben")))))
                .hasValueSatisfying(refusal -> assertThat(refusal.words()).endsWith("ben acted more than once."));
    }

    private static List<Refusal> all(String as, String facts, Grounds grounds, DecisionParticipants acts) {
        CaseToDecide toDecide = new CaseToDecide(assessed(facts), grounds, acts);
        return DecisionChecks.all(as(as), toDecide, EXAMPLE.book(), SmallBoard.OPEN);
    }

    private static String codes(List<Refusal> refusals) {
        return String.join(
                " ", refusals.stream().map(refusal -> refusal.why().code()).toList());
    }

    private static DecisionOutcome as(String code) {
        return Code.find(DecisionOutcome.class, code).orElseThrow();
    }

    private static Assessment assessed(String facts) {
        return assessed(new ClearCase().with(facts));
    }

    private static Assessment assessed(ClearCase facts) {
        QuestionContext setting =
                new QuestionContext(EXAMPLE.resolved(), new ElectionClocks(EXAMPLE.book(), SmallBoard.OPEN, Map.of()));
        return Assessment.assess(facts.facts(), setting);
    }
}
