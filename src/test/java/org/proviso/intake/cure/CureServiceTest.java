package org.proviso.intake.cure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.refused;
import static org.proviso.journey.Office.as;

import jakarta.validation.ConstraintViolationException;
import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.AfterEach;
import org.proviso.access.NotPermittedException;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.canvass.replay.ElectionReplayService;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.Refusal;
import org.proviso.core.adjudication.finding.CureEvidence;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.rules.Ask;
import org.proviso.database.OnADatabase;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionService;
import org.proviso.intake.CureStore;
import org.proviso.intake.IntakeService;
import org.proviso.intake.LoadedOffice;
import org.proviso.intake.RecordCure;
import org.proviso.intake.desk.CureLookupService;
import org.proviso.journey.Primary;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.CaseState;
import org.proviso.review.assess.AssessmentService;

/** It is three months after the samples' primary of August 4; the envelope was cast at 7:53 that morning. */
class CureServiceTest {

    private static final String ID = LoadedOffice.ID;
    private static final String ENVELOPE = "P-1001";
    private static final ZoneId COUNTY = ZoneId.of("America/Detroit");
    private static final LocalDateTime CAST = LocalDateTime.of(2026, 8, 4, 7, 53);
    private static final LocalDateTime STAMP = LocalDateTime.of(2026, 8, 6, 16, 59);

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    private static CureService asClerk(TestOffice office) {
        LoadedOffice.primary(office);
        Staff.hire(office, "ines", Role.INTAKE);
        Staff.signIn("ines");
        return office.the(CureService.class);
    }

    private static RecordCure brought(String envelope, LocalDateTime stamp) {
        return new RecordCure(
                new ElectionId(ID),
                new EnvelopeNumber(envelope),
                Ask.IDENTIFICATION,
                stamp,
                "State ID of Craig Okafor");
    }

    private static List<CureEvidence> evidence(TestOffice office) {
        return office.the(IntakeService.class).cureEvidence(new ElectionId(ID), new EnvelopeNumber(ENVELOPE), COUNTY);
    }

    @OnADatabase
    void what_was_brought_is_kept_in_its_order_with_stamp_and_keying(TestOffice office) {
        CureService cures = asClerk(office);
        accepted(cures.record(brought(ENVELOPE, STAMP)));
        cures.record(brought(ENVELOPE, CAST));
        LocalDateTime now = LocalDateTime.of(2026, 11, 3, 22, 0);
        assertThat(evidence(office))
                .containsExactly(
                        new CureEvidence(Ask.IDENTIFICATION, STAMP, now, "State ID of Craig Okafor"),
                        new CureEvidence(Ask.IDENTIFICATION, CAST, now, "State ID of Craig Okafor"));
    }

    @OnADatabase
    void a_stamp_in_time_that_is_keyed_months_later_stays_in_time(TestOffice office) {
        accepted(asClerk(office).record(brought(ENVELOPE, STAMP)));
        assertThat(evidence(office)).singleElement().satisfies(cure -> {
            assertThat(cure.receivedAt()).isEqualTo(STAMP);
            assertThat(cure.recordedAt()).isEqualTo(LocalDateTime.of(2026, 11, 3, 22, 0));
        });
    }

    @OnADatabase
    void the_ledger_has_ask_and_stamp_and_nobody_in_it(TestOffice office) {
        accepted(asClerk(office).record(brought(ENVELOPE, STAMP)));
        LedgerEntry entry = LoadedOffice.lastEntry(office);
        assertThat(entry.act()).isEqualTo("cure_recorded");
        assertThat(entry.subject()).isEqualTo(ENVELOPE);
        assertThat(entry.payload())
                .containsEntry("ask", "identification")
                .containsEntry("received_at", "2026-08-06T16:59");
        assertThat(entry.payload().get("words").toString()).matches("[0-9a-f]{64}");
        assertThat(entry.line()).doesNotContain("Okafor");
        assertThat(office.the(LedgerService.class)
                        .verify(LedgerChain.of(new ElectionId(ID)))
                        .isWhole())
                .isTrue();
    }

    @OnADatabase
    void the_other_rooms_hear_of_it_in_the_same_transaction(TestOffice office) {
        asClerk(office);
        List<Object> heard = new ArrayList<>();
        CureService heardOf = new CureService(
                office.the(CureStore.class),
                office.the(IntakeService.class),
                office.the(ElectionService.class),
                Staff.door(office, event -> {
                    heard.add(event);
                    throw new IllegalStateException("a later room cannot take it");
                }),
                office.the(Clock.class));
        assertThatThrownBy(() -> office.inTransaction(() -> {
                    heardOf.record(brought(ENVELOPE, STAMP));
                    return heardOf;
                }))
                .hasMessage("a later room cannot take it");
        assertThat(heard).containsExactly(new CureRecorded(new ElectionId(ID), new EnvelopeNumber(ENVELOPE)));
        assertThat(evidence(office)).isEmpty();
    }

    @OnADatabase
    void a_stamp_of_tomorrow_or_from_before_the_ballot_was_cast_is_refused(TestOffice office) {
        CureService cures = asClerk(office);
        Refusal tomorrow = refused(cures.record(brought(ENVELOPE, LocalDateTime.of(2026, 11, 3, 22, 1))));
        assertThat(tomorrow)
                .returns(Refusal.Why.MOMENT_NOT_POSSIBLE, Refusal::why)
                .returns("receivedAt", Refusal::field);
        assertThat(tomorrow.words()).contains("11/03/2026 10:01 pm, is later than now");
        Refusal before = refused(cures.record(brought(ENVELOPE, CAST.minusMinutes(1))));
        assertThat(before.why()).isEqualTo(Refusal.Why.MOMENT_NOT_POSSIBLE);
        assertThat(before.words()).contains("earlier than the ballot of P-1001, cast at 08/04/2026 7:53 am");
        accepted(cures.record(brought(ENVELOPE, LocalDateTime.of(2026, 11, 3, 22, 0))));
        assertThat(evidence(office)).hasSize(1);
    }

    @OnADatabase
    void an_envelope_that_is_not_in_the_office_is_refused_by_name(TestOffice office) {
        CureService cures = asClerk(office);
        assertThatThrownBy(() -> cures.record(brought("P-9999", STAMP)))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("\"P-9999\"");
    }

    @OnADatabase
    void what_is_left_out_is_named(TestOffice office) {
        CureService cures = asClerk(office);
        assertThatThrownBy(() -> cures.record(
                        new RecordCure(new ElectionId(ID), new EnvelopeNumber(ENVELOPE), Ask.SIGNATURE, STAMP, " ")))
                .isInstanceOf(ConstraintViolationException.class)
                .hasMessageContaining("words");
    }

    @OnADatabase
    void a_decider_records_nothing_that_a_voter_brings(TestOffice office) {
        CureService cures = asClerk(office);
        Staff.hire(office, "dora", Role.DECIDER, Role.OBSERVER);
        Staff.signIn("dora");
        assertThatThrownBy(() -> cures.record(brought(ENVELOPE, STAMP))).isInstanceOf(NotPermittedException.class);
        assertThat(evidence(office)).isEmpty();
    }

    @OnBothDatabases
    void evidence_on_the_wrong_envelope_is_taken_back_and_counts_no_more(TestOffice office) {
        Primary primary = Primary.loaded(office);
        EnvelopeKey key = primary.envelope("no_id");
        primary.at(2, 12, 0);
        assertThat(primary.reviewing(key).work()).isEqualTo(Recommendation.WAIT_FOR_THE_VOTER);
        LocalDateTime stamp = primary.day().plusDays(1).atTime(9, 30);
        CureService cures = office.the(CureService.class);
        as(
                "jon",
                () -> accepted(cures.record(new RecordCure(
                        key.electionId(), key.envelopeNo(), Ask.IDENTIFICATION, stamp, "State ID of Maud Kell"))));
        AssessmentService assessments = office.the(AssessmentService.class);
        assertThat(assessments.latest(key).orElseThrow().recommendation()).isEqualTo(Recommendation.COUNT);
        primary.reviewing(key).work();
        assertThat(primary.now(key).state()).isEqualTo(CaseState.READY);
        TakeBackCure slip =
                new TakeBackCure(key.electionId(), key.envelopeNo(), 1, "It belongs to the envelope of Maud Kell.");
        as("jon", () -> accepted(cures.takeBack(slip)));
        assertThat(assessments.latest(key).orElseThrow().recommendation()).isEqualTo(Recommendation.WAIT_FOR_THE_VOTER);
        assertThat(primary.now(key).state()).as("the proposal rested on it").isEqualTo(CaseState.OPEN);
        assertThat(as("jon", () -> office.the(CureLookupService.class).brought(key.electionId(), key.envelopeNo())))
                .singleElement()
                .satisfies(paper -> assertThat(paper.takenBack()).isTrue())
                .satisfies(
                        paper -> assertThat(paper.words()).contains("State ID of Maud Kell", "Taken back: It belongs"));
        Refusal again = as("jon", () -> refused(cures.takeBack(slip)));
        assertThat(again.words()).isEqualTo("This evidence was taken back already.");
        List<LedgerEntry> entries =
                office.the(LedgerService.class).about(LedgerChain.of(key.electionId()), key.envelopeNo());
        assertThat(entries).extracting(LedgerEntry::act).contains("cure_recorded", "recalled", "cure_taken_back");
        assertThat(entries.get(entries.size() - 1))
                .returns("cure_taken_back", LedgerEntry::act)
                .satisfies(entry -> assertThat(entry.line()).doesNotContain("Maud Kell"));
        assertThat(office.the(ElectionReplayService.class)
                        .replay(key.electionId())
                        .compared())
                .allSatisfy(compared -> assertThat(compared.first()).isEmpty());
        office.jdbc().sql("update cure_taken_back set because = 'another'").update();
        assertThat(office.the(CureReplay.class).replay(key.electionId()).first())
                .singleElement()
                .asString()
                .contains("taken back by");
    }
}
