package org.proviso.core.adjudication;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proviso.core.CheckIn;
import org.proviso.core.Envelope;
import org.proviso.core.MailBallot;
import org.proviso.core.VoterId;
import org.proviso.core.YesNo;
import org.proviso.core.adjudication.explain.LawDetail;
import org.proviso.core.adjudication.explain.LawLine;
import org.proviso.core.adjudication.explain.LawLine.Status;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.SignatureComparisonFact;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.Evidence;
import org.proviso.core.adjudication.finding.EvidenceSource;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.finding.RecordedFact;
import org.proviso.core.adjudication.questions.QuestionHeading;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Rule;

/** Each of the eight headings: how it stands, in a few words, and what a reviewer must see of it. */
class LawLineTest {

    private final SmallCase small = new SmallCase();

    @Test
    void a_case_in_order_stands_on_eight_lines_that_need_nobody() {
        compared(SignatureComparisonFact.AGREES);
        assertThat(lines())
                .extracting(LawLine::summary)
                .containsExactly(
                        "yes", "linked by a reviewer", "yes", "not voted", "yes", "shown", "agrees", "nothing known");
        assertThat(lines()).allSatisfy(line -> {
            assertThat(line.standing()).isEqualTo(Status.CLEAR);
            assertThat(line.unfolded()).isEmpty();
        });
    }

    @Test
    void the_only_thing_to_say_under_a_heading_is_said() {
        small.records.mailBallots.add(mail(MailBallot.State.VOID));
        assertThat(line(QuestionHeading.ALREADY_VOTED).summary()).isEqualTo("not voted");
        small.envelope.signed = Envelope.VoterSignature.NO;
        assertThat(line(QuestionHeading.SIGNATURE).summary()).isEqualTo("not asked");
        assertThat(line(QuestionHeading.SIGNATURE).standing()).isEqualTo(Status.CLEAR);
    }

    @Test
    void already_voted_says_what_is_known_and_no_answer_means_two_things() {
        small.records.mailBallots.add(mail(MailBallot.State.ACCEPTED));
        LawLine line = line(QuestionHeading.ALREADY_VOTED);
        assertThat(line.standing()).isEqualTo(Status.DEFECT);
        assertThat(line.summary()).isEqualTo("voted: the voter's mail ballot was accepted");
    }

    @Test
    void an_open_question_is_unfolded_with_what_the_records_suggest_and_the_rule() {
        small.records.mailBallots.add(mail(MailBallot.State.OUTSTANDING));
        LawLine line = line(QuestionHeading.ALREADY_VOTED);
        assertThat(line.standing()).isEqualTo(Status.OPEN);
        assertThat(line.summary()).isEqualTo("open");
        LawDetail detail = line.unfolded().get(0);
        assertThat(line.unfolded()).hasSize(1);
        assertThat(detail.words())
                .isEqualTo("Did the voter return a mail ballot? Open: a mail ballot is out and may still arrive.");
        assertThat(detail.suggests()).isEqualTo("The records suggest: no; not returned by the deadline.");
        assertThat(detail.references())
                .singleElement()
                .asString()
                .startsWith("Example Election Code (invented) 3.4 (2020): the deadline for a voted mail ballot");
    }

    @Test
    void an_open_question_of_which_the_records_suggest_nothing_says_so_by_silence() {
        small.records.checkIns.add(new CheckIn(
                new VoterId("V1"),
                "Town Hall",
                LocalDateTime.of(2026, 11, 3, 8, 0),
                CheckIn.Kind.REGULAR,
                YesNo.YES,
                null));
        assertThat(line(QuestionHeading.ALREADY_VOTED).unfolded())
                .singleElement()
                .returns("", LawDetail::suggests);
    }

    @Test
    void a_defect_is_unfolded_with_its_evidence_and_goes_before_what_is_open() {
        small.envelope.signed = Envelope.VoterSignature.NO;
        LawLine defect = line(QuestionHeading.ENVELOPE);
        assertThat(defect.standing()).isEqualTo(Status.DEFECT);
        assertThat(defect.summary()).isEqualTo("defect");
        assertThat(defect.unfolded())
                .singleElement()
                .returns(
                        "Did the voter sign the affirmation? Defect: the voter did not sign the affirmation.",
                        LawDetail::words)
                .returns(List.of("The signature line is blank."), LawDetail::evidence);
        small.envelope.officialSigned = YesNo.UNKNOWN;
        LawLine both = line(QuestionHeading.ENVELOPE);
        assertThat(both.standing()).isEqualTo(Status.DEFECT);
        assertThat(both.summary()).isEqualTo("defect, and some questions are open");
        assertThat(both.unfolded()).hasSize(2);
    }

    @Test
    void the_heading_is_not_asked_again_by_its_own_question() {
        small.link = new Link(VoterIdentityFact.PRESUMED, VoterId.orNull("V1"), 0.98, List.of());
        assertThat(line(QuestionHeading.VOTER).unfolded())
                .singleElement()
                .returns("Open: the link has not been confirmed yet.", LawDetail::words);
    }

    @Test
    void what_turns_on_the_voter_waits_until_a_voter_is_known() {
        small.link = new Link(VoterIdentityFact.SEVERAL_FIT, null, 0.6, List.of());
        assertThat(lines())
                .extracting(LawLine::standing)
                .containsExactly(
                        Status.CLEAR,
                        Status.OPEN,
                        Status.WAITS_FOR_VOTER,
                        Status.WAITS_FOR_VOTER,
                        Status.WAITS_FOR_VOTER,
                        Status.CLEAR,
                        Status.WAITS_FOR_VOTER,
                        Status.WAITS_FOR_VOTER);
        assertThat(line(QuestionHeading.ALREADY_VOTED).summary()).isEqualTo("waiting for a confirmed voter");
        assertThat(line(QuestionHeading.ALREADY_VOTED).unfolded()).isEmpty();
    }

    /** The records part of the page has the mail ballots, the poll books and the state's list already. */
    @Test
    void the_evidence_of_a_heading_leaves_out_what_the_records_part_shows() {
        small.records.mailBallots.add(mail(MailBallot.State.VOID));
        compared(SignatureComparisonFact.AGREES);
        assertThat(line(QuestionHeading.ALREADY_VOTED).evidence()).isEmpty();
        assertThat(line(QuestionHeading.SIGNATURE).evidence())
                .containsExactly("The voter signed the affirmation.", "Compared.");
    }

    @Test
    void a_rule_that_nobody_read_is_called_remembered() {
        small.envelope.idShown = YesNo.NO;
        String deadline = "5:00 pm; if closed, the next open day";
        assertThat(line(QuestionHeading.IDENTIFICATION).references())
                .anyMatch(rule -> rule.endsWith(deadline + "."))
                .noneMatch(rule -> rule.contains("from memory"));
        small.pack.fromMemory(Rule.cure(Ask.IDENTIFICATION));
        assertThat(line(QuestionHeading.IDENTIFICATION).references())
                .filteredOn(rule -> rule.contains("from memory"))
                .singleElement()
                .asString()
                .endsWith(deadline + " (from memory).");
    }

    private void compared(SignatureComparisonFact word) {
        small.records.recorded.add(new RecordedFact(
                Fact.SIGNATURE_COMPARISON, Set.of(word), Evidence.of(EvidenceSource.PERSON, "Compared.")));
    }

    private static MailBallot mail(MailBallot.State state) {
        return new MailBallot(new VoterId("V1"), "S1", LocalDate.of(2026, 10, 9), state, LocalDate.of(2026, 10, 30));
    }

    private LawLine line(QuestionHeading heading) {
        return lines().get(heading.ordinal());
    }

    private List<LawLine> lines() {
        return LawLine.all(small.report(LocalDateTime.of(2026, 11, 4, 12, 0)));
    }
}
