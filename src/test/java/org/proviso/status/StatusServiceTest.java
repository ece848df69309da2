package org.proviso.status;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.journey.Office.as;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import org.proviso.access.NotPermittedException;
import org.proviso.core.CheckedReceipt.Problem;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.UserName;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.core.rules.Ask;
import org.proviso.database.OfficeTime;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.intake.IntakeService;
import org.proviso.journey.Deciding;
import org.proviso.journey.Primary;
import org.proviso.review.acts.ConfirmLink;
import org.proviso.review.acts.LinkService;
import org.proviso.roll.RollService;

/** The sample primary of August 4, 2026, loaded at noon of the next day; the board sits the day after. */
class StatusServiceTest {

    private static final LocalDateTime NOON = LocalDateTime.of(2026, 8, 5, 12, 0);
    static final LocalDateTime DECIDING = LocalDateTime.of(2026, 8, 6, 12, 0);
    private static final EnvelopeKey NO_BIRTH_DATE =
            new EnvelopeKey(new ElectionId(Primary.ID), new EnvelopeNumber("P-1049"));

    static Primary loaded(TestOffice services) {
        OfficeTime.set(services, NOON);
        return Primary.loaded(services);
    }

    static Envelope envelope(Primary primary, EnvelopeKey key) {
        return primary.office()
                .the(IntakeService.class)
                .envelope(key.electionId(), key.envelopeNo())
                .orElseThrow();
    }

    static LookupResult look(Primary primary, ReceiptNumber receiptNo, LocalDate born) {
        return primary.office().the(StatusService.class).lookUp(receiptNo, born);
    }

    static LookupResult.Found own(Primary primary, EnvelopeKey key) {
        Envelope envelope = envelope(primary, key);
        return (LookupResult.Found)
                look(primary, envelope.receiptNo(), envelope.affirmation().birthDate());
    }

    private static List<Map<String, Object>> table(TestOffice services) {
        return services.jdbc()
                .sql("select * from status_line order by key_hash")
                .query()
                .listOfRows();
    }

    @OnADatabase
    void nothing_is_told_of_how_a_case_may_end_before_it_is_decided(TestOffice services) {
        Primary primary = loaded(services);
        EnvelopeKey key = primary.envelope("registered_late");
        LookupResult.Found before = own(primary, key);
        OfficeTime.set(services, DECIDING);
        primary.reviewing(key).work();
        assertThat(own(primary, key)).isEqualTo(before);
        assertThat(before.state()).isEqualTo(VoterCaseState.UNDER_REVIEW);
        assertThat(before.reasons()).isEmpty();
    }

    @OnADatabase
    void a_decision_is_told_with_its_reason_in_plain_words_and_taken_back_when_reopened(TestOffice services) {
        Primary primary = loaded(services);
        EnvelopeKey key = primary.envelope("registered_late");
        OfficeTime.set(services, DECIDING);
        Deciding deciding = new Deciding(primary);
        deciding.settled(key);
        LookupResult.Found decided = own(primary, key);
        assertThat(decided.state()).isEqualTo(VoterCaseState.REJECTED);
        assertThat(decided.reasons())
                .extracting(OwnReason::words)
                .containsExactly("You registered after the last day to register for this election.");
        assertThat(decided.changedAt()).isEqualTo(DECIDING);
        deciding.reopened(key);
        assertThat(own(primary, key).state()).isEqualTo(VoterCaseState.UNDER_REVIEW);
        assertThat(own(primary, key).reasons()).isEmpty();
    }

    @OnADatabase
    void each_end_has_its_state(TestOffice services) {
        Primary primary = loaded(services);
        OfficeTime.set(services, DECIDING);
        Deciding deciding = new Deciding(primary);
        EnvelopeKey whole = primary.envelope("in_order");
        EnvelopeKey part = primary.envelope("wrong_split");
        deciding.settled(whole);
        deciding.settled(part);
        EnvelopeKey sentOn = primary.envelope("other_county");
        EnvelopeKey ended = primary.envelope("withdrawn");
        primary.reviewing(sentOn).work();
        primary.reviewing(ended).work();
        assertThat(own(primary, whole).state()).isEqualTo(VoterCaseState.COUNTED);
        assertThat(own(primary, part).state()).isEqualTo(VoterCaseState.COUNTED_IN_PART);
        assertThat(own(primary, part).reasons()).isNotEmpty();
        assertThat(own(primary, sentOn).state()).isEqualTo(VoterCaseState.SENT_ON);
        assertThat(own(primary, ended).state()).isEqualTo(VoterCaseState.NOT_VOTED);
    }

    @OnADatabase
    void a_voter_who_may_bring_something_reads_what_and_until_when(TestOffice services) {
        Primary primary = loaded(services);
        LookupResult.Found own = own(primary, primary.envelope("no_id"));
        assertThat(own.state()).isEqualTo(VoterCaseState.WAITS_FOR_YOU);
        assertThat(own.asks()).containsExactly(new VoterAsk(Ask.IDENTIFICATION, LocalDateTime.of(2026, 8, 11, 17, 0)));
        assertThat(own.papers()).isEqualTo(new LaterIdentification(false, true, List.of(), List.of()));
        assertThat(own.election().office().phone()).isEqualTo("555-0100");
    }

    @OnADatabase
    void a_wrong_number_and_a_wrong_date_get_the_same_answer(TestOffice services) {
        Primary primary = loaded(services);
        Envelope envelope = envelope(primary, primary.envelope("in_order"));
        LocalDate born = envelope.affirmation().birthDate();
        LookupResult nothing = new LookupResult.NothingFits(null);
        assertThat(look(
                        primary,
                        new ReceiptNumber(
                                ReceiptNumber.text(envelope.receiptNo()).toLowerCase()),
                        born))
                .isInstanceOf(LookupResult.Found.class);
        assertThat(look(primary, envelope.receiptNo(), born.plusDays(1))).isEqualTo(nothing);
        assertThat(look(primary, new ReceiptNumber("AAAA-AAAA"), born)).isEqualTo(nothing);
        assertThat(look(primary, new ReceiptNumber("1111-2222-2"), born)).isEqualTo(nothing);
        assertThat(look(primary, new ReceiptNumber("-"), LocalDate.of(1900, 1, 1)))
                .isEqualTo(new LookupResult.NothingFits(Problem.NOT_NINE_DIGITS));
    }

    @OnADatabase
    void without_a_birth_date_nothing_can_be_looked_up_until_a_person_settles_who_it_is(TestOffice services) {
        Primary primary = loaded(services);
        ReceiptNumber receipt = envelope(primary, NO_BIRTH_DATE).receiptNo();
        Voter voter = primary.office()
                .the(RollService.class)
                .voter(
                        new ElectionId(Primary.ID),
                        new VoterId(primary.truth(NO_BIRTH_DATE).voterId()))
                .orElseThrow();
        assertThat(look(primary, receipt, voter.birthDate())).isEqualTo(new LookupResult.NothingFits(null));
        OfficeTime.set(services, DECIDING);
        confirm(primary, NO_BIRTH_DATE, voter.voterId());
        assertThat(look(primary, receipt, voter.birthDate())).isInstanceOf(LookupResult.Found.class);
    }

    @OnADatabase
    void a_line_under_a_birth_date_that_no_longer_holds_goes(TestOffice services) {
        Primary primary = loaded(services);
        OfficeTime.set(services, DECIDING);
        ReceiptNumber receipt = envelope(primary, NO_BIRTH_DATE).receiptNo();
        RollService roll = primary.office().the(RollService.class);
        Voter right = roll.voter(
                        new ElectionId(Primary.ID),
                        new VoterId(primary.truth(NO_BIRTH_DATE).voterId()))
                .orElseThrow();
        Voter wrong = roll.roll(new ElectionId(Primary.ID)).stream()
                .filter(voter -> !voter.voterId().equals(right.voterId()))
                .findFirst()
                .orElseThrow();
        primary.taken(NO_BIRTH_DATE, new UserName("ada"));
        link(primary, NO_BIRTH_DATE, wrong.voterId());
        assertThat(look(primary, receipt, wrong.birthDate())).isInstanceOf(LookupResult.Found.class);
        link(primary, NO_BIRTH_DATE, right.voterId());
        assertThat(look(primary, receipt, wrong.birthDate())).isEqualTo(new LookupResult.NothingFits(null));
        assertThat(look(primary, receipt, right.birthDate())).isInstanceOf(LookupResult.Found.class);
    }

    static void confirm(Primary primary, EnvelopeKey key, VoterId voterId) {
        primary.taken(key, new UserName("ada"));
        link(primary, key, voterId);
    }

    private static void link(Primary primary, EnvelopeKey key, VoterId voterId) {
        as(
                "ada",
                () -> primary.office()
                        .the(LinkService.class)
                        .confirm(new ConfirmLink(key, primary.now(key).version(), voterId, "Compared by hand.")));
    }

    @OnADatabase
    void rebuilt_the_table_is_the_same_row_by_row_and_nothing_was_assessed(TestOffice services) {
        Primary primary = loaded(services);
        OfficeTime.set(services, DECIDING);
        new Deciding(primary).settled(primary.envelope("registered_late"));
        new Deciding(primary).settled(primary.envelope("in_order"));
        primary.reviewing(primary.envelope("other_county")).work();
        List<Map<String, Object>> projected = table(services);
        long assessments = assessments(services);
        services.jdbc()
                .sql(
                        "insert into status_line select repeat('a', 64), repeat('b', 64), repeat('c', 64), election_id, state,"
                                + " reasons, asks, source, voting_location, cast_on, sealed, registration_found, changed_at"
                                + " from status_line where key_hash = ?")
                .param(projected.get(0).get("key_hash"))
                .update();
        OfficeTime.set(services, DECIDING.plusHours(1));
        int rows = accepted(
                as("carl", () -> primary.office().the(StatusService.class).rebuild(new ElectionId(Primary.ID))));
        assertThat(rows).isEqualTo(projected.size());
        assertThat(table(services)).isEqualTo(projected);
        assertThat(assessments(services)).isEqualTo(assessments);
    }

    @OnADatabase
    void a_table_that_was_lost_comes_back_but_for_since_when_undecided_lines_read_so(TestOffice services) {
        Primary primary = loaded(services);
        OfficeTime.set(services, DECIDING);
        new Deciding(primary).settled(primary.envelope("registered_late"));
        LookupResult.Found decided = own(primary, primary.envelope("registered_late"));
        List<Map<String, Object>> projected = table(services);
        services.jdbc().sql("delete from status_line").update();
        OfficeTime.set(services, DECIDING.plusHours(1));
        as("carl", () -> primary.office().the(StatusService.class).rebuild(new ElectionId(Primary.ID)));
        List<Map<String, Object>> rebuilt = table(services);
        projected.forEach(row -> row.remove("changed_at"));
        rebuilt.forEach(row -> row.remove("changed_at"));
        assertThat(rebuilt).isEqualTo(projected);
        assertThat(own(primary, primary.envelope("registered_late"))).isEqualTo(decided);
    }

    private static long assessments(TestOffice services) {
        return services.jdbc()
                .sql("select count(*) from assessment")
                .query(Long.class)
                .single();
    }

    @OnADatabase
    void only_a_supervisor_rebuilds(TestOffice services) {
        Primary primary = loaded(services);
        StatusService status = primary.office().the(StatusService.class);
        assertThatThrownBy(() -> as("ada", () -> status.rebuild(new ElectionId(Primary.ID))))
                .isInstanceOf(NotPermittedException.class);
        assertThatThrownBy(() -> status.rebuild(new ElectionId(Primary.ID))).isInstanceOf(NotPermittedException.class);
    }

    /** As it would stand in a row; what no row has where the voter wrote none. */
    private static String born(Envelope envelope) {
        LocalDate born = envelope.affirmation().birthDate();
        return born == null ? "no date" : born.toString();
    }

    @OnADatabase
    void the_table_says_nobodys_name_number_or_date(TestOffice services) {
        Primary primary = loaded(services);
        String everything = table(services).toString();
        assertThat(everything).contains("waits_for_you");
        for (Envelope envelope : primary.office().the(IntakeService.class).envelopes(new ElectionId(Primary.ID))) {
            assertThat(everything)
                    .doesNotContain(
                            ReceiptNumber.text(envelope.receiptNo()),
                            envelope.envelopeNo().value(),
                            born(envelope),
                            "=" + envelope.affirmation().name().last());
        }
    }
}
