package org.proviso.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.field;
import static org.proviso.core.act.ActResults.why;
import static org.proviso.journey.Office.accepted;
import static org.proviso.journey.Office.as;

import java.time.Duration;
import java.util.List;
import org.proviso.access.NotPermittedException;
import org.proviso.canvass.replay.ElectionReplayService;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResults;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.intake.LoadedOffice;
import org.proviso.journey.Deciding;
import org.proviso.journey.Primary;
import org.proviso.review.acts.CaseAssignmentService;
import org.proviso.review.acts.HeldCaseService;
import org.proviso.review.acts.ResearchService;
import org.proviso.review.acts.ResearchService.WaitingRequest;
import org.proviso.review.decide.DecidedCaseService;
import org.proviso.review.facts.CaseReturn;
import org.proviso.review.facts.WaitsFor;
import org.proviso.review.file.CaseFile.ReturnDetails;
import org.proviso.review.file.CaseFileService;

/** A case that came back says why, in the words typed; nobody who is away keeps one, and research is not forgotten. */
class CaseReturnsTest {

    private static final ElectionId PRIMARY = new ElectionId(Primary.ID);

    private static ReturnDetails cameBack(TestOffice office, EnvelopeKey key) {
        return as("ben", () -> office.the(CaseFileService.class).open(key))
                .orElseThrow()
                .work()
                .cameBack()
                .get(0);
    }

    private static void assertReplayed(TestOffice office) {
        assertThat(office.the(ElectionReplayService.class).replay(PRIMARY).isWhole())
                .isTrue();
    }

    @OnBothDatabases
    void a_supervisor_releases_the_case_of_somebody_absent_with_a_reason(TestOffice office) {
        Primary primary = Primary.loaded(office);
        EnvelopeKey key = primary.envelope("in_order");
        EnvelopeCase taken = primary.taken(key, new UserName("ada"));
        CaseAssignmentService cases = office.the(CaseAssignmentService.class);
        assertThatThrownBy(() -> as("ben", () -> cases.release(key, taken.version(), "I want it.")))
                .isInstanceOf(NotPermittedException.class);
        assertThat(field(as("carl", () -> cases.release(key, taken.version(), " "))))
                .isEqualTo("because");
        EnvelopeCase released = as("carl", () -> accepted(cases.release(key, taken.version(), "She is ill.")));
        assertThat(released.state()).isEqualTo(CaseState.OPEN);
        assertThat(released.takenBy()).isNull();
        LedgerEntry entry = LoadedOffice.lastEntry(office);
        assertThat(entry.act()).isEqualTo("given_back");
        assertThat(entry.line()).doesNotContain("ill");
        assertThat(cameBack(office, key))
                .returns(CaseReturn.Kind.RELEASED, ReturnDetails::kind)
                .returns("She is ill.", ReturnDetails::because)
                .returns("carl", ReturnDetails::by);
        assertThat(why(as("carl", () -> cases.release(key, released.version(), "Twice."))))
                .isEqualTo(Why.NOT_IN_THIS_STATE);
        assertReplayed(office);
    }

    @OnBothDatabases
    void a_case_on_which_nobody_acted_goes_back_to_the_queue_after_the_offices_time(TestOffice office) {
        Primary primary = Primary.loaded(office);
        primary.at(2, 9, 0);
        EnvelopeKey key = primary.envelope("in_order");
        primary.taken(key, new UserName("ada"));
        HeldCaseService held = office.the(HeldCaseService.class);
        primary.at(3, 8, 59);
        assertThat(held.releaseHeldFor(PRIMARY, Duration.ofHours(24))).isEmpty();
        primary.at(3, 9, 1);
        assertThat(held.releaseHeldFor(PRIMARY, Duration.ofHours(24))).containsExactly(key);
        assertThat(primary.now(key).state()).isEqualTo(CaseState.OPEN);
        assertThat(cameBack(office, key))
                .returns(CaseReturn.Kind.TIMED_OUT, ReturnDetails::kind)
                .returns("", ReturnDetails::by);
        assertThat(held.releaseHeldFor(PRIMARY, Duration.ofHours(24)))
                .as("once")
                .isEmpty();
        assertReplayed(office);
    }

    /** Whatever happens next, why it came back and what the second reviewer wrote stay at its head. */
    @OnBothDatabases
    void every_time_a_case_came_back_stays_readable_the_newest_first(TestOffice office) {
        Primary primary = Primary.loaded(office);
        primary.at(2, 9, 0);
        EnvelopeKey key = primary.envelope("in_order");
        EnvelopeCase taken = primary.taken(key, new UserName("ada"));
        as(
                "carl",
                () -> accepted(office.the(CaseAssignmentService.class).release(key, taken.version(), "She is ill.")));
        primary.at(3, 10, 0);
        new Deciding(primary).settled(key);
        as(
                "eve",
                () -> accepted(office.the(DecidedCaseService.class)
                        .reopen(key, primary.now(key).version(), "The wrong box was read.")));
        primary.taken(key, new UserName("ben"));
        assertThat(as("ben", () -> office.the(CaseFileService.class).open(key))
                        .orElseThrow()
                        .work()
                        .cameBack())
                .extracting(ReturnDetails::kind, ReturnDetails::because, ReturnDetails::by)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(CaseReturn.Kind.REOPENED, "The wrong box was read.", "eve"),
                        org.assertj.core.groups.Tuple.tuple(CaseReturn.Kind.RELEASED, "She is ill.", "carl"));
    }

    @OnBothDatabases
    void the_words_of_the_second_reviewer_are_among_them(TestOffice office) {
        WorkedPrimary worked = WorkedPrimary.in(office);
        assertThat(worked.inState(CaseState.OPEN).stream()
                        .flatMap(open -> as(
                                "ben", () -> office.the(CaseFileService.class).open(open.key()))
                                .orElseThrow()
                                .work()
                                .cameBack()
                                .stream())
                        .filter(back -> back.kind() == CaseReturn.Kind.SECOND_READER))
                .extracting(ReturnDetails::because)
                .contains("Look at the date again.");
    }

    @OnBothDatabases
    void what_the_decider_wrote_stands_on_the_case(TestOffice office) {
        Primary primary = Primary.loaded(office);
        primary.at(3, 10, 0);
        EnvelopeKey key = primary.envelope("in_order");
        new Deciding(primary).settled(key);
        DecidedCaseService decided = office.the(DecidedCaseService.class);
        as("eve", () -> accepted(decided.reopen(key, primary.now(key).version(), "The wrong box was read.")));
        assertThat(cameBack(office, key))
                .returns(CaseReturn.Kind.REOPENED, ReturnDetails::kind)
                .returns("The wrong box was read.", ReturnDetails::because)
                .returns("eve", ReturnDetails::by);
        assertReplayed(office);
    }

    @OnBothDatabases
    void research_has_somebody_it_is_asked_of_and_waits_on_a_list_until_it_is_answered(TestOffice office) {
        Primary primary = Primary.loaded(office);
        ResearchService research = office.the(ResearchService.class);
        EnvelopeKey key = primary.envelope("in_order");
        assertThat(field(as("ada", () -> research.ask(key, WaitsFor.ANOTHER_OFFICE, " ", "Which license?"))))
                .isEqualTo("addressee");
        int number = ActResults.accepted(
                as("ada", () -> research.ask(key, WaitsFor.ANOTHER_OFFICE, "Depot Street Library", "Which license?")));
        List<WaitingRequest> waiting = as("ben", () -> research.waiting(PRIMARY));
        assertThat(waiting).singleElement().satisfies(request -> {
            assertThat(request.key()).isEqualTo(key);
            assertThat(request.askedBy()).isEqualTo("ada");
            assertThat(request.addressee()).isEqualTo("Depot Street Library");
        });
        as("ben", () -> accepted(research.recordAnswer(key, number, 0, "Hers.")));
        assertThat(as("ben", () -> research.waiting(PRIMARY))).isEmpty();
        assertThatThrownBy(() -> as("eve", () -> research.waiting(PRIMARY))).isInstanceOf(NotPermittedException.class);
        assertReplayed(office);
    }
}
