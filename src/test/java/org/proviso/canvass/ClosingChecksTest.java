package org.proviso.canvass;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.as;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.proviso.canvass.steps.ClosingLine;
import org.proviso.canvass.steps.ClosingStep;
import org.proviso.core.ElectionId;
import org.proviso.core.act.Refusal;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.journey.Deciding;
import org.proviso.journey.Primary;
import org.proviso.review.CaseService;
import org.proviso.review.CaseState;

/** What is missing until closing: every identity that closing is refused for has its work, counted. */
class ClosingChecksTest {

    private static final ElectionId PRIMARY = new ElectionId(Primary.ID);

    private static ClosingReport report(TestOffice office) {
        return as("carl", () -> office.the(CanvassService.class).missing(PRIMARY));
    }

    private static Map<ClosingStep, ClosingLine> lines(List<ClosingLine> lines) {
        return lines.stream().collect(Collectors.toMap(ClosingLine::step, line -> line));
    }

    @OnADatabase
    void before_the_first_review_it_is_what_lies_there_and_what_only_people_can_tell(TestOffice office) {
        Primary.loaded(office);
        ClosingReport report = report(office);
        Map<ClosingStep, ClosingLine> lines = lines(report.missing());
        assertThat(lines.get(ClosingStep.REVIEW).number())
                .isEqualTo(office.the(CaseService.class)
                        .inState(PRIMARY, CaseState.OPEN)
                        .size());
        assertThat(lines.get(ClosingStep.FIGURE).which())
                .contains("Depot Street Library: how many envelopes it reported missing")
                .contains("The county: how many ballots it tabulated")
                .doesNotHaveDuplicates();
        assertThat(lines.get(ClosingStep.FIGURE).number())
                .isEqualTo(lines.get(ClosingStep.FIGURE).which().size());
        assertThat(lines)
                .as("nothing is decided, so that nothing is to be opened")
                .doesNotContainKeys(ClosingStep.BATCH, ClosingStep.OPEN, ClosingStep.DECIDE);
    }

    @OnADatabase
    void it_is_what_closing_is_refused_for_no_more_and_no_less(TestOffice office) {
        Primary.loaded(office);
        ClosingReport report = report(office);
        List<String> refused =
                as("carl", () -> office.the(CanvassService.class).closeElection(PRIMARY)).refusals().stream()
                        .map(Refusal::words)
                        .toList();
        assertThat(report.open()).extracting(BalanceResult::words).isEqualTo(refused);
        assertThat(report.missing()).isNotEmpty();
    }

    @OnADatabase
    void an_envelope_that_counts_is_to_be_opened_and_the_line_says_what_it_waits_for(TestOffice office) {
        Primary primary = Primary.loaded(office);
        primary.at(2, 12, 0);
        new Deciding(primary).settled(primary.envelope("in_order"));
        ClosingLine line = lines(report(office).missing()).get(ClosingStep.BATCH);
        assertThat(line.number()).isOne();
        assertThat(line.which())
                .singleElement()
                .asString()
                .startsWith("All mail and in-person ballots are counted first.");
        assertThat(line.words()).isEqualTo("1 envelope that counts, in no batch yet");
    }

    @OnADatabase
    void letters_that_did_not_go_out_are_told_besides_and_prevent_nothing(TestOffice office) {
        Primary primary = Primary.loaded(office);
        primary.at(2, 12, 0);
        new Deciding(primary).settled(primary.envelope("registered_late"));
        ClosingReport report = report(office);
        assertThat(lines(report.besides()).get(ClosingStep.OUTCOME_LETTER).number())
                .isOne();
        assertThat(lines(report.missing())).doesNotContainKey(ClosingStep.OUTCOME_LETTER);
    }

    /** The county's sum is made of its locations: the line of a location is enough. */
    @Test
    void a_location_without_its_return_is_one_line_and_each_other_figure_another() {
        CanvassPlace hall = CanvassPlace.location("Town Hall", VotingHours.REGULAR);
        CanvassPlace office = CanvassPlace.location("Mail-ballot office", VotingHours.REGULAR);
        ClosingWork work = new ClosingWork(List.of(
                unchecked(hall, BalanceRule.STOCK, Figure.SUPPLIED, Figure.ISSUED, Figure.MISSING),
                unchecked(hall, BalanceRule.SENT_BACK_ARRIVED, Figure.SENT_BACK),
                unchecked(office, BalanceRule.SENT_BACK_ARRIVED, Figure.SENT_BACK),
                unchecked(CanvassPlace.county(VotingHours.REGULAR), BalanceRule.STOCK, Figure.MISSING),
                unchecked(CanvassPlace.county(VotingHours.REGULAR), BalanceRule.CREDIT, Figure.CREDITED)));
        work.figures(Set.of("Fairgrounds Pavilion"));
        assertThat(work.lines())
                .containsExactly(
                        new ClosingLine(ClosingStep.RETURN, 1, List.of("Town Hall")),
                        new ClosingLine(
                                ClosingStep.FIGURE,
                                3,
                                List.of(
                                        "Town Hall: how many envelopes it reported missing",
                                        "Mail-ballot office: how many envelopes it sent back",
                                        "The county: how many voters it gave credit for voting to")));
    }

    private static BalanceResult unchecked(CanvassPlace place, BalanceRule rule, Figure... missing) {
        return new BalanceResult.CannotBeChecked(place, rule, List.of(missing), "");
    }

    @Test
    void an_identity_that_no_work_explains_is_a_line_itself() {
        CanvassPlace hall = CanvassPlace.location("Town Hall", VotingHours.REGULAR);
        ClosingWork work = new ClosingWork(
                List.of(new BalanceResult.Differs(hall, BalanceRule.NOTHING_PENDING, -1, "Town Hall left too few.")));
        work.totals();
        assertThat(work.lines())
                .containsExactly(new ClosingLine(ClosingStep.TOTAL, 1, List.of("Town Hall left too few.")));
    }
}
