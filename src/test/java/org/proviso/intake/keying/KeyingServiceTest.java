package org.proviso.intake.keying;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.refused;

import jakarta.validation.ConstraintViolationException;
import java.util.List;
import java.util.Map;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.AfterEach;
import org.proviso.access.NotPermittedException;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.Envelope.Field;
import org.proviso.core.Envelope.FieldState;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.Refusal;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.intake.IntakeService;
import org.proviso.intake.Keying;
import org.proviso.intake.LoadedOffice;
import org.proviso.intake.ReceivingService;
import org.proviso.intake.keying.KeyingResult.Keyed;
import org.proviso.intake.keying.KeyingResult.KeyedTwice;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.springframework.dao.OptimisticLockingFailureException;

/** Ines received P-2001 and keys it; Otto keys it a second time. */
class KeyingServiceTest {

    private static final String ID = LoadedOffice.ID;

    private final Keying keying = new Keying();

    @AfterEach
    void signOut() {
        Staff.signOut();
    }

    private KeyingService asInes(TestOffice office) {
        LoadedOffice.primary(office);
        Staff.hire(office, "ines", Role.INTAKE);
        Staff.hire(office, "otto", Role.INTAKE);
        Staff.signIn("ines");
        accepted(office.the(ReceivingService.class).receive(keying.receive()));
        return office.the(KeyingService.class);
    }

    private static Envelope envelope(TestOffice office) {
        return office.the(IntakeService.class)
                .envelope(new ElectionId(ID), new EnvelopeNumber(Keying.NUMBER))
                .orElseThrow();
    }

    private static SaveKeyingDraft typed(int version, String lastName) {
        return new SaveKeyingDraft(
                new ElectionId(ID),
                new EnvelopeNumber(Keying.NUMBER),
                version,
                Map.of("last_name", lastName, "date_of_birth", "03/1"));
    }

    @OnADatabase
    void what_was_typed_survives_half_a_date_and_all_and_is_the_own_persons_alone(TestOffice office) {
        KeyingService service = asInes(office);
        assertThat(service.draft(new ElectionId(ID), new EnvelopeNumber(Keying.NUMBER)))
                .isEmpty();
        assertThat(accepted(service.saveDraft(typed(0, "Ke\"l\nÅ")))).isEqualTo(1);
        assertThat(accepted(service.saveDraft(typed(1, "Kell")))).isEqualTo(2);
        assertThat(service.draft(new ElectionId(ID), new EnvelopeNumber(Keying.NUMBER)))
                .contains(new KeyingDraft(
                        new EnvelopeNumber(Keying.NUMBER),
                        Map.of("last_name", "Kell", "date_of_birth", "03/1"),
                        false,
                        2));
        Staff.signIn("otto");
        assertThat(service.draft(new ElectionId(ID), new EnvelopeNumber(Keying.NUMBER)))
                .isEmpty();
        assertThat(LoadedOffice.lastEntry(office).act()).isEqualTo("envelope_received");
    }

    @OnADatabase
    void a_save_from_an_old_page_is_refused(TestOffice office) {
        KeyingService service = asInes(office);
        accepted(service.saveDraft(typed(0, "Kell")));
        service.saveDraft(typed(1, "Kelly"));
        for (int old : new int[] {0, 1}) {
            assertThatThrownBy(() -> service.saveDraft(typed(old, "Moss")))
                    .isInstanceOf(OptimisticLockingFailureException.class)
                    .hasMessageContaining("saved from another page");
        }
        assertThat(service.draft(new ElectionId(ID), new EnvelopeNumber(Keying.NUMBER))
                        .orElseThrow()
                        .boxes())
                .containsEntry("last_name", "Kelly");
    }

    @OnADatabase
    void the_first_to_hand_in_fills_the_envelope(TestOffice office) {
        KeyingService service = asInes(office);
        keying.idLast4 = "";
        keying.states.put(Field.ID_LAST4, FieldState.LEFT_BLANK);
        keying.draftVersion = accepted(service.saveDraft(typed(0, "Kell")));
        assertThat(accepted(service.handIn(keying.finish()))).isEqualTo(new Keyed(true));
        Envelope kept = envelope(office);
        assertThat(kept.affirmation().name().listed()).isEqualTo("Kell, Ada");
        assertThat(kept.affirmation().fieldStates()).isEqualTo(Map.of(Field.ID_LAST4, FieldState.LEFT_BLANK));
        assertThat(kept.affirmation()).isEqualTo(keying.finish().affirmation().affirmation());
        assertThat(kept.handling()).isEqualTo(keying.finish().handling().handling(""));
        assertThat(kept.cast()).isEqualTo(keying.receive().envelope().cast());
        assertThat(service.waiting(new ElectionId(ID))).doesNotContain(new EnvelopeNumber(Keying.NUMBER));
        assertThat(service.draft(new ElectionId(ID), new EnvelopeNumber(Keying.NUMBER))
                        .orElseThrow()
                        .finished())
                .isTrue();
    }

    @OnADatabase
    void a_date_of_birth_that_is_none_is_kept_as_written_and_keyed_twice_like_any_box(TestOffice office) {
        KeyingService service = asInes(office);
        keying.birthDate = null;
        keying.birthDateAsWritten = "13/40/1980";
        accepted(service.handIn(keying.finish()));
        assertThat(envelope(office).affirmation().birthDate()).isNull();
        assertThat(envelope(office).affirmation().birthDateAsWritten()).isEqualTo("13/40/1980");
        Staff.signIn("otto");
        keying.birthDateAsWritten = "13/10/1980";
        KeyedTwice twice = (KeyedTwice) accepted(service.handIn(keying.finish()));
        assertThat(twice.differences()).extracting(BoxDifference::box).containsExactly("date_of_birth");
    }

    @OnADatabase
    void the_ledger_has_that_it_was_keyed_and_nobody_in_it(TestOffice office) {
        KeyingService service = asInes(office);
        accepted(service.handIn(keying.finish()));
        LedgerEntry entry = LoadedOffice.lastEntry(office);
        assertThat(entry.act()).isEqualTo("envelope_keyed");
        assertThat(entry.subject()).isEqualTo(Keying.NUMBER);
        assertThat(entry.payload()).containsEntry("boxes_changed", 0L);
        assertThat(entry.payload().get("keyed").toString()).matches("[0-9a-f]{64}");
        assertThat(entry.line()).doesNotContain("Kell");
        assertThat(office.the(LedgerService.class)
                        .verify(LedgerChain.of(new ElectionId(ID)))
                        .isWhole())
                .isTrue();
    }

    @OnADatabase
    void keyed_alike_a_second_time_it_stands(TestOffice office) {
        KeyingService service = asInes(office);
        accepted(service.handIn(keying.finish()));
        Envelope first = envelope(office);
        Staff.signIn("otto");
        assertThat(accepted(service.handIn(keying.finish()))).isEqualTo(new Keyed(false));
        assertThat(envelope(office)).isEqualTo(first);
        assertThat(LoadedOffice.lastEntry(office).act()).isEqualTo("envelope_keyed_alike");
    }

    @OnADatabase
    void keyed_otherwise_a_second_time_the_differences_are_told_and_nothing_changes(TestOffice office) {
        KeyingService service = asInes(office);
        accepted(service.handIn(keying.finish()));
        Envelope first = envelope(office);
        Staff.signIn("otto");
        keying.lastName = "Kelly";
        keying.idLast4 = "";
        keying.states.put(Field.ID_LAST4, FieldState.ILLEGIBLE);
        keying.officialNote = "came from Ward 2";
        KeyedTwice told = (KeyedTwice) accepted(service.handIn(keying.finish()));
        assertThat(told.differences())
                .containsExactly(
                        new BoxDifference("last_name", KeyedText.of("Kelly"), KeyedText.of("Kell")),
                        new BoxDifference("id_last4", new KeyedText("", FieldState.ILLEGIBLE), KeyedText.of("1234")),
                        new BoxDifference("official_note", KeyedText.of("came from Ward 2"), KeyedText.of("")));
        assertThat(envelope(office)).isEqualTo(first);
        assertThat(LoadedOffice.lastEntry(office).act()).isEqualTo("envelope_keyed");
    }

    @OnADatabase
    void whoever_has_seen_the_differences_settles_them(TestOffice office) {
        KeyingService service = asInes(office);
        accepted(service.handIn(keying.finish()));
        Staff.signIn("otto");
        keying.lastName = "Kelly";
        keying.resolves = ((KeyedTwice) accepted(service.handIn(keying.finish()))).version();
        assertThat(accepted(service.handIn(keying.finish()))).isEqualTo(new Keyed(true));
        assertThat(envelope(office).affirmation().name().last()).isEqualTo("Kelly");
        LedgerEntry entry = LoadedOffice.lastEntry(office);
        assertThat(entry.act()).isEqualTo("envelope_keyed_otherwise");
        assertThat(entry.payload()).containsEntry("boxes_changed", 1L);
    }

    @OnADatabase
    void differences_seen_before_a_third_person_changed_the_envelope_settle_nothing(TestOffice office) {
        KeyingService service = asInes(office);
        accepted(service.handIn(keying.finish()));
        Staff.signIn("otto");
        keying.lastName = "Kelly";
        keying.resolves = ((KeyedTwice) accepted(service.handIn(keying.finish()))).version();
        Staff.signIn("hugh");
        keying.lastName = "Kellie";
        assertThat(accepted(service.handIn(keying.finish()))).isEqualTo(new Keyed(true));
        Staff.signIn("otto");
        keying.lastName = "Kelly";
        KeyedTwice told = (KeyedTwice) accepted(service.handIn(keying.finish()));
        assertThat(told.differences())
                .containsExactly(new BoxDifference("last_name", KeyedText.of("Kelly"), KeyedText.of("Kellie")));
    }

    @OnADatabase
    void nobody_keys_the_own_envelope_a_second_time(TestOffice office) {
        KeyingService service = asInes(office);
        accepted(service.handIn(keying.finish()));
        keying.draftVersion = 1;
        assertThat(refused(service.handIn(keying.finish())).why()).isEqualTo(Refusal.Why.KEYED_BY_YOU);
        assertThat(refused(service.saveDraft(typed(1, "Moss"))).why()).isEqualTo(Refusal.Why.KEYED_BY_YOU);
    }

    @OnADatabase
    void an_envelope_from_the_folder_is_completed_without_losing_what_it_says(TestOffice office) {
        KeyingService service = asInes(office);
        keying.envelopeNo = new EnvelopeNumber("P-1001");
        KeyedTwice told = (KeyedTwice) accepted(service.handIn(keying.finish()));
        assertThat(told.differences()).extracting(BoxDifference::box).contains("last_name", "first_name");
        assertThat(office.the(IntakeService.class)
                        .envelope(new ElectionId(ID), new EnvelopeNumber("P-1001"))
                        .orElseThrow()
                        .affirmation()
                        .name()
                        .last())
                .isEqualTo("Okafor");
        keying.resolves = told.version();
        accepted(service.handIn(keying.finish()));
        assertThat(office.the(IntakeService.class)
                        .envelope(new ElectionId(ID), new EnvelopeNumber("P-1001"))
                        .orElseThrow()
                        .handling()
                        .signatureImage())
                .isEqualTo("signatures/envelopes/P-1001.png");
    }

    @OnADatabase
    void an_empty_box_says_why(TestOffice office) {
        KeyingService service = asInes(office);
        keying.lastName = " ";
        assertThatThrownBy(() -> service.handIn(keying.finish()))
                .isInstanceOf(ConstraintViolationException.class)
                .hasMessageContaining("a box that is empty says why");
        keying.states.put(Field.LAST_NAME, FieldState.NOT_YET_KEYED);
        assertThatThrownBy(() -> service.handIn(keying.finish())).isInstanceOf(ConstraintViolationException.class);
        keying.states.put(Field.LAST_NAME, FieldState.REFUSED);
        assertThat(accepted(service.handIn(keying.finish()))).isEqualTo(new Keyed(true));
    }

    @OnADatabase
    void an_envelope_that_never_came_is_refused_by_its_number(TestOffice office) {
        KeyingService service = asInes(office);
        keying.envelopeNo = new EnvelopeNumber("P-9999");
        assertThatThrownBy(() -> service.handIn(keying.finish()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("\"P-9999\"");
        assertThatThrownBy(() -> service.saveDraft(
                        new SaveKeyingDraft(new ElectionId(ID), new EnvelopeNumber("P-9999"), 0, Map.of())))
                .hasMessageContaining("\"P-9999\"");
    }

    @OnADatabase
    void a_decider_keys_nothing(TestOffice office) {
        KeyingService service = asInes(office);
        Staff.hire(office, "dora", Role.DECIDER);
        Staff.signIn("dora");
        List<ThrowingCallable> acts = List.of(
                () -> service.handIn(keying.finish()),
                () -> service.saveDraft(typed(0, "Kell")),
                () -> service.draft(new ElectionId(ID), new EnvelopeNumber(Keying.NUMBER)),
                () -> service.envelope(new ElectionId(ID), new EnvelopeNumber(Keying.NUMBER)),
                () -> service.waiting(new ElectionId(ID)));
        acts.forEach(act -> assertThatThrownBy(act).isInstanceOf(NotPermittedException.class));
    }
}
