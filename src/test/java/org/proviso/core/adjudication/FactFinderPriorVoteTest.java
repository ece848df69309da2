package org.proviso.core.adjudication;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.proviso.core.CheckIn;
import org.proviso.core.Envelope;
import org.proviso.core.MailBallot;
import org.proviso.core.PersonName;
import org.proviso.core.VotedElsewhere;
import org.proviso.core.VoterId;
import org.proviso.core.YesNo;
import org.proviso.core.adjudication.facts.Fact;

class FactFinderPriorVoteTest {

    private static final LocalDateTime MORNING = LocalDateTime.of(2026, 11, 3, 8, 0);

    private final SmallCase small = new SmallCase();

    @Test
    void knows_that_no_mail_ballot_was_sent() {
        assertThat(small.word(Fact.MAIL_BALLOTS)).isEmpty();
        assertThat(small.evidence(Fact.MAIL_BALLOTS)).isEqualTo("No mail ballot was sent to this voter.");
    }

    @ParameterizedTest
    @EnumSource(MailBallot.State.class)
    void takes_each_state_of_a_mail_ballot_as_the_mail_desk_gives_it(MailBallot.State state) {
        mail("S1", state);
        assertThat(small.word(Fact.MAIL_BALLOTS)).isEqualTo(state.code());
    }

    @Test
    void keeps_each_serial_of_a_reissued_ballot() {
        mail("S1", MailBallot.State.VOID);
        mail("S2", MailBallot.State.ACCEPTED);
        assertThat(small.word(Fact.MAIL_BALLOTS)).isEqualTo("accepted+void");
        assertThat(small.evidence(Fact.MAIL_BALLOTS)).contains("Mail ballot S1", "Mail ballot S2", "(10/30/2026)");
    }

    @Test
    void takes_a_ballot_given_up_at_the_table_for_surrendered_but_never_one_that_came_back() {
        small.envelope.surrendered = YesNo.YES;
        mail("S1", MailBallot.State.OUTSTANDING);
        assertThat(small.word(Fact.MAIL_BALLOTS)).isEqualTo("surrendered");
        mail("", MailBallot.State.RETURNED);
        assertThat(small.word(Fact.MAIL_BALLOTS)).isEqualTo("returned+surrendered");
    }

    @Test
    void names_no_day_for_a_ballot_still_out_or_a_state_without_one() {
        mail("S1", MailBallot.State.OUTSTANDING);
        small.records.mailBallots.add(new MailBallot(new VoterId("V1"), "S2", null, MailBallot.State.LATE, null));
        assertThat(small.evidence(Fact.MAIL_BALLOTS))
                .isEqualTo("Mail ballot S1 sent 10/09/2026: not returned."
                        + " Mail ballot S2 sent: returned after the deadline.");
    }

    @ParameterizedTest
    @CsvSource({
        "REGULAR, YES, , elsewhere_unseen, a regular ballot was issued",
        "REGULAR, UNKNOWN, , elsewhere_unseen, does not say whether a ballot was issued",
        "REGULAR, NO, , none, no ballot was issued",
        "PROVISIONAL, YES, , none, for a provisional ballot",
        "REGULAR, YES, 2026-11-03T08:05, none, cancelled at 8:05 am"
    })
    void leaves_a_check_in_that_gave_a_ballot_to_a_person(
            CheckIn.Kind kind, YesNo issued, LocalDateTime cancelledAt, String word, String evidence) {
        checkIn(kind, issued, cancelledAt);
        assertThat(small.word(Fact.CHECK_IN)).isEqualTo(word);
        assertThat(small.evidence(Fact.CHECK_IN)).contains("Checked in at Town Hall, 11/03/2026 8:00 am", evidence);
    }

    @Test
    void forgets_no_check_in_for_a_later_harmless_one() {
        checkIn(CheckIn.Kind.REGULAR, YesNo.YES, null);
        checkIn(CheckIn.Kind.PROVISIONAL, YesNo.YES, null);
        assertThat(small.word(Fact.CHECK_IN)).isEqualTo("elsewhere_unseen");
    }

    @Test
    void takes_a_line_of_the_states_list_for_a_resemblance_only() {
        assertThat(small.word(Fact.OTHER_COUNTY)).isEqualTo("not_listed");
        small.records.elsewhere.add(new VotedElsewhere(
                new PersonName("Kell", "Ada", "", ""), LocalDate.of(1984, 3, 12), "", "", "Alder", "in person", null));
        assertThat(small.word(Fact.OTHER_COUNTY)).isEqualTo("listed");
        assertThat(small.evidence(Fact.OTHER_COUNTY))
                .isEqualTo("The state lists Kell, Ada, born 03/12/1984, as having voted in Alder.");
        small.noVoter();
        assertThat(small.word(Fact.OTHER_COUNTY)).isEqualTo("listed");
    }

    /** Name, birth date and a number that the roll has too: enough for a person to know, where one of them is not. */
    @ParameterizedTest
    @CsvSource({
        "Kell, Ada, 1984-03-12, 1234, '', listed_in_full",
        "KELL, ADA, 1984-03-12, '', D-100, listed_in_full",
        "Kell, Ada, 1984-03-12, 9999, D-999, listed",
        "Kell, Eve, 1984-03-12, 1234, '', listed",
        "Moss, Ada, 1984-03-12, 1234, '', listed",
        "Kell, Ada, 1984-03-13, 1234, '', listed",
        "Kell, Ada, , 1234, '', listed"
    })
    void takes_a_line_for_the_voters_own_only_where_name_birth_date_and_a_number_agree(
            String last, String first, LocalDate born, String last4, String license, String word) {
        small.voter.license = "D-100";
        small.records.elsewhere.add(new VotedElsewhere(
                new PersonName("Moss", "Ivo", "", ""), LocalDate.of(1990, 1, 1), "", "", "Alder", "by mail", null));
        small.records.elsewhere.add(new VotedElsewhere(
                new PersonName(last, first, "", ""), born, last4, license, "Birch", "by mail", null));
        assertThat(small.word(Fact.OTHER_COUNTY)).isEqualTo(word);
    }

    @Test
    void takes_numbers_that_are_missing_on_both_sides_for_no_agreement() {
        small.records.elsewhere.add(new VotedElsewhere(
                new PersonName("Kell", "Ada", "", ""), LocalDate.of(1984, 3, 12), "", "", "Alder", "by mail", null));
        assertThat(small.word(Fact.OTHER_COUNTY)).isEqualTo("listed");
    }

    @Test
    void knows_no_prior_vote_of_nobody() {
        small.noVoter();
        assertThat(small.word(Fact.MAIL_BALLOTS)).isEqualTo("unknown");
        assertThat(small.word(Fact.CHECK_IN)).isEqualTo("unknown");
        assertThat(small.word(Fact.OTHER_ENVELOPE)).isEqualTo("unknown");
    }

    @ParameterizedTest
    @CsvSource({
        "E-2, 2026-11-03T13:59, earlier_pending",
        "E-2, 2026-11-03T14:01, later_pending",
        "E-0, 2026-11-03T14:00, earlier_pending",
        "E-2, 2026-11-03T14:00, later_pending",
        "E-2, , later_pending",
        "E-1, 2026-11-03T08:00, none"
    })
    void knows_which_of_two_envelopes_was_cast_first(String number, LocalDateTime at, String word) {
        other(number, at, Envelope.Condition.SEALED);
        assertThat(small.word(Fact.OTHER_ENVELOPE)).isEqualTo(word);
    }

    @Test
    void names_the_first_of_several_other_envelopes() {
        other("E-3", LocalDateTime.of(2026, 11, 3, 18, 0), Envelope.Condition.SEALED);
        other("E-2", LocalDateTime.of(2026, 11, 3, 9, 0), Envelope.Condition.SEALED);
        assertThat(small.word(Fact.OTHER_ENVELOPE)).isEqualTo("earlier_pending");
        assertThat(small.evidence(Fact.OTHER_ENVELOPE)).contains("envelope E-2", "11/03/2026 9:00 am");
    }

    @ParameterizedTest
    @EnumSource(
            value = Envelope.Condition.class,
            names = {"WITHDRAWN", "SPOILED"})
    void counts_no_envelope_that_was_withdrawn_or_spoiled(Envelope.Condition condition) {
        other("E-2", MORNING, condition);
        assertThat(small.word(Fact.OTHER_ENVELOPE)).isEqualTo("none");
    }

    private void mail(String serial, MailBallot.State state) {
        small.records.mailBallots.add(new MailBallot(
                new VoterId("V1"), serial, LocalDate.of(2026, 10, 9), state, LocalDate.of(2026, 10, 30)));
    }

    private void checkIn(CheckIn.Kind kind, YesNo issued, @Nullable LocalDateTime cancelledAt) {
        small.records.checkIns.add(new CheckIn(new VoterId("V1"), "Town Hall", MORNING, kind, issued, cancelledAt));
    }

    private void other(String number, @Nullable LocalDateTime at, Envelope.Condition condition) {
        EnvelopeMaker other = new EnvelopeMaker();
        other.number = number;
        other.at = at;
        other.condition = condition;
        small.records.envelopes.add(other.make());
    }
}
