package org.proviso.core.adjudication.judging;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.proviso.core.adjudication.ClearCase;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.IdentificationFact;
import org.proviso.core.adjudication.finding.CaseFacts;
import org.proviso.core.adjudication.finding.Evidence;
import org.proviso.core.adjudication.finding.EvidenceSource;
import org.proviso.core.adjudication.finding.Finding;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.adjudication.questions.AskStatus;
import org.proviso.core.adjudication.questions.FixedClocks;
import org.proviso.core.adjudication.questions.QuestionContext;
import org.proviso.core.adjudication.questions.QuestionList;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.ChangedPack;
import org.proviso.core.rules.Consequence;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.Rule;

class AssessmentTest {

    private static final ChangedPack EXAMPLE = ChangedPack.of("example");
    private static final LocalDateTime NOON = LocalDateTime.of(2026, 11, 4, 12, 0);

    @Test
    void gives_the_same_assessment_again_for_the_same_facts_rules_and_moment() {
        CaseFacts facts = facts("identification=missing ballot=other_style check_in=elsewhere_unseen");
        CaseFacts again = facts("identification=missing ballot=other_style check_in=elsewhere_unseen");

        assertThat(Assessment.assess(again, at(NOON))).isEqualTo(Assessment.assess(facts, at(NOON)));
        assertThat(Assessment.outlook(again, at(NOON))).isEqualTo(Assessment.outlook(facts, at(NOON)));
        assertThat(Assessment.assess(facts, at(NOON.plusDays(30)))).isNotEqualTo(Assessment.assess(facts, at(NOON)));
    }

    @Test
    void answers_every_question_in_the_order_of_the_trade() {
        assertThat(Assessment.assess(facts("envelope=sealed"), at(NOON)).answered())
                .extracting(AnsweredQuestion::question)
                .containsExactlyElementsOf(QuestionList.all());
    }

    @Test
    void asks_the_voter_for_each_thing_once_and_says_until_when() {
        List<DueAsk> asks = Assessment.assess(
                        facts("identification=missing voter_signature=mark_not_witnessed identity=not_on_roll"
                                + " field.last_name=left_blank field.first_name=left_blank"),
                        at(NOON))
                .asks();

        assertThat(asks)
                .extracting(DueAsk::ask, DueAsk::reason, DueAsk::clock)
                .containsExactly(
                        tuple(Ask.SIGNATURE, Reason.MARK_NOT_WITNESSED, AskStatus.RUNNING),
                        tuple(Ask.AFFIRMATION, Reason.AFFIRMATION_INCOMPLETE, AskStatus.RUNNING),
                        tuple(Ask.IDENTIFICATION, Reason.NO_IDENTIFICATION, AskStatus.RUNNING));
        assertThat(asks.get(2).deadline())
                .hasValueSatisfying(until -> assertThat(until.lastMoment()).isEqualTo("2026-11-10T17:00"));
    }

    @Test
    void names_the_first_reason_where_two_ask_for_the_same() {
        ChangedPack pack = ChangedPack.of("example")
                .follows(Reason.NO_IDENTIFICATION, new Consequence(Consequence.Effect.REJECT, null, Ask.SIGNATURE));
        QuestionContext setting = new QuestionContext(pack.resolved(), new FixedClocks(AskStatus.RUNNING, false));
        assertThat(Assessment.assess(facts("voter_signature=missing identification=missing"), setting)
                        .asks())
                .extracting(DueAsk::reason)
                .containsExactly(Reason.AFFIRMATION_NOT_SIGNED);
    }

    @Test
    void names_what_is_open_once_in_the_order_of_the_questions() {
        Assessment assessment = Assessment.assess(
                facts("identity=presumed check_in=elsewhere_unseen mail_ballots=returned challenge=pending"), at(NOON));
        assertThat(assessment.stillOpen())
                .containsExactly(
                        "the link has not been confirmed yet",
                        "a mail ballot was returned and is not decided yet",
                        "a ballot was issued at a check-in elsewhere; a reviewer must check the poll-book signature",
                        "the challenge has not been heard yet");
    }

    @Test
    void says_that_the_contests_are_missing_where_only_a_part_may_count_and_nothing_else_is_open() {
        ClearCase part = new ClearCase().with("ballot=other_style");
        assertThat(Assessment.assess(part.facts(), at(NOON)).stillOpen()).isEmpty();
        assertThat(Assessment.assess(part.contestsUnknown().facts(), at(NOON)).stillOpen())
                .containsExactly("only some contests may count, and the contests on the two ballots are not known yet");
        assertThat(Assessment.assess(part.with("challenge=pending").facts(), at(NOON))
                        .stillOpen())
                .containsExactly("the challenge has not been heard yet");
    }

    @Test
    void expects_what_the_records_suggest_in_the_outlook_and_leaves_the_rest_open() {
        assertThat(outlook("identity=presumed challenge=pending signature_comparison=not_yet"))
                .isEqualTo(Recommendation.COUNT);
        assertThat(outlook("registration=not_in_file identity=none_fits")).isEqualTo(Recommendation.REJECT);
        assertThat(outlook("registration=not_in_file residence=out_of_county")).isEqualTo(Recommendation.SENT_ON);
        assertThat(outlook("check_in=elsewhere_unseen")).isEqualTo(Recommendation.RESEARCH);
    }

    /** An empty field of a voter nobody has searched for: the search, then the ask, then the end. */
    @Test
    void follows_an_expectation_within_an_expectation() {
        ChangedPack memory = ChangedPack.of("example").fromMemory(Rule.consequence(Reason.NOT_REGISTERED));
        QuestionContext setting = new QuestionContext(memory.resolved(), new FixedClocks(AskStatus.RUNNING, false));
        assertThat(Assessment.outlook(facts("registration=not_in_file"), setting)
                        .outcome()
                        .reasons())
                .containsExactly(Reason.NOT_REGISTERED);
    }

    @Test
    void shows_the_evidence_of_every_fact_a_question_reads() {
        Evidence seen = Evidence.of(EvidenceSource.ENVELOPE, "No identification was shown.");
        CaseFacts facts =
                new CaseFacts(Map.of(Fact.IDENTIFICATION, Finding.of(IdentificationFact.MISSING, seen)), null);
        Assessment assessment = Assessment.assess(facts, at(NOON));

        assertThat(assessment.answered().stream()
                        .filter(answeredQuestion -> answeredQuestion.evidence().contains(seen))
                        .map(answeredQuestion -> answeredQuestion.question().key()))
                .containsExactly("identification.met");
    }

    @Test
    void is_open_when_nothing_is_known() {
        Assessment assessment = Assessment.assess(new CaseFacts(Map.of(), null), at(NOON));
        assertThat(assessment.outcome().recommendation()).isEqualTo(Recommendation.RESEARCH);
        assertThat(assessment.answered())
                .noneMatch(answeredQuestion -> answeredQuestion.answer() instanceof Answer.Defect);
        assertThat(assessment.heldApart()).isFalse();
    }

    private static Recommendation outlook(String facts) {
        return Assessment.outlook(facts(facts), at(NOON)).outcome().recommendation();
    }

    private static CaseFacts facts(String facts) {
        return new ClearCase().with(facts).facts();
    }

    private static QuestionContext at(LocalDateTime asOf) {
        return new QuestionContext(EXAMPLE.resolved(), new ElectionClocks(EXAMPLE.book(), asOf, Map.of()));
    }
}
