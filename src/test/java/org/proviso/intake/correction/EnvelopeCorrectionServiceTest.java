package org.proviso.intake.correction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.refused;
import static org.proviso.journey.Office.as;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.proviso.canvass.replay.ElectionReplayService;
import org.proviso.core.Address;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.VoterId;
import org.proviso.core.YesNo;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.intake.IntakeService;
import org.proviso.intake.Keying;
import org.proviso.intake.ReceivingService;
import org.proviso.journey.Primary;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.CaseState;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.WorkedPrimary;
import org.proviso.review.acts.ConfirmLink;
import org.proviso.review.acts.LinkService;
import org.proviso.review.acts.RecordSearch;
import org.proviso.review.acts.SearchService;
import org.proviso.review.facts.LinkStore;
import org.proviso.review.facts.OffRollReason;
import org.proviso.review.facts.SearchFound;
import org.proviso.review.facts.SearchPlace;
import org.springframework.dao.OptimisticLockingFailureException;

/** Jon corrects what was received and keyed; whatever rests on it is looked at again. */
class EnvelopeCorrectionServiceTest {

    private static final ElectionId ID = new ElectionId(Primary.ID);

    private static CorrectableEnvelope seen(TestOffice office, EnvelopeKey key) {
        return as(
                "jon",
                () -> office.the(EnvelopeCorrectionService.class)
                        .find(key.electionId(), key.envelopeNo())
                        .orElseThrow());
    }

    private static CorrectionDraft draft(TestOffice office, EnvelopeKey key) {
        return new CorrectionDraft(ID, seen(office, key));
    }

    private static ActResult<?> correct(TestOffice office, CorrectionDraft draft) {
        return as("jon", () -> office.the(EnvelopeCorrectionService.class).correct(draft.command()));
    }

    private static void corrected(TestOffice office, EnvelopeKey key, Consumer<CorrectionDraft> change) {
        CorrectionDraft draft = draft(office, key);
        change.accept(draft);
        accepted(correct(office, draft));
    }

    private static Envelope envelope(TestOffice office, EnvelopeKey key) {
        return office.the(IntakeService.class)
                .envelope(key.electionId(), key.envelopeNo())
                .orElseThrow();
    }

    private static Link link(TestOffice office, EnvelopeKey key) {
        return office.the(LinkStore.class).newest(key).orElseThrow();
    }

    private static List<LedgerEntry> entries(TestOffice office, EnvelopeKey key) {
        return office.the(LedgerService.class).about(LedgerChain.of(ID), key.envelopeNo());
    }

    private static void assertWhole(TestOffice office) {
        assertThat(office.the(ElectionReplayService.class).replay(ID).compared())
                .allSatisfy(compared -> assertThat(compared.first()).isEmpty());
    }

    @OnBothDatabases
    void both_texts_and_the_reason_are_kept_and_the_ledger_names_nobody(TestOffice office) {
        Primary primary = Primary.loaded(office);
        EnvelopeKey key = primary.envelope("in_order");
        Envelope before = envelope(office, key);
        corrected(office, key, draft -> {
            draft.votingLocation = "Depot Street Library";
            draft.extendedHours = YesNo.YES;
            draft.issueReasons = Set.of("moved", "no_id");
            draft.phone = "555-0100";
            draft.because = "The poll book says Depot Street.";
        });
        Envelope now = envelope(office, key);
        assertThat(now.cast().votingLocation()).isEqualTo("Depot Street Library");
        assertThat(now.cast().extendedHours()).isEqualTo(YesNo.YES);
        assertThat(now.cast().issueReasons()).containsExactlyInAnyOrder("moved", "no_id");
        assertThat(now.affirmation().phone()).isEqualTo("555-0100");
        assertThat(now.affirmation().name()).isEqualTo(before.affirmation().name());
        assertThat(seen(office, key).corrections()).singleElement().satisfies(correction -> {
            assertThat(correction.was())
                    .containsEntry("voting_location", before.cast().votingLocation())
                    .containsEntry("phone", before.affirmation().phone())
                    .containsOnlyKeys("extended_hours", "issue_reasons", "phone", "voting_location");
            assertThat(correction.became())
                    .containsEntry("voting_location", "Depot Street Library")
                    .containsEntry("issue_reasons", "moved;no_id");
            assertThat(correction.because()).isEqualTo("The poll book says Depot Street.");
            assertThat(correction.by()).isEqualTo("jon");
        });
        List<LedgerEntry> entries = entries(office, key);
        LedgerEntry entry = entries.get(entries.size() - 1);
        assertThat(entry.act()).isEqualTo("envelope_corrected");
        assertThat(entry.payload())
                .containsEntry("voting_location", "Depot Street Library")
                .containsEntry("boxes", List.of("extended_hours", "issue_reasons", "phone", "voting_location"));
        assertThat(List.of("was", "became", "because"))
                .allSatisfy(name ->
                        assertThat(String.valueOf(entry.payload().get(name))).matches("[0-9a-f]{64}"));
        assertThat(entry.line()).doesNotContain("555-0100", "poll book");
        assertWhole(office);
        office.jdbc()
                .sql("update envelope_correction set because = 'another' where envelope_no = ?")
                .param(key.envelopeNo())
                .update();
        office.jdbc()
                .sql("update envelope set extended_hours = 'no' where envelope_no = ?")
                .param(key.envelopeNo())
                .update();
        assertThat(office.the(CorrectionReplay.class).replay(ID).first())
                .hasSize(2)
                .anyMatch(line -> line.contains("extended_hours"))
                .anyMatch(line -> line.contains("correction 1"));
    }

    @OnBothDatabases
    void what_cannot_be_is_refused_and_what_somebody_changed_meanwhile_is_told(TestOffice office) {
        Primary primary = Primary.loaded(office);
        EnvelopeKey key = primary.envelope("in_order");
        CorrectionDraft draft = draft(office, key);
        assertThat(refused(correct(office, draft)).why()).isEqualTo(Why.NOTHING_NEW);
        draft.votingLocation = "Nowhere Hall";
        assertThat(refused(correct(office, draft)))
                .returns(Why.MISTYPED, Refusal::why)
                .returns("votingLocation", Refusal::field);
        draft.votingLocation = "Depot Street Library";
        draft.style = "T99-Z";
        assertThat(refused(correct(office, draft)).why()).isEqualTo(Why.NO_SUCH_STYLE);
        corrected(office, key, other -> other.phone = "555-0101");
        assertThatThrownBy(() -> correct(office, draft))
                .isInstanceOf(OptimisticLockingFailureException.class)
                .hasMessageContaining("changed by somebody else");
        assertThat(envelope(office, key).affirmation().phone()).isEqualTo("555-0101");
    }

    @OnBothDatabases
    void of_an_envelope_not_keyed_yet_only_what_was_received_is_corrected(TestOffice office) {
        Primary.loaded(office);
        Keying keying = new Keying();
        as("jon", () -> accepted(office.the(ReceivingService.class).receive(keying.receive())));
        EnvelopeKey key = new EnvelopeKey(ID, keying.envelopeNo);
        CorrectionDraft draft = draft(office, key);
        draft.votingLocation = "Depot Street Library";
        draft.keyed = false;
        accepted(correct(office, draft));
        assertThat(envelope(office, key).cast().votingLocation()).isEqualTo("Depot Street Library");
        assertThat(seen(office, key).keyed()).isEmpty();
        assertWhole(office);
    }

    @OnBothDatabases
    void a_proposal_that_rests_on_what_was_wrong_goes_back_to_the_reviewers(TestOffice office) {
        Primary primary = Primary.loaded(office);
        EnvelopeKey key = primary.envelope("in_order");
        assertThat(primary.reviewing(key).work()).isEqualTo(Recommendation.COUNT);
        assertThat(primary.now(key).state()).isEqualTo(CaseState.READY);
        corrected(office, key, draft -> draft.phone = "555-0102");
        assertThat(primary.now(key).state()).as("nothing rests on a phone").isEqualTo(CaseState.READY);
        corrected(office, key, draft -> draft.voterSigned = Envelope.VoterSignature.NO);
        assertThat(primary.now(key).state()).isEqualTo(CaseState.OPEN);
        assertThat(entries(office, key)).extracting(LedgerEntry::act).contains("recalled");
        assertWhole(office);
    }

    @OnBothDatabases
    void a_confirmed_voter_whom_the_right_name_does_not_fit_is_settled_anew(TestOffice office) {
        Primary primary = Primary.loaded(office);
        EnvelopeKey key = primary.envelope("in_order");
        primary.reviewing(key).work();
        VoterId first = link(office, key).voterId();
        corrected(office, key, draft -> draft.phone = "555-0103");
        assertThat(link(office, key).identity()).isEqualTo(VoterIdentityFact.CONFIRMED);
        corrected(office, key, draft -> {
            draft.lastName = "Zzyzx";
            draft.firstName = "Quillan";
            draft.birthDate = LocalDate.of(1931, 1, 2);
            draft.residence = new Address("9 Nowhere Rd", "", "Otherton", "10001");
            draft.idLast4 = "0000";
        });
        Link now = link(office, key);
        assertThat(now.isSettled()).isFalse();
        assertThat(now.voterId()).isNotEqualTo(first);
        assertThat(primary.now(key)).returns(null, EnvelopeCase::personId).returns(CaseState.OPEN, EnvelopeCase::state);
        assertThat(entries(office, key)).extracting(LedgerEntry::act).contains("recalled", "link_set_back");
        assertThat(entries(office, key))
                .filteredOn(entry -> entry.act().equals("link_set_back"))
                .singleElement()
                .satisfies(entry -> assertThat(entry.payload().get("voided").toString())
                        .as("the signature was compared with another voter's")
                        .contains("signature"));
        assertWhole(office);
    }

    @OnBothDatabases
    void a_search_that_found_nobody_is_done_again_by_the_right_name(TestOffice office) {
        Primary primary = Primary.loaded(office);
        EnvelopeKey key = primary.envelope("in_order");
        VoterId voter = link(office, key).voterId();
        Envelope right = envelope(office, key);
        corrected(office, key, draft -> {
            draft.lastName = "Zzyzx";
            draft.firstName = "Quillan";
            draft.birthDate = LocalDate.of(1931, 1, 2);
            draft.residence = new Address("9 Nowhere Rd", "", "Otherton", "10001");
        });
        primary.taken(key, new UserName("ada"));
        as(
                "ada",
                () -> accepted(office.the(SearchService.class)
                        .record(new RecordSearch(
                                key,
                                primary.now(key).version(),
                                EnumSet.allOf(SearchPlace.class),
                                SearchFound.NOTHING,
                                OffRollReason.NOT_ON_THE_ROLL,
                                null,
                                ""))));
        assertThat(link(office, key).identity()).isEqualTo(VoterIdentityFact.NOT_ON_ROLL);
        corrected(office, key, draft -> {
            draft.lastName = right.affirmation().name().last();
            draft.firstName = right.affirmation().name().first();
            draft.birthDate = right.affirmation().birthDate();
            draft.residence = right.affirmation().residence();
        });
        assertThat(link(office, key))
                .returns(VoterIdentityFact.PRESUMED, Link::identity)
                .returns(voter, Link::voterId);
        assertWhole(office);
        as(
                "ada",
                () -> accepted(office.the(LinkService.class)
                        .confirm(new ConfirmLink(key, primary.now(key).version(), voter, ""))));
        assertWhole(office);
    }

    @OnBothDatabases
    void a_settled_case_is_reopened_first(TestOffice office) {
        WorkedPrimary worked = WorkedPrimary.in(office);
        EnvelopeKey key = worked.decidedAs(DecisionOutcome.COUNT);
        CorrectionDraft draft = draft(office, key);
        draft.phone = "555-0104";
        Refusal decided = refused(correct(office, draft));
        assertThat(decided.why()).isEqualTo(Why.NOT_IN_THIS_STATE);
        assertThat(decided.words())
                .isEqualTo("The case of " + key.envelopeNo()
                        + " is decided. Ask the decider to reopen it first. A reopened case leaves its sealed batch.");
        assertThat(seen(office, key).inTheWay()).isEqualTo(decided.words());
        assertThat(entries(office, key)).extracting(LedgerEntry::act).doesNotContain("envelope_corrected");
    }
}
