package org.proviso.core.adjudication;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.proviso.core.MailBallot;
import org.proviso.core.VoterId;
import org.proviso.core.YesNo;
import org.proviso.core.adjudication.facts.CheckInFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.SignatureComparisonFact;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.Evidence;
import org.proviso.core.adjudication.finding.EvidenceSource;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.finding.RecordedFact;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.rules.Rules;

/** Until a person has settled who the voter is, what the records say of somebody is nobody's. */
class FactFinderLinkTest {

    private static final List<Fact<?>> OF_THE_VOTER = List.of(
            Fact.REGISTRATION,
            Fact.MAIL_BALLOTS,
            Fact.CHECK_IN,
            Fact.OTHER_COUNTY,
            Fact.OTHER_ENVELOPE,
            Fact.BALLOT,
            Fact.PLACE,
            Fact.ENTITLEMENT,
            Fact.PARTY_BALLOT,
            Fact.SIGNATURE_COMPARISON,
            Fact.ELIGIBILITY);

    private final SmallCase small = new SmallCase();

    @ParameterizedTest
    @EnumSource(
            value = VoterIdentityFact.class,
            names = {"PRESUMED", "ONE_FITS_WELL"})
    void hides_the_facts_of_a_presumed_voter(VoterIdentityFact identity) {
        small.link = new Link(identity, VoterId.orNull("V1"), 0.98, List.of());
        small.records.mailBallots.add(new MailBallot(new VoterId("V1"), "S1", null, MailBallot.State.ACCEPTED, null));

        assertThat(OF_THE_VOTER).allSatisfy(fact -> {
            assertThat(small.settledWord(fact)).as(fact.key()).isEqualTo("unknown");
            assertThat(small.word(fact)).as(fact.key()).isNotEqualTo("unknown");
        });
        assertThat(small.settledWord(Fact.ENVELOPE)).isEqualTo("sealed");
        assertThat(small.settledWord(Fact.IDENTITY)).isEqualTo(identity.code());
        assertThat(small.report(noon()).settled().facts().contests()).isNull();
    }

    @Test
    void shows_them_once_a_person_has_confirmed_the_link() {
        small.link = new Link(VoterIdentityFact.PRESUMED, VoterId.orNull("V1"), 0.98, List.of()).confirmed();
        assertThat(OF_THE_VOTER)
                .allSatisfy(fact ->
                        assertThat(small.settledWord(fact)).as(fact.key()).isEqualTo(small.word(fact)));
        assertThat(small.report(noon()).settled().facts().contests()).isNotNull();
    }

    @Test
    void settles_a_search_that_found_nobody() {
        small.link = new Link(VoterIdentityFact.NOT_ON_ROLL, null, 0, List.of());
        assertThat(small.settledWord(Fact.REGISTRATION)).isEqualTo("not_found_after_search");
        assertThat(small.report(noon()).recommendation()).isEqualTo(Recommendation.REJECT);
    }

    @Test
    void knows_identification_before_the_link_only_where_it_does_not_turn_on_the_voter() {
        small.link = new Link(VoterIdentityFact.PRESUMED, VoterId.orNull("V1"), 0.98, List.of());
        small.envelope.idShown = YesNo.NO;
        assertThat(small.settledWord(Fact.IDENTIFICATION)).isEqualTo("missing");

        small.pack.word(Rules.ID_REQUIRED_OF, "first_time_mail");
        assertThat(small.settledWord(Fact.IDENTIFICATION)).isEqualTo("unknown");
        assertThat(small.word(Fact.IDENTIFICATION)).isEqualTo("not_required");
        small.envelope.idShown = YesNo.YES;
        assertThat(small.settledWord(Fact.IDENTIFICATION)).isEqualTo("shown");
    }

    @Test
    void puts_what_a_person_recorded_in_the_place_of_what_the_files_say() {
        Evidence seen = Evidence.of(EvidenceSource.PERSON, "The poll book shows the signature of somebody else.");
        small.records.recorded.add(new RecordedFact(Fact.CHECK_IN, Set.of(CheckInFact.VOTED), seen));
        small.records.recorded.add(new RecordedFact(Fact.CHECK_IN, Set.of(CheckInFact.NOT_THEIRS), seen));
        small.records.recorded.add(
                new RecordedFact(Fact.SIGNATURE_COMPARISON, Set.of(SignatureComparisonFact.AGREES), seen));

        assertThat(small.word(Fact.CHECK_IN)).isEqualTo("not_theirs");
        assertThat(small.evidence(Fact.CHECK_IN)).isEqualTo(seen.words());
        assertThat(small.settledWord(Fact.SIGNATURE_COMPARISON)).isEqualTo("agrees");
        small.link = new Link(VoterIdentityFact.PRESUMED, VoterId.orNull("V1"), 0.98, List.of());
        assertThat(small.settledWord(Fact.CHECK_IN)).isEqualTo("not_theirs");
    }

    @Test
    void rejects_nobody_over_the_record_of_a_voter_who_is_only_presumed() {
        small.link = new Link(VoterIdentityFact.PRESUMED, VoterId.orNull("V1"), 0.98, List.of());
        small.voter.registered = LocalDate.of(2026, 10, 30);
        CaseReport report = small.report(noon());

        assertThat(report.recommendation()).isEqualTo(Recommendation.RESEARCH);
        assertThat(report.outlook().outcome().recommendation()).isEqualTo(Recommendation.REJECT);
        assertThat(report.stillOpen())
                .startsWith("the link has not been confirmed yet")
                .doesNotHaveDuplicates();
    }

    @Test
    void counts_a_case_with_everything_in_order() {
        small.records.recorded.add(new RecordedFact(
                Fact.SIGNATURE_COMPARISON,
                Set.of(SignatureComparisonFact.AGREES),
                Evidence.of(EvidenceSource.PERSON, "Agrees.")));
        CaseReport report = small.report(noon());

        assertThat(report.recommendation()).isEqualTo(Recommendation.COUNT);
        assertThat(report.stillOpen()).isEmpty();
        assertThat(report.asks()).isEmpty();
        assertThat(report.voter()).isPresent();
    }

    private static LocalDateTime noon() {
        return LocalDateTime.of(2026, 11, 4, 12, 0);
    }
}
