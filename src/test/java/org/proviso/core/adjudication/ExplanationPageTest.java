package org.proviso.core.adjudication;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.proviso.core.Address;
import org.proviso.core.CheckIn;
import org.proviso.core.CourtOrder;
import org.proviso.core.Election;
import org.proviso.core.Envelope;
import org.proviso.core.MailBallot;
import org.proviso.core.PersonName;
import org.proviso.core.VoterId;
import org.proviso.core.YesNo;
import org.proviso.core.adjudication.explain.Explanation;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.SignatureComparisonFact;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.Evidence;
import org.proviso.core.adjudication.finding.EvidenceSource;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.finding.RecordedFact;
import org.proviso.core.matching.Candidate;
import org.proviso.core.rules.Rules;

/** The page that explains a case, part by part as a reviewer reads it. */
class ExplanationPageTest {

    private static final String ENVELOPE = "WHAT THE ENVELOPE SAYS";
    private static final String RECORDS = "WHAT THE RECORDS SAY";
    private static final String LAW = "WHAT THE LAW ASKS";

    private final SmallCase small = new SmallCase();

    @Test
    void begins_with_the_envelope_its_election_and_how_the_ballot_was_cast() {
        assertThat(page().lines().limit(2))
                .containsExactly(
                        "ENVELOPE E-1                                               Small Election, Tuesday, November 3,"
                                + " 2026",
                        "Library, cast in precinct 1 with style A at 2:00 pm; issued because: not on list.");
        small.envelope.at = null;
        small.envelope.issueReasons = Set.of();
        assertThat(page()).contains("Library, cast in precinct 1 with style A.\n");
    }

    @Test
    void a_date_of_birth_that_is_none_stands_as_written_and_a_person_judges_it() {
        small.noVoter();
        small.envelope.born = null;
        small.envelope.bornAsWritten = "02/29/1935";
        assertThat(page())
                .containsPattern("Date of birth +\"02/29/1935\", as written; not a date\n")
                .containsPattern("Is the date of birth filled in\\? +Open");
    }

    @Test
    void says_what_must_still_be_done_and_what_the_records_suggest_will_come_of_it() {
        small.link = new Link(VoterIdentityFact.PRESUMED, VoterId.orNull("V1"), 0.98, List.of());
        small.records.mailBallots.add(mail(MailBallot.State.OUTSTANDING));
        assertThat(page())
                .contains("  Now              research\n")
                .contains(
                        "  Outlook          \u25CF count, if the open questions are answered as the records suggest\n")
                .contains("  Reason           nothing stands in the way\n")
                .contains("  Still to do      the link has not been confirmed yet\n"
                        + "                   a mail ballot is out and may still arrive\n")
                .doesNotContain("Held apart");
        small.records.checkIns.add(new CheckIn(
                new VoterId("V1"),
                "Town Hall",
                LocalDateTime.of(2026, 11, 3, 8, 0),
                CheckIn.Kind.REGULAR,
                YesNo.YES,
                null));
        assertThat(page())
                .contains("  Outlook          research: the records do not suggest how the open questions will be")
                .doesNotContain("  Reason");
    }

    @Test
    void says_that_a_ballot_of_extended_hours_is_held_apart() {
        small.records.election = SmallElection.of(
                Election.Kind.GENERAL,
                new CourtOrder(
                        CourtOrder.Kind.EXTEND,
                        "District Court",
                        LocalDate.of(2026, 11, 3),
                        "county",
                        CourtOrder.Status.IN_FORCE,
                        LocalDateTime.of(2026, 11, 3, 20, 30),
                        Set.of()));
        small.envelope.at = LocalDateTime.of(2026, 11, 3, 20, 0);
        small.envelope.extended = YesNo.YES;
        assertThat(page()).contains("  Held apart       yes: cast during hours extended by a court\n");
    }

    @Test
    void names_each_thing_that_the_voter_may_bring_with_its_day() {
        small.envelope.signed = Envelope.VoterSignature.NO;
        small.envelope.idShown = YesNo.NO;
        assertThat(page().replaceAll("\\n {19}", " "))
                .contains(
                        "  The voter may    sign the affirmation until Thursday, November 12, 2026, 5:00 pm (moved from"
                                + " 11/11/2026, when the office is closed); notify the voter now bring or send identification"
                                + " until Tuesday, November 10, 2026, 5:00 pm; notify the voter now\n");
    }

    @Test
    void says_everything_that_is_written_on_the_envelope() {
        small.envelope.movedOn = LocalDate.of(2026, 10, 1);
        small.envelope.idKind = "drivers_license";
        small.envelope.declaration = "reasonable_impediment";
        small.envelope.surrendered = YesNo.YES;
        small.envelope.signed = Envelope.VoterSignature.MARK;
        small.envelope.officialSigned = YesNo.NO;
        small.envelope.note = "Came at noon.";
        assertThat(part(ENVELOPE))
                .containsExactly(
                        "  Name             Kell, Ada",
                        "  Date of birth    03/12/1984",
                        "  Address          1 Elm St, Millbrook 49871",
                        "  Date moved       10/01/2026",
                        "  Last 4 of SSN    1234",
                        "  ID shown         yes, driver's license; declaration of reasonable impediment",
                        "  Mail ballot      surrendered at the voting location",
                        "  Signed           voter mark, poll worker no",
                        "  Envelope         sealed",
                        "  Official's note  Came at noon.");
    }

    @Test
    void masks_both_addresses_on_the_envelope_of_a_voter_whose_address_is_protected() {
        small.envelope.former = new Address("2 Oak St", "", "Millbrook", "49871");
        assertThat(part(ENVELOPE)).contains("  Former address   2 Oak St, Millbrook 49871");
        small.voter.confidential = true;
        assertThat(part(ENVELOPE))
                .contains("  Address          protected address", "  Former address   protected address");
    }

    @Test
    void says_of_what_is_not_written_on_the_envelope_why_where_that_was_recorded() {
        small.envelope.name = new PersonName("", "", "", "");
        small.envelope.born = null;
        small.envelope.address = "";
        small.envelope.idLast4 = "";
        small.envelope.states.put(Envelope.Field.DATE_OF_BIRTH, Envelope.FieldState.LEFT_BLANK);
        small.envelope.idShown = YesNo.UNKNOWN;
        small.envelope.signed = Envelope.VoterSignature.UNKNOWN;
        small.envelope.officialSigned = YesNo.UNKNOWN;
        small.envelope.condition = Envelope.Condition.UNKNOWN;
        assertThat(part(ENVELOPE))
                .containsExactly(
                        "  Date of birth    left blank",
                        "  Address          empty",
                        "  ID shown         not stated",
                        "  Signed           voter not stated, poll worker not stated",
                        "  Envelope         not stated");
    }

    @Test
    void shows_the_roll_record_of_a_presumed_voter_with_the_figure_of_the_match() {
        small.voter.party = "Red";
        small.voter.precinct = "2";
        small.voter.split = "X";
        small.link =
                new Link(VoterIdentityFact.PRESUMED, VoterId.orNull("V1"), 0.98, List.of("Same name.", "Same house."));
        assertThat(part(RECORDS).subList(0, 3))
                .containsExactly(
                        "  Kell, Ada  V1                                                                      likely (98.0"
                                + " %)",
                        "  born 03/12/1984 \u00B7 1 Elm St, Millbrook 49871 \u00B7 precinct 2 split X \u00B7 Red",
                        "  Same name. Same house.");
        small.link = new Link(VoterIdentityFact.CONFIRMED, VoterId.orNull("V1"), 0.98, List.of());
        assertThat(part(RECORDS).get(0)).endsWith("  linked by a reviewer");
        assertThat(part(RECORDS).get(2)).startsWith("  - ");
    }

    @Test
    void shows_each_other_record_of_the_voter_once() {
        small.records.mailBallots.add(mail(MailBallot.State.VOID));
        assertThat(part(RECORDS))
                .filteredOn(line -> line.startsWith("  - "))
                .containsExactly(
                        "  - Mail ballot S1 sent 10/09/2026: void: replaced, or not a valid ballot" + " (10/30/2026).");
    }

    /** One in a hundred is worth a look. */
    @Test
    void lists_the_candidates_worth_a_look_and_masks_a_protected_address() {
        Candidate first = new Candidate(new VoterId("V1"), 0.6, List.of("Same last name."));
        Candidate barely = new Candidate(new VoterId("V2"), 0.01, List.of("Same house."));
        Candidate hardly = new Candidate(new VoterId("V3"), 0.009, List.of("Same city."));
        small.link =
                new Link(VoterIdentityFact.SEVERAL_FIT, null, 0.6, List.of("Two fit."), List.of(first, barely, hardly));
        for (String id : List.of("V1", "V2", "V3")) {
            small.voter.id = id;
            small.voter.confidential = id.equals("V2");
            small.records.voters.put(id, small.voter.make());
        }
        assertThat(part(RECORDS))
                .containsExactly(
                        "  Two fit. A reviewer must choose.",
                        "  - Kell, Ada  V1                                                                  possibly"
                                + " (60.0 %)",
                        "    born 03/12/1984 \u00B7 1 Elm St, Millbrook 49871. Same last name.",
                        "  - Kell, Ada  V2                                                                   unlikely"
                                + " (1.0 %)",
                        "    born 03/12/1984 \u00B7 protected address. Same house.");
    }

    @Test
    void gives_a_clear_heading_its_evidence_and_its_rules_and_unfolds_the_others() {
        small.envelope.idShown = YesNo.NO;
        small.pack.flag(Rules.SIGNATURE_COMPARED, false);
        assertThat(part(LAW))
                .containsSubsequence(
                        "       Condition of the envelope: sealed. The voter signed the affirmation. The poll worker"
                                + " signed.",
                        "     Was identification shown? Defect: the voter showed no identification.",
                        "       No identification was shown.",
                        "       Rule: Example Election Code (invented) 6.1 (2020): who must show identification:"
                                + " everyone.",
                        "       The voter signed the affirmation. Agrees.",
                        "       Rule: Made for a test (2026): whether the signature is compared with those on file:"
                                + " no.");
    }

    private static MailBallot mail(MailBallot.State state) {
        return new MailBallot(new VoterId("V1"), "S1", LocalDate.of(2026, 10, 9), state, LocalDate.of(2026, 10, 30));
    }

    /** The lines under a title, up to the next one. */
    private List<String> part(String title) {
        List<String> lines = page().lines().toList();
        int from = lines.indexOf(title) + 1;
        return lines.subList(from, from + lines.subList(from, lines.size()).indexOf(""));
    }

    private String page() {
        small.records.recorded.clear();
        small.records.recorded.add(new RecordedFact(
                Fact.SIGNATURE_COMPARISON,
                Set.of(SignatureComparisonFact.AGREES),
                Evidence.of(EvidenceSource.PERSON, "Agrees.")));
        CaseReport report = small.report(LocalDateTime.of(2026, 11, 4, 12, 0));
        return Explanation.of(report, small.records, small.pack.resolved(), "11/04/2026 12:00 pm");
    }
}
