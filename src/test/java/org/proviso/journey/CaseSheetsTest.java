package org.proviso.journey;

import static com.github.mvysny.kaributesting.v10.LocatorJ._get;
import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.as;
import static org.proviso.journey.PageDriver.fill;
import static org.proviso.journey.PageDriver.marked;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.said;

import com.github.mvysny.kaributesting.v10.GridKt;
import com.vaadin.flow.component.ClickEvent;
import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.ComponentUtil;
import com.vaadin.flow.component.grid.Grid;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.adjudication.facts.ChallengeFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseState;
import org.proviso.review.acts.AnswerService;
import org.proviso.review.acts.RecordAnswer;
import org.proviso.review.acts.ResearchService;
import org.proviso.review.acts.ResearchService.WaitingRequest;
import org.proviso.review.facts.ResearchRequest;
import org.proviso.review.facts.SignatureComparison;
import org.proviso.review.facts.WaitsFor;
import org.proviso.review.queue.QueueColumn;
import org.proviso.review.queue.QueueFilter;
import org.proviso.review.queue.QueueRow;
import org.proviso.review.queue.QueueService;
import org.proviso.ui.field.ChangedMeanwhile;
import org.springframework.beans.factory.annotation.Autowired;

/**
 * What a reviewer does with a case as a whole: ResearchSheet, ResearchAnswerSheet, DifferentOutcomeSheet,
 * ProposeEndSheet, NoteSheet.
 */
@OnPages
class CaseSheetsTest {

    private static final String REFERENCE = "Legal reference (required to reject, or to count against the rules)";

    @Autowired
    private PageDriver pages;

    private void onTheCase(EnvelopeKey key, Runnable act) {
        pages.on("review/case/" + key.envelopeNo(), "ada", act);
    }

    @Test
    void research_is_requested_with_what_to_find_out_and_the_case_waits_for_it() {
        EnvelopeKey key = PagesOffice.taken("P-1044");
        String asked = "What to find out";
        onTheCase(key, () -> {
            press("Request research");
            press("Request research");
            assertThat(marked("Whom you ask")).isEqualTo("Required. Enter whom you ask.");
            fill("Whom you ask", "Depot Street Library");
            fill(asked, " ");
            press("Request research");
            assertThat(marked(asked)).isEqualTo("Required. Enter what to find out.");
            assertThat(PagesOffice.state(key)).isEqualTo(CaseState.IN_REVIEW);
            fill(asked, "Ask the clerk of the library which license she saw.");
            press("Request research");
            assertThat(PagesOffice.state(key)).isEqualTo(CaseState.OPEN);
        });
        assertThat(PagesOffice.file(key).work().requests())
                .extracting(ResearchRequest::asked)
                .containsExactly("Ask the clerk of the library which license she saw.");
        pages.on("", "ben", () -> assertThat(said()).contains("Research without a result"));
        pages.on("review/research", "ben", () -> {
            Grid<WaitingRequest> rows = _get(Grid.class);
            WaitingRequest request = GridKt._get(rows, 0);
            assertThat(request.addressee()).isEqualTo("Depot Street Library");
            assertThat(request.askedBy()).isEqualTo("ada");
            pressIn(GridKt._getCellComponent(rows, 0, "act"));
            press("Record result");
            assertThat(said()).contains("Write between 1 and 4,000 characters.");
            fill("Result", "A driver's license.");
            press("Record result");
        });
        assertThat(results(key)).containsExactly("A driver's license.");
    }

    private static void pressIn(Component button) {
        ComponentUtil.fireEvent(button, new ClickEvent<>(button));
    }

    /** ReleaseCaseSheet: the reviewer is away. */
    @Test
    void a_supervisor_releases_a_case_of_somebody_absent_and_the_case_says_why() {
        EnvelopeKey key = PagesOffice.taken("P-1008");
        pages.on("review/case/P-1008", "ben", () -> assertThat(said()).doesNotContain("Release case"));
        pages.on("review/case/P-1008", "carl", () -> {
            press("Release case");
            press("Release case");
            assertThat(marked("Reason to release the case")).isEqualTo("Required. Enter the reason.");
            fill("Reason to release the case", "She is ill this week.");
            press("Release case");
        });
        assertThat(PagesOffice.state(key)).isEqualTo(CaseState.OPEN);
        pages.on(
                "review/case/P-1008",
                "ben",
                () -> assertThat(said()).contains("Released for another reviewer", "by carl", "She is ill this week."));
    }

    @Test
    void the_result_of_research_is_recorded_in_words() {
        EnvelopeKey key = PagesOffice.taken("P-1010");
        PagesOffice.done(
                "ben",
                () -> PagesOffice.the(ResearchService.class)
                        .ask(key, WaitsFor.ANOTHER_OFFICE, "The library", "Which clerk?"));
        onTheCase(key, () -> {
            press("Record research result");
            press("Record result");
            assertThat(marked("Result")).isEqualTo("Required. Enter the result.");
            assertThat(results(key)).containsOnlyNulls();
            fill("Result", "The one of the library.");
            press("Record result");
            assertThat(said()).contains("Which clerk? Result: The one of the library.");
        });
        assertThat(results(key)).containsExactly("The one of the library.");
    }

    private static List<String> results(EnvelopeKey key) {
        return PagesOffice.file(key).work().requests().stream()
                .map(ResearchRequest::found)
                .toList();
    }

    @Test
    void a_different_outcome_is_proposed_with_its_reasons_and_why() {
        EnvelopeKey key = PagesOffice.linked("P-1045");
        onTheCase(key, () -> {
            press("Propose a different outcome");
            press("Submit proposal");
            assertThat(marked("Proposed outcome")).isEqualTo("Choose a proposed outcome.");
            fill("Proposed outcome", DecisionOutcome.REJECT);
            press("Submit proposal");
            assertThat(said()).contains("A rejection needs a reason.");
            assertThat(PagesOffice.state(key)).isEqualTo(CaseState.IN_REVIEW);
            fill("Reasons (required to reject)", Set.of(Reason.REGISTERED_LATE));
            fill(REFERENCE, "Example Election Code (invented) 5.5 (2020)");
            fill("Why you propose a different outcome", "The stamp on the application is a day later.");
            press("Submit proposal");
        });
        assertThat(PagesOffice.state(key)).isEqualTo(CaseState.PROPOSED);
        assertThat(PagesOffice.file(key).work().proposed().orElseThrow().proposal())
                .satisfies(proposal -> assertThat(proposal.as()).isEqualTo(DecisionOutcome.REJECT))
                .satisfies(proposal -> assertThat(proposal.grounds().reasons()).containsExactly(Reason.REGISTERED_LATE))
                .satisfies(proposal -> assertThat(proposal.grounds().departsBecause())
                        .isEqualTo("The stamp on the application is a day later."));
    }

    @Test
    void to_count_against_the_rules_the_sheet_says_so_and_a_second_review_follows() {
        EnvelopeKey key = PagesOffice.linked("P-1058");
        PagesOffice.done(
                "ada",
                () -> PagesOffice.the(AnswerService.class)
                        .recordSignatureComparison(new SignatureComparison(
                                key, PagesOffice.version(key), SignatureComparison.Finding.AGREES, "")));
        String against = "This goes against the rules' answer, which is: reject. It needs a legal reference and a"
                + " reason, and a different reviewer does the second review.";
        onTheCase(key, () -> {
            press("Propose a different outcome");
            assertThat(said()).doesNotContain(against);
            fill("Proposed outcome", DecisionOutcome.COUNT);
            assertThat(said()).contains(against);
            press("Submit proposal");
            assertThat(said()).contains("To count it needs a legal reference.");
            assertThat(PagesOffice.state(key)).isEqualTo(CaseState.IN_REVIEW);
            fill(REFERENCE, "Example Election Code (invented) 5.6 (2020)");
            fill("Why you propose a different outcome", "The clerk of the day erred.");
            press("Submit proposal");
        });
        assertThat(PagesOffice.state(key)).isEqualTo(CaseState.PROPOSED);
        pages.on(
                "review/second/" + key.envelopeNo(),
                "ben",
                () -> assertThat(said())
                        .contains(
                                "This goes against the rules' answer, which is: reject. Legal reference given: Example"
                                        + " Election Code (invented) 5.6 (2020)."));
    }

    @Test
    void a_case_without_a_vote_to_decide_ends_as_it_was_seen() {
        EnvelopeKey key = PagesOffice.taken("P-1043");
        onTheCase(key, () -> {
            press("Propose to close without a decision");
            answeredMeanwhile(key);
            press("Submit proposal");
            assertThat(said()).contains(ChangedMeanwhile.WORDS);
            assertThat(PagesOffice.state(key)).isEqualTo(CaseState.IN_REVIEW);
            press("Load the new version");
            press("Propose to close without a decision");
            assertThat(said()).contains("Reason: the voter withdrew the envelope.");
            press("Submit proposal");
        });
        assertThat(PagesOffice.state(key)).isEqualTo(CaseState.PROPOSED);
        onTheCase(key, () -> assertThat(said()).contains("proposed: close without a decision."));
        pages.on("review/second/" + key.envelopeNo(), "ben", () -> {
            press("Confirm: close");
            press("Confirm");
        });
        assertThat(PagesOffice.state(key)).isEqualTo(CaseState.ENDED);
    }

    private static void answeredMeanwhile(EnvelopeKey key) {
        PagesOffice.done(
                "ada",
                () -> PagesOffice.the(AnswerService.class)
                        .answer(new RecordAnswer(
                                key,
                                PagesOffice.version(key),
                                Fact.CHALLENGE,
                                Set.of(ChallengeFact.OVERRULED),
                                "Nobody came.",
                                null)));
    }

    @Test
    void a_note_stands_at_the_head_for_everybody_and_its_correction_beside_what_it_said() {
        pages.on("review/case/P-1052", "ada", () -> {
            press("Write note");
            press("Save note");
            assertThat(said()).contains("Write between 1 and 4,000 characters.");
            fill("Note", "Her mother has the same name.");
            press("Save note");
            assertThat(said()).contains("Note saved.", "Her mother has the same name.");
        });
        pages.on("review/case/P-1052", "ben", () -> {
            assertThat(said()).contains("ada: \u201CHer mother has the same name.\u201D");
            assertThat(said()).doesNotContain("Correct note");
        });
        pages.on("review/case/P-1052", "ada", () -> {
            press("Correct note");
            fill("Note", "Her sister has the same name.");
            press("Save correction");
            assertThat(said()).contains("Her sister has the same name.", "corrected", "Her mother has the same name.");
        });
    }

    @Test
    void a_case_is_printed_with_county_election_time_and_history() {
        PagesOffice.taken("P-1053");
        pages.on(
                "review/print/P-1053",
                "ben",
                () -> assertThat(said())
                        .contains(
                                "Tamarack County \u00B7 Primary, August 4, 2026",
                                "Envelope P-1053, printed August 6, 2026, 12:00 pm, by ben.",
                                "What the law asks",
                                "taken, ada")
                        .doesNotContain("Take this case", "Return case to queue", "Write note", "Compare"));
        pages.on("review/case/P-1053", "ben", () -> assertThat(said()).contains("Print case"));
    }

    @Test
    void the_contests_of_a_count_in_part_are_lists_above_the_questions() {
        QueueFilter inPart = QueueFilter.all(PagesOffice.ELECTION).with(QueueColumn.OUTLOOK, "count_in_part");
        List<QueueRow> rows =
                as("ben", () -> PagesOffice.the(QueueService.class).page(inPart, 0, 1));
        assertThat(rows).hasSize(1);
        pages.on(
                "review/case/" + rows.get(0).envelopeNo(),
                "ben",
                () -> assertThat(said()).containsPattern("Contests to count \\(\\d+\\).*What the law asks"));
    }
}
