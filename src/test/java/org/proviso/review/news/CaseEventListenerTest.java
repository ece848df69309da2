package org.proviso.review.news;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.proviso.journey.Office.accepted;
import static org.proviso.journey.Office.as;
import static org.proviso.journey.Primary.why;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.access.NotPermittedException;
import org.proviso.core.CourtOrder;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.Key;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.ActResults;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.election.orders.CourtOrderRecordService;
import org.proviso.election.orders.RecordCourtOrder;
import org.proviso.files.InputException;
import org.proviso.journey.Primary;
import org.proviso.review.CaseState;
import org.proviso.review.DecidedBy;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.Settlement;
import org.proviso.review.acts.AdministrativeEndService;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.decide.CourtOrderSettlementService;
import org.proviso.review.decide.DecidedCaseService;
import org.proviso.review.decide.DecisionService;
import org.proviso.review.facts.LinkStore;
import org.proviso.roll.HeldList;
import org.proviso.roll.RollService;
import org.proviso.roll.SnapshotKind;
import org.proviso.roll.SnapshotService;

/** What comes from outside after the first review: newer lists, orders, deadlines. */
public class CaseEventListenerTest {

    @TempDir
    private Path temporary;

    @OnADatabase
    void a_newer_mail_ballot_list_recalls_the_proposal_it_touches_and_says_why(TestOffice services) throws IOException {
        Primary primary = Primary.loaded(services);
        EnvelopeKey key = primary.envelope("mail_surrendered");
        assertThat(primary.reviewing(key).work()).isEqualTo(Recommendation.COUNT);
        Path newer = withAccepted(primary, key);
        NewListResult brought = as(
                "carl",
                () -> services.the(NewerFileService.class)
                        .load(new ElectionId(Primary.ID), SnapshotKind.MAIL_BALLOTS, newer));
        assertThat(((NewListResult.InUse) brought).changed()).singleElement().satisfies(changed -> {
            assertThat(changed.key()).isEqualTo(key);
            assertThat(changed.before()).isEqualTo(Recommendation.COUNT);
            assertThat(changed.after()).isEqualTo(Recommendation.REJECT);
            assertThat(changed.because()).anySatisfy(words -> assertThat(words).contains("accepted"));
        });
        assertThat(primary.now(key).state()).isEqualTo(CaseState.OPEN);
        assertThat(as(
                        "carl",
                        () -> services.the(NewerFileService.class)
                                .load(
                                        new ElectionId(Primary.ID),
                                        SnapshotKind.MAIL_BALLOTS,
                                        temporary.resolve("mail-ballots.csv"))))
                .as("the same file again")
                .isInstanceOf(NewListResult.NothingNew.class);
    }

    @OnADatabase
    void a_list_that_changes_what_was_decided_waits_for_a_second_person(TestOffice services) throws IOException {
        Primary primary = Primary.loaded(services);
        EnvelopeKey key = primary.envelope("mail_surrendered");
        primary.reviewing(key).work();
        decide(primary, key, DecisionOutcome.COUNT, List.of(), "");
        NewerFileService files = services.the(NewerFileService.class);
        RollService roll = services.the(RollService.class);
        int before = roll.snapshotInUse(new ElectionId(Primary.ID), SnapshotKind.MAIL_BALLOTS);
        Path newer = withAccepted(primary, key);
        NewListResult brought =
                as("carl", () -> files.load(new ElectionId(Primary.ID), SnapshotKind.MAIL_BALLOTS, newer));
        NewListResult.WaitsForSecond waits = (NewListResult.WaitsForSecond) brought;
        assertThat(waits.wouldChange()).extracting(CaseDifference::key).containsExactly(key);
        assertThat(as("dora", () -> files.waiting(new ElectionId(Primary.ID))))
                .extracting(UnconfirmedList::snapshotNo, UnconfirmedList::broughtBy)
                .containsExactly(tuple(waits.snapshotNo(), "carl"));
        assertThat(as("dora", () -> files.wouldChange(new ElectionId(Primary.ID), waits.snapshotNo())))
                .as("what the second person looks at before confirming")
                .isEqualTo(waits.wouldChange());
        assertThat(as("dora", () -> services.the(SnapshotService.class).held(new ElectionId(Primary.ID))))
                .filteredOn(list -> list.kind() == SnapshotKind.MAIL_BALLOTS)
                .extracting(HeldList::snapshotNo, HeldList::inUse)
                .containsExactly(tuple(waits.snapshotNo(), false), tuple(before, true));
        assertThat(roll.snapshotInUse(new ElectionId(Primary.ID), SnapshotKind.MAIL_BALLOTS))
                .isEqualTo(before);
        assertThat(services.the(AssessmentService.class)
                        .latest(key)
                        .orElseThrow()
                        .recommendation())
                .as("nothing has changed yet")
                .isEqualTo(Recommendation.COUNT);
        assertThatThrownBy(() -> as("carl", () -> files.confirm(new ElectionId(Primary.ID), waits.snapshotNo())))
                .isInstanceOf(NotPermittedException.class);
        as("dora", () -> files.confirm(new ElectionId(Primary.ID), waits.snapshotNo()));
        assertThat(as("dora", () -> files.waiting(new ElectionId(Primary.ID)))).isEmpty();
        assertThat(roll.snapshotInUse(new ElectionId(Primary.ID), SnapshotKind.MAIL_BALLOTS))
                .isEqualTo(waits.snapshotNo());
        assertThat(services.the(AssessmentService.class)
                        .latest(key)
                        .orElseThrow()
                        .recommendation())
                .isEqualTo(Recommendation.REJECT);
        assertThat(primary.now(key).state()).as("people reopen it").isEqualTo(CaseState.DECIDED);
    }

    @OnADatabase
    void a_bad_list_changes_nothing(TestOffice services) throws IOException {
        Primary.loaded(services);
        int before = services.the(RollService.class).snapshotInUse(new ElectionId(Primary.ID), SnapshotKind.CHECK_INS);
        Path bad = Files.writeString(temporary.resolve("check-ins.csv"), "voter_id,at\nT1,yesterday\n");
        assertThatThrownBy(() -> as(
                        "carl",
                        () -> services.the(NewerFileService.class)
                                .load(new ElectionId(Primary.ID), SnapshotKind.CHECK_INS, bad)))
                .isInstanceOf(InputException.class);
        assertThat(services.the(RollService.class).snapshotInUse(new ElectionId(Primary.ID), SnapshotKind.CHECK_INS))
                .isEqualTo(before);
    }

    @OnADatabase
    void a_newer_roll_matches_open_cases_anew(TestOffice services) throws IOException {
        Primary primary = Primary.loaded(services);
        EnvelopeKey key = primary.envelope("in_order");
        String voter = primary.truth(key).voterId();
        String without = Files.readAllLines(Primary.FOLDER.resolve("roll.csv")).stream()
                .filter(line -> !line.startsWith(voter + ","))
                .collect(Collectors.joining("\n", "", "\n"));
        Path newer = Files.writeString(temporary.resolve("roll.csv"), without);
        NewListResult brought = as(
                "carl",
                () -> services.the(NewerFileService.class).load(new ElectionId(Primary.ID), SnapshotKind.ROLL, newer));
        assertThat(((NewListResult.InUse) brought).changed())
                .anySatisfy(changed -> assertThat(changed.key()).isEqualTo(key));
        assertThat(Key.text(
                        services.the(LinkStore.class).newest(key).orElseThrow().voterId()))
                .isNotEqualTo(voter);
    }

    @OnADatabase
    void a_court_settles_the_envelopes_it_names_and_holds_others(TestOffice services) {
        Primary primary = Primary.loaded(services);
        EnvelopeKey key = primary.envelope("registered_late");
        EnvelopeKey held = primary.envelope("in_order");
        primary.reviewing(key).work();
        CourtOrderRecordService orders = services.the(CourtOrderRecordService.class);
        int count = ActResults.accepted(as("carl", () -> orders.record(order(CourtOrder.Kind.COUNT, key))))
                .orderNo();
        ActResults.accepted(as("carl", () -> orders.record(order(CourtOrder.Kind.HOLD, held))));
        CourtOrderSettlementService ordered = services.the(CourtOrderSettlementService.class);
        assertThat(why(as("carl", () -> ordered.settle(held, primary.now(held).version(), count))))
                .isEqualTo(Why.NO_SUCH_ORDER);
        assertThatThrownBy(() ->
                        as("carl", () -> ordered.settle(key, primary.now(key).version(), count)))
                .as("whoever recorded the order does not apply it")
                .isInstanceOf(NotPermittedException.class);
        as("dora", () -> accepted(ordered.settle(key, primary.now(key).version(), count)));
        assertThat(why(as("dora", () -> ordered.settle(key, primary.now(key).version(), count))))
                .as("a second time")
                .isEqualTo(Why.NOTHING_NEW);
        assertThat(services.the(DecisionService.class).standing(key)).hasValueSatisfying(decision -> {
            assertThat(decision.as()).isEqualTo(DecisionOutcome.COUNT);
            assertThat(decision.decider()).isEqualTo("court");
        });
        DecidedCaseService decisions = services.the(DecidedCaseService.class);
        assertThat(why(as("eve", () -> decisions.reopen(key, primary.now(key).version(), "Seen again."))))
                .as("what a court ordered stands while the order does")
                .isEqualTo(Why.HELD_BY_COURT);
        assertThat(primary.reviewing(held).work()).isEqualTo(Recommendation.RESEARCH);
        int version = as("carl", () -> orders.all(new ElectionId(Primary.ID)))
                .get(count - 1)
                .version();
        ActResults.accepted(as(
                "carl", () -> orders.change(new ElectionId(Primary.ID), count, version, CourtOrder.Status.SET_ASIDE)));
        assertThat(as(
                                "eve",
                                () -> accepted(
                                        decisions.reopen(key, primary.now(key).version(), "Set aside.")))
                        .state())
                .isEqualTo(CaseState.OPEN);
    }

    private RecordCourtOrder order(CourtOrder.Kind kind, EnvelopeKey key) {
        return new RecordCourtOrder(
                new ElectionId(Primary.ID),
                kind,
                "Circuit Court of Tamarack County",
                java.time.LocalDate.of(2026, 8, 5),
                "About one envelope.",
                CourtOrder.Status.IN_FORCE,
                null,
                Set.of(key.envelopeNo()));
    }

    @OnADatabase
    void an_ask_that_ran_out_without_its_notice_is_for_a_person_to_look_at(TestOffice services) {
        Primary primary = Primary.loaded(services);
        EnvelopeKey key = primary.envelope("no_id");
        assertThat(primary.reviewing(key).work()).isEqualTo(Recommendation.WAIT_FOR_THE_VOTER);
        primary.at(9, 9, 0);
        assertThat(services.the(DeadlineService.class).recordPassedDeadlines(new ElectionId(Primary.ID)))
                .extracting(CaseDifference::key)
                .contains(key);
        assertThat(services.the(DeadlineService.class).recordPassedDeadlines(new ElectionId(Primary.ID)))
                .as("recorded once")
                .isEmpty();
        assertThat(services.the(AssessmentService.class)
                        .latest(key)
                        .orElseThrow()
                        .recommendation())
                .isEqualTo(Recommendation.RESEARCH);
    }

    @OnADatabase
    void ends_without_a_decision_are_only_where_the_rules_say_so(TestOffice services) {
        Primary primary = Primary.loaded(services);
        EnvelopeKey key = primary.envelope("in_order");
        EnvelopeCase taken = primary.taken(key, new UserName("ada"));
        AdministrativeEndService endings = services.the(AdministrativeEndService.class);
        assertThat(why(as("ada", () -> endings.proposeToSendOn(key, taken.version(), "Birch County"))))
                .isEqualTo(Why.NOT_AS_RECOMMENDED);
        assertThat(why(as("ada", () -> endings.proposeToEnd(key, taken.version()))))
                .isEqualTo(Why.NOT_AS_RECOMMENDED);
        assertThat(primary.reviewing(primary.envelope("withdrawn")).work())
                .isEqualTo(Recommendation.ADMINISTRATIVE_END);
        assertThat(primary.now(primary.envelope("withdrawn")).state()).isEqualTo(CaseState.ENDED);
        assertThat(primary.reviewing(primary.envelope("other_county")).work()).isEqualTo(Recommendation.SENT_ON);
    }

    /** A decision by one voter of the board, without the board's room. */
    public static void decide(
            Primary primary, EnvelopeKey key, DecisionOutcome as, List<Reason> reasons, String reference) {
        primary.at(3, 10, 0);
        TestOffice services = primary.office().services();
        ActResult<List<EnvelopeCase>> settled = as(
                "eve",
                () -> services.inTransaction(() -> services.the(DecisionService.class)
                        .settle(
                                List.of(new Settlement(
                                        key,
                                        primary.now(key).version(),
                                        as,
                                        new org.proviso.core.deciding.Grounds(reasons, reference, ""),
                                        Set.of())),
                                new DecidedBy(
                                        org.proviso.core.deciding.DeciderKind.BOARD,
                                        null,
                                        null,
                                        Set.of(new UserName("eve")),
                                        org.proviso.ledger.Actor.SYSTEM))));
        assertThat(settled.refusals()).isEmpty();
    }

    /** The mail ballots of the sample, those of the case's voter accepted. */
    private Path withAccepted(Primary primary, EnvelopeKey key) throws IOException {
        String voter = primary.truth(key).voterId();
        String changed = Files.readAllLines(Primary.FOLDER.resolve("mail-ballots.csv")).stream()
                .map(line -> line.startsWith(voter + ",")
                        ? line.replaceAll("(outstanding|surrendered|void)", "accepted")
                        : line)
                .collect(Collectors.joining("\n", "", "\n"));
        return Files.writeString(temporary.resolve("mail-ballots.csv"), changed);
    }
}
