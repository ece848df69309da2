package org.proviso.journey;

import static com.github.mvysny.kaributesting.v10.LocatorJ._find;
import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.as;
import static org.proviso.journey.PageDriver.fill;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.said;
import static org.proviso.journey.PageDriver.value;

import com.vaadin.flow.component.html.Image;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.board.BoardService;
import org.proviso.board.BoardSession;
import org.proviso.board.BodyKind;
import org.proviso.board.CallSession;
import org.proviso.board.agenda.AgendaService;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.matching.Candidate;
import org.proviso.core.rules.Reason;
import org.proviso.review.ProposeOutcome;
import org.proviso.review.acts.AnswerService;
import org.proviso.review.acts.CaseAssignmentService;
import org.proviso.review.acts.ProposalService;
import org.proviso.review.facts.LinkStore;
import org.proviso.review.facts.SignatureComparison;
import org.proviso.review.file.ExemplarService;
import org.proviso.roll.RollService;
import org.proviso.roll.SnapshotKind;
import org.proviso.ui.field.ChangedMeanwhile;
import org.springframework.beans.factory.annotation.Autowired;

/** Two records may be the voter of one envelope: who chooses sees both, and everybody after them reads on what ground. */
@OnPages
class CandidatesPageTest {

    private static final VoterId NATHAN = new VoterId("T6142054");
    private static final VoterId AUSTIN = new VoterId("T7492637");
    private static final String GROUND = "date of birth, signature: The letters of the last name are Austin's.";

    @Autowired
    private PageDriver pages;

    /** The match leaves open which of the twins it is. */
    private static EnvelopeKey ofEither(String envelopeNo) {
        EnvelopeKey key = PagesOffice.taken(envelopeNo);
        Link several = new Link(
                VoterIdentityFact.SEVERAL_FIT,
                null,
                0.6,
                List.of("Two records fit about equally."),
                List.of(
                        new Candidate(AUSTIN, 0.6, List.of("Same first name.")),
                        new Candidate(NATHAN, 0.39, List.of("Same birth date and home."))));
        int snapshot = PagesOffice.the(RollService.class).snapshotInUse(PagesOffice.ELECTION, SnapshotKind.ROLL);
        PagesOffice.the(LinkStore.class).insert(key, several, snapshot, null, "");
        return key;
    }

    private static Voter voter(VoterId id) {
        return PagesOffice.the(RollService.class)
                .voter(PagesOffice.ELECTION, id)
                .orElseThrow();
    }

    @Test
    void who_chooses_sees_both_records_beside_the_envelope_and_all_after_them_read_the_ground() {
        EnvelopeKey key = ofEither("P-1027");
        String page = "review/case/P-1027";
        pages.on(page, "ada", () -> {
            assertThat(said())
                    .as("name, birth date and address of both, and in words what differs")
                    .contains("Record T6142054", "Record T7492637")
                    .contains("Frazier, Nathan Mark\u2260 differs")
                    .contains("01/07/1998= same")
                    .contains("436 Wharf Ave, Birch Hall 49874\u2260 differs");
            assertThat(pictures())
                    .contains("/images/tamarack-primary/P-1027/signature")
                    .contains("/images/tamarack-primary/P-1027/of/T7492637/1")
                    .contains("/images/tamarack-primary/P-1027/of/T6142054/0");
            press("Choose another voter");
            assertThat(value("What the choice rests on"))
                    .as("nothing is preset")
                    .isEqualTo(Set.of());
            fill("Who is the voter?", voter(AUSTIN));
            fill("What the choice rests on", Set.of("signature", "date of birth"));
            fill("Reason", "The letters of the last name are Austin's.");
            returnedAndTakenAgain(key);
            press("Link voter");
            assertThat(said()).contains(ChangedMeanwhile.WORDS);
            press("Load the new version");
            press("Choose another voter");
            assertThat(value("Reason"))
                    .as("loading the new version loses nothing typed")
                    .isEqualTo("The letters of the last name are Austin's.");
            fill("Who is the voter?", voter(AUSTIN));
            fill("What the choice rests on", Set.of("signature", "date of birth"));
            press("Link voter");
        });
        String ground = "Voter chosen by ada, Thu, Aug 6, 12:00 pm: \u201C" + GROUND + "\u201D";
        pages.on(page, "ada", () -> {
            assertThat(said()).contains(ground, "Record T7492637, linked", "Record T6142054");
            press("Choose another voter");
            assertThat(value("Reason")).as("it is recorded now").isEqualTo("");
        });
        rejectionProposed(key);
        pages.on("review/second/P-1027", "ben", () -> assertThat(said()).contains(ground, "Record T6142054"));
        beforeTheBoard(key, ground);
    }

    private static List<String> pictures() {
        return _find(Image.class).stream().map(Image::getSrc).toList();
    }

    private static void returnedAndTakenAgain(EnvelopeKey key) {
        CaseAssignmentService cases = PagesOffice.the(CaseAssignmentService.class);
        PagesOffice.done("ada", () -> cases.giveBack(key, PagesOffice.version(key)));
        PagesOffice.done("ada", () -> cases.take(key, PagesOffice.version(key)));
    }

    private static void rejectionProposed(EnvelopeKey key) {
        PagesOffice.done(
                "ada",
                () -> PagesOffice.the(AnswerService.class)
                        .recordSignatureComparison(new SignatureComparison(
                                key, PagesOffice.version(key), SignatureComparison.Finding.AGREES, "")));
        PagesOffice.done(
                "ada",
                () -> PagesOffice.the(ProposalService.class)
                        .propose(new ProposeOutcome(
                                key,
                                PagesOffice.version(key),
                                DecisionOutcome.REJECT,
                                List.of(Reason.REGISTERED_LATE),
                                "Example Election Code (invented) 5.5 (2020)",
                                "The stamp is a day later.")));
    }

    private void beforeTheBoard(EnvelopeKey key, String ground) {
        PagesOffice.done(
                "ben",
                () -> PagesOffice.the(ProposalService.class).secondReview(key, PagesOffice.version(key), true, ""));
        Staff.hire(PagesOffice.primary().office().services(), "nia", Role.DECIDER);
        BoardService board = PagesOffice.the(BoardService.class);
        BoardSession called = PagesOffice.done(
                "nia",
                () -> board.callSession(new CallSession(
                        PagesOffice.ELECTION, BodyKind.BOARD, LocalDateTime.of(2026, 8, 6, 12, 0), "Room 5")));
        PagesOffice.done("nia", () -> board.open(called.key(), called.version()));
        PagesOffice.done("nia", () -> board.recordArrival(called.key(), new UserName("nia")));
        PagesOffice.done(
                "nia", () -> PagesOffice.the(AgendaService.class).addToAgenda(called.key(), List.of(key.envelopeNo())));
        pages.on(
                "board/session/" + called.key().sessionNo(),
                "nia",
                () -> assertThat(said()).contains(ground));
        pages.on("review/case/P-1027", "nia", () -> assertThat(said()).contains(ground, "Record T6142054"));
    }

    @Test
    void the_signatures_of_those_who_may_be_the_voter_are_shown_and_nobody_elses() {
        EnvelopeKey key = ofEither("P-1029");
        ExemplarService exemplars = PagesOffice.the(ExemplarService.class);
        assertThat(as("ada", () -> exemplars.ofPossibleVoter(key, AUSTIN))).isNotEmpty();
        assertThat(as("ada", () -> exemplars.ofPossibleVoter(key, NATHAN))).isNotEmpty();
        VoterId another = new VoterId(
                PagesOffice.primary().truth(PagesOffice.key("P-1042")).voterId());
        assertThat(as("ada", () -> exemplars.ofPossibleVoter(PagesOffice.key("P-1042"), another)))
                .as("of their own envelope they are")
                .isNotEmpty();
        assertThat(as("ada", () -> exemplars.ofPossibleVoter(key, another))).isEmpty();
    }
}
