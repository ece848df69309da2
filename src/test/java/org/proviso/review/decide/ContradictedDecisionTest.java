package org.proviso.review.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.field;
import static org.proviso.core.act.ActResults.why;
import static org.proviso.journey.Office.as;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.access.NotPermittedException;
import org.proviso.access.StaffList;
import org.proviso.board.BoardMotion;
import org.proviso.board.BoardService;
import org.proviso.board.BodyKind;
import org.proviso.board.CallSession;
import org.proviso.board.MotionKind;
import org.proviso.board.MoveMotion;
import org.proviso.board.SessionKey;
import org.proviso.board.agenda.AgendaService;
import org.proviso.board.motion.CastVote;
import org.proviso.board.motion.MotionService;
import org.proviso.board.motion.VoteClosed;
import org.proviso.board.record.BoardReplay;
import org.proviso.canvass.CanvassService;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.VoterId;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.deciding.Vote;
import org.proviso.core.rules.Reason;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.journey.Deciding;
import org.proviso.journey.NewerMailList;
import org.proviso.journey.Primary;
import org.proviso.release.Batch;
import org.proviso.release.BatchChangeService;
import org.proviso.release.ReleaseService;
import org.proviso.review.CaseState;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.NewerRollFile;
import org.proviso.review.ProposeOutcome;
import org.proviso.review.acts.ConfirmLink;
import org.proviso.review.acts.LinkService;
import org.proviso.review.acts.ProposalService;
import org.proviso.review.acts.RecordSearch;
import org.proviso.review.acts.SearchService;
import org.proviso.review.facts.OffRollReason;
import org.proviso.review.facts.SearchFound;
import org.proviso.review.facts.SearchPlace;
import org.proviso.review.news.CaseEventListenerTest;
import org.proviso.review.news.NewListResult;
import org.proviso.review.news.NewerFileService;
import org.proviso.review.replay.CaseReplay;
import org.proviso.roll.RollMatches;
import org.proviso.roll.SnapshotKind;

/** A newer list says that a voter whose envelope is decided has voted: nobody is counted twice unseen, nobody is lost. */
class ContradictedDecisionTest {

    private static final ElectionId ELECTION = new ElectionId(Primary.ID);
    private static final String[] THREE = {"in_order", "inactive", "mail_surrendered"};

    /** Three envelopes decided to count. */
    private record Decided(Primary primary, TestOffice services) {

        static Decided in(TestOffice services) {
            Primary primary = Primary.loaded(services);
            primary.at(3, 10, 0);
            for (String scenario : THREE) {
                new Deciding(primary).settled(primary.envelope(scenario));
            }
            accepted(as("carl", () -> services.the(ReleaseService.class).recordOtherBallotsComplete(ELECTION)));
            return new Decided(primary, services);
        }

        EnvelopeKey key(String scenario) {
            return primary.envelope(scenario);
        }

        EnvelopeNumber number(String scenario) {
            return key(scenario).envelopeNo();
        }

        List<ContradictedDecision> open() {
            return as("eve", () -> services.the(FollowUpService.class).open(ELECTION));
        }

        List<EnvelopeNumber> waiting() {
            return as("hal", () -> releases().waiting(ELECTION)).stream()
                    .map(envelope -> envelope.key().envelopeNo())
                    .toList();
        }

        ActResult<Batch> batch() {
            Set<EnvelopeNumber> all = new LinkedHashSet<>();
            for (String scenario : THREE) {
                all.add(number(scenario));
            }
            return as("hal", () -> releases().makeBatch(ELECTION, all, ""));
        }

        ActResult<Batch> begin() {
            return as("hal", () -> releases().beginOpening(ELECTION, 1, now().version()));
        }

        ActResult<Batch> open1() {
            return as("ida", () -> releases().recordOpening(ELECTION, 1, now().version(), 0));
        }

        Batch now() {
            return as("hal", () -> releases().batch(ELECTION, 1));
        }

        ReleaseService releases() {
            return services.the(ReleaseService.class);
        }

        ActResult<EnvelopeCase> letStand(EnvelopeKey key) {
            return as(
                    "eve",
                    () -> services.inTransaction(() -> services.the(ContradictedDecisions.class)
                            .letStand(
                                    key,
                                    primary.now(key).version(),
                                    "The mail desk says that the list is wrong.",
                                    services.the(StaffList.class)
                                            .user(new UserName("eve"))
                                            .orElseThrow(),
                                    1,
                                    1)));
        }

        ActResult<EnvelopeCase> followUp(String by, EnvelopeKey key, String what) {
            return as(
                    by,
                    () -> services.the(FollowUpService.class)
                            .record(key, primary.now(key).version(), what));
        }

        List<Why> closing() {
            return as("dora", () -> services.the(CanvassService.class).closeElection(ELECTION)).refusals().stream()
                    .map(Refusal::why)
                    .distinct()
                    .toList();
        }

        void replaysWhole() {
            assertThat(services.the(CaseReplay.class).replay(ELECTION).first()).isEmpty();
        }
    }

    @OnBothDatabases
    void a_decided_envelope_whose_voter_voted_by_mail_stays_closed_until_it_is_followed_up(TestOffice services) {
        Decided decided = Decided.in(services);
        EnvelopeKey key = decided.key("mail_surrendered");
        assertThat(decided.open()).isEmpty();
        assertThat(decided.waiting()).hasSize(3);
        new NewerMailList(decided.primary()).accepted(key).inUse();
        assertThat(decided.open()).singleElement().satisfies(found -> {
            assertThat(found.key()).isEqualTo(key);
            assertThat(found.decidedAs()).isEqualTo(DecisionOutcome.COUNT);
            assertThat(found.says()).isEqualTo(Recommendation.REJECT);
            assertThat(found.reasons()).containsExactly(Reason.MAIL_BALLOT_ACCEPTED);
            assertThat(found.because()).contains("accepted");
            assertThat(found.mustStayClosed()).isTrue();
        });
        assertThat(decided.waiting()).hasSize(2).doesNotContain(key.envelopeNo());
        assertThat(as("hal", () -> decided.releases().keptClosed(ELECTION)))
                .as("and the page says which is missing, and why")
                .singleElement()
                .satisfies(closed -> {
                    assertThat(closed.key()).isEqualTo(key);
                    assertThat(closed.because()).startsWith("A newer record contradicts its decision");
                });
        assertThat(why(decided.batch())).isEqualTo(Why.NOT_IN_THIS_STATE);
        assertThat(decided.closing()).containsExactly(Why.CONTRADICTED);
        assertThat(why(decided.followUp("dora", key, "Told the mail desk.")))
                .as("it is still closed: the decider decides")
                .isEqualTo(Why.NOT_IN_THIS_STATE);
        accepted(decided.letStand(key));
        assertThat(decided.open()).isEmpty();
        assertThat(why(decided.letStand(key))).as("a second time").isEqualTo(Why.NOTHING_NEW);
        assertThat(decided.waiting()).hasSize(3);
        assertThat(decided.closing()).doesNotContain(Why.CONTRADICTED);
        decided.replaysWhole();
    }

    @OnBothDatabases
    void in_a_sealed_batch_it_stops_itself_and_not_the_others(TestOffice services) {
        Decided decided = Decided.in(services);
        EnvelopeKey key = decided.key("inactive");
        accepted(decided.batch());
        accepted(decided.begin());
        new NewerMailList(decided.primary()).accepted(key).inUse();
        ActResult<Batch> refused = decided.open1();
        assertThat(why(refused)).isEqualTo(Why.CONTRADICTED);
        assertThat(refused.refusals()).extracting(Refusal::about).containsExactly(key.envelopeNo());
        assertThat(refused.refusals().get(0).words())
                .contains("the voter's mail ballot was accepted", "lets the decision stand or reopens it");
        accepted(as(
                "hal",
                () -> services.the(BatchChangeService.class)
                        .takeOut(
                                ELECTION,
                                1,
                                decided.now().version(),
                                key.envelopeNo(),
                                "Contradicted by the newer list.")));
        assertThat(accepted(decided.open1()).ballots()).isEqualTo(2);
        assertThat(decided.primary().now(key).state()).isEqualTo(CaseState.DECIDED);
        accepted(as(
                "eve",
                () -> services.the(DecidedCaseService.class)
                        .reopen(key, decided.primary().now(key).version(), "The voter voted by mail.")));
        assertThat(decided.open()).as("a reopened case is decided anew").isEmpty();
        decided.replaysWhole();
    }

    @OnBothDatabases
    void what_is_counted_already_is_shown_as_that_and_what_was_done_is_written_down(TestOffice services) {
        Decided decided = Decided.in(services);
        EnvelopeKey key = decided.key("inactive");
        accepted(decided.batch());
        accepted(decided.begin());
        accepted(decided.open1());
        new NewerMailList(decided.primary()).accepted(key).inUse();
        assertThat(decided.open()).singleElement().satisfies(found -> {
            assertThat(found.wasSettled()).isEqualTo("opened and counted");
            assertThat(found.mustStayClosed()).isFalse();
        });
        assertThat(decided.closing()).containsExactly(Why.CONTRADICTED);
        ActResult<EnvelopeCase> silent = decided.followUp("dora", key, " ");
        assertThat(why(silent)).isEqualTo(Why.NO_REASON);
        assertThat(field(silent)).isEqualTo("whatWasDone");
        assertThatThrownBy(() -> decided.followUp("ada", key, "Nothing."))
                .as("not by a reviewer")
                .isInstanceOf(NotPermittedException.class);
        accepted(decided.followUp("dora", key, "Referred to the county's attorney."));
        assertThat(decided.open()).isEmpty();
        assertThat(as("eve", () -> services.the(FollowUpService.class).done(ELECTION)))
                .singleElement()
                .satisfies(done -> {
                    assertThat(done.key()).isEqualTo(key);
                    assertThat(done.note()).isEqualTo("Referred to the county's attorney.");
                    assertThat(done.recordedBy()).isEqualTo(new UserName("dora"));
                });
        assertThat(decided.closing()).doesNotContain(Why.CONTRADICTED);
        decided.replaysWhole();
        services.jdbc().sql("update follow_up set note = 'Nothing was done.'").update();
        assertThat(services.the(CaseReplay.class).replay(ELECTION).first())
                .as("a follow-up changed behind the ledger's back")
                .isNotEmpty();
    }

    @OnBothDatabases
    void a_list_put_right_ends_it_and_another_list_opens_it_again(TestOffice services) {
        Decided decided = Decided.in(services);
        EnvelopeKey key = decided.key("in_order");
        new NewerMailList(decided.primary()).accepted(key).inUse();
        assertThat(decided.open()).hasSize(1);
        new NewerMailList(decided.primary()).inUse();
        assertThat(decided.open()).as("the list before was wrong").isEmpty();
        new NewerMailList(decided.primary())
                .accepted(key)
                .accepted(decided.key("inactive"))
                .inUse();
        assertThat(decided.open()).hasSize(2);
    }

    @OnBothDatabases
    void two_envelopes_that_turn_out_to_be_one_persons_stop_the_decided_one_until_the_other_is_settled(
            TestOffice services) {
        Decided decided = Decided.in(services);
        EnvelopeKey key = decided.key("in_order");
        EnvelopeKey other = decided.key("registered_late");
        EnvelopeCase taken = decided.primary().taken(other, new UserName("ada"));
        VoterId voter = new VoterId(decided.primary().truth(key).voterId());
        accepted(as(
                "ada",
                () -> services.the(LinkService.class)
                        .confirm(new ConfirmLink(other, taken.version(), voter, "The same hand and birth date."))));
        assertThat(decided.open()).extracting(ContradictedDecision::key).containsExactly(key);
        assertThat(decided.waiting()).doesNotContain(key.envelopeNo());
        accepted(decided.letStand(key));
        assertThat(decided.waiting()).contains(key.envelopeNo());
        assertThat(decided.open()).isEmpty();
        decided.replaysWhole();
    }

    @OnBothDatabases
    void an_envelope_sent_on_whose_voter_is_of_this_county_after_all_can_be_reopened(TestOffice services) {
        Decided decided = Decided.in(services);
        EnvelopeKey key = decided.key("other_county");
        decided.primary().reviewing(key).work();
        assertThat(decided.primary().now(key).state()).isEqualTo(CaseState.SENT_ON);
        assertThat(decided.open()).isEmpty();
        EnvelopeCase now = decided.primary().now(key);
        accepted(as(
                "eve",
                () -> services.the(DecidedCaseService.class)
                        .reopen(key, now.version(), "The other county sent it back.")));
        assertThat(decided.primary().now(key).state()).isEqualTo(CaseState.OPEN);
        decided.replaysWhole();
    }

    @OnBothDatabases
    void a_board_lets_a_decision_stand_by_a_motion_and_only_a_contradicted_one(TestOffice services) {
        Decided decided = Decided.in(services);
        EnvelopeKey key = decided.key("in_order");
        SessionKey session = session(services);
        accepted(as(
                "eve",
                () -> services.the(AgendaService.class)
                        .addToAgenda(session, List.of(key.envelopeNo(), decided.number("inactive")))));
        new NewerMailList(decided.primary()).accepted(key).inUse();
        assertThat(why(move(decided, session, decided.key("inactive"), "It stands.")))
                .as("nothing contradicts it")
                .isEqualTo(Why.NOTHING_NEW);
        assertThat(why(move(decided, session, key, ""))).isEqualTo(Why.NO_REASON);
        BoardMotion moved = accepted(move(decided, session, key, "The list names another voter."));
        MotionService motions = services.the(MotionService.class);
        accepted(as("eve", () -> motions.putToVote(moved.key(), moved.version())));
        for (String member : List.of("eve", "fay")) {
            accepted(as("eve", () -> motions.vote(new CastVote(moved.key(), new UserName(member), Vote.YES))));
        }
        BoardMotion voted = as("eve", () -> motions.motions(session)).get(0);
        assertThat(accepted(as("eve", () -> motions.close(voted.key(), voted.version()))))
                .isInstanceOf(VoteClosed.Settled.class);
        assertThat(decided.open()).isEmpty();
        assertThat(as("eve", () -> services.the(FollowUpService.class).done(ELECTION)))
                .singleElement()
                .satisfies(done -> {
                    assertThat(done.motionNo()).isEqualTo(1);
                    assertThat(done.note()).isEqualTo("The list names another voter.");
                });
        decided.replaysWhole();
        assertThat(services.the(BoardReplay.class).replay(ELECTION).first()).isEmpty();
    }

    private static SessionKey session(TestOffice services) {
        BoardService boards = services.the(BoardService.class);
        CallSession call = new CallSession(
                ELECTION, BodyKind.BOARD, LocalDate.of(2026, 8, 7).atTime(10, 0), "Room 2");
        SessionKey session = accepted(as("eve", () -> boards.callSession(call))).key();
        accepted(as("eve", () -> boards.open(session, 0)));
        for (String member : List.of("eve", "fay")) {
            accepted(as("eve", () -> boards.recordArrival(session, new UserName(member))));
        }
        return session;
    }

    private static ActResult<BoardMotion> move(Decided decided, SessionKey session, EnvelopeKey key, String because) {
        return as(
                "eve",
                () -> decided.services()
                        .the(MotionService.class)
                        .move(new MoveMotion(
                                session,
                                MotionKind.LET_STAND,
                                Map.of(
                                        key.envelopeNo(),
                                        decided.primary().now(key).version()),
                                Set.of(),
                                List.of(),
                                "",
                                because)));
    }

    @OnBothDatabases
    void a_voter_rejected_as_not_registered_whom_a_newer_roll_has_is_judged_again(TestOffice services)
            throws IOException {
        Primary primary = Primary.loaded(services);
        EnvelopeKey key = primary.envelope("in_order");
        VoterId voter = new VoterId(primary.truth(key).voterId());
        services.the(RollMatches.class).prepare(ELECTION);
        roll(services, new NewerRollFile().remove(voter));
        primary.at(3, 10, 0);
        EnvelopeCase taken = primary.taken(key, new UserName("ada"));
        accepted(as(
                "ada",
                () -> services.the(SearchService.class)
                        .record(new RecordSearch(
                                key,
                                taken.version(),
                                EnumSet.allOf(SearchPlace.class),
                                SearchFound.NOTHING,
                                OffRollReason.NOT_ON_THE_ROLL,
                                null,
                                ""))));
        accepted(as(
                "ada",
                () -> services.the(ProposalService.class)
                        .propose(new ProposeOutcome(
                                key,
                                primary.now(key).version(),
                                DecisionOutcome.REJECT,
                                List.of(Reason.NOT_REGISTERED),
                                "Example Election Code (invented) 2.1 (2020)",
                                ""))));
        accepted(as(
                "ben",
                () -> services.the(ProposalService.class)
                        .secondReview(key, primary.now(key).version(), true, "")));
        CaseEventListenerTest.decide(
                primary,
                key,
                DecisionOutcome.REJECT,
                List.of(Reason.NOT_REGISTERED),
                "Example Election Code (invented) 2.1 (2020)");
        Decided decided = new Decided(primary, services);
        assertThat(decided.open()).isEmpty();
        roll(services, new NewerRollFile());
        assertThat(decided.open()).singleElement().satisfies(found -> {
            assertThat(found.key()).isEqualTo(key);
            assertThat(found.decidedAs()).isEqualTo(DecisionOutcome.REJECT);
            assertThat(found.says()).isNotEqualTo(Recommendation.REJECT);
            assertThat(found.because()).contains("newer roll");
        });
        accepted(as(
                "eve",
                () -> services.the(DecidedCaseService.class)
                        .reopen(key, primary.now(key).version(), "The voter is on the newer roll.")));
        decided.replaysWhole();
    }

    private static void roll(TestOffice services, NewerRollFile newer) throws IOException {
        Path folder = Files.createTempDirectory("roll");
        Path file = newer.in(folder);
        NewerFileService files = services.the(NewerFileService.class);
        NewListResult brought = as("carl", () -> files.load(ELECTION, SnapshotKind.ROLL, file));
        if (brought instanceof NewListResult.WaitsForSecond waits) {
            as("dora", () -> files.confirm(ELECTION, waits.snapshotNo()));
        }
        Files.delete(file);
        Files.delete(folder);
    }
}
