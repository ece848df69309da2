package org.proviso.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.core.act.ActResults.why;
import static org.proviso.journey.Office.as;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.VoterId;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.adjudication.facts.OfficialSignatureFact;
import org.proviso.core.adjudication.facts.OtherEnvelopeFact;
import org.proviso.core.adjudication.facts.RegistrationFact;
import org.proviso.core.adjudication.facts.SignatureComparisonFact;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.journey.Primary;
import org.proviso.review.acts.AnswerService;
import org.proviso.review.acts.ConfirmLink;
import org.proviso.review.acts.LinkService;
import org.proviso.review.acts.RecordAnswer;
import org.proviso.review.acts.RecordSearch;
import org.proviso.review.acts.SearchService;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.facts.AnswerStore;
import org.proviso.review.facts.OffRollReason;
import org.proviso.review.facts.RecordedAnswer;
import org.proviso.review.facts.SearchFound;
import org.proviso.review.facts.SearchPlace;
import org.proviso.review.facts.SignatureComparison;
import org.proviso.review.replay.CaseReplay;

/** A finding is about one voter: it does not follow the envelope to another. */
class FindingsOfTheVoterTest {

    /** Ada at one envelope of the primary. */
    private record AtWork(TestOffice services, Primary primary, EnvelopeKey key) {

        static AtWork on(TestOffice services, String scenario) {
            Primary primary = Primary.loaded(services);
            EnvelopeKey key = primary.envelope(scenario);
            primary.taken(key, new UserName("ada"));
            return new AtWork(services, primary, key);
        }

        int version() {
            return primary.now(key).version();
        }

        ActResult<EnvelopeCase> choose(VoterId voter) {
            return as(
                    "ada",
                    () -> services.the(LinkService.class)
                            .confirm(new ConfirmLink(
                                    key, version(), voter, "Birth date and address compared by hand.")));
        }

        ActResult<EnvelopeCase> compare(SignatureComparison.Finding seen, String note) {
            return as(
                    "ada",
                    () -> services.the(AnswerService.class)
                            .recordSignatureComparison(new SignatureComparison(key, version(), seen, note)));
        }

        ActResult<EnvelopeCase> search(SearchFound found) {
            return as(
                    "ada",
                    () -> services.the(SearchService.class)
                            .record(new RecordSearch(
                                    key,
                                    version(),
                                    EnumSet.allOf(SearchPlace.class),
                                    found,
                                    OffRollReason.NOT_ON_THE_ROLL,
                                    null,
                                    "")));
        }

        ActResult<EnvelopeCase> pollWorkerSigned() {
            return as(
                    "ada",
                    () -> services.the(AnswerService.class)
                            .answer(new RecordAnswer(
                                    key,
                                    version(),
                                    Fact.OFFICIAL_SIGNATURE,
                                    Set.of(OfficialSignatureFact.SIGNED),
                                    "The signature is on the back.",
                                    null)));
        }

        List<Fact<?>> standing() {
            return services.the(AnswerStore.class).standing(key).stream()
                    .<Fact<?>>map(RecordedAnswer::fact)
                    .toList();
        }

        FactWord fact(Fact<?> fact) {
            return services.the(AssessmentService.class)
                    .now(key)
                    .settled()
                    .facts()
                    .one(fact);
        }

        VoterId own() {
            return new VoterId(primary.truth(key).voterId());
        }

        VoterId another() {
            return new VoterId(primary.truth(primary.envelope("inactive")).voterId());
        }

        void replaysWhole() {
            assertThat(services.the(CaseReplay.class)
                            .replay(new ElectionId(Primary.ID))
                            .first())
                    .isEmpty();
        }
    }

    @OnBothDatabases
    void a_signature_that_agreed_with_one_voters_is_compared_anew_for_another(TestOffice services) {
        AtWork work = AtWork.on(services, "in_order");
        accepted(work.choose(work.own()));
        accepted(work.compare(SignatureComparison.Finding.AGREES, ""));
        accepted(work.pollWorkerSigned());
        accepted(work.choose(work.own()));
        assertThat(work.standing())
                .as("the same voter again takes nothing back")
                .containsExactly(Fact.SIGNATURE_COMPARISON, Fact.OFFICIAL_SIGNATURE);
        accepted(work.choose(work.another()));
        assertThat(work.fact(Fact.SIGNATURE_COMPARISON)).isEqualTo(SignatureComparisonFact.NOT_YET);
        assertThat(work.standing()).as("what the paper shows stays").containsExactly(Fact.OFFICIAL_SIGNATURE);
        work.replaysWhole();
    }

    @OnBothDatabases
    void what_a_search_found_holds_until_a_voter_of_the_roll_is_chosen(TestOffice services) {
        AtWork work = AtWork.on(services, "in_order");
        accepted(work.choose(work.own()));
        accepted(work.compare(SignatureComparison.Finding.AGREES, ""));
        accepted(work.search(SearchFound.NOTHING));
        assertThat(work.fact(Fact.REGISTRATION)).isEqualTo(RegistrationFact.NOT_FOUND_AFTER_SEARCH);
        assertThat(work.standing()).isEmpty();
        assertThat(work.fact(Fact.OTHER_ENVELOPE))
                .as("nobody could answer it otherwise, and the case would never end")
                .isEqualTo(OtherEnvelopeFact.NONE);
        accepted(work.choose(work.own()));
        assertThat(work.fact(Fact.REGISTRATION))
                .as("the record itself tells: the voter was found after all")
                .isEqualTo(RegistrationFact.IN_TIME);
        work.replaysWhole();
    }

    @OnBothDatabases
    void a_signature_agrees_or_differs_only_where_there_is_one_to_compare_it_with(TestOffice services) {
        AtWork work = AtWork.on(services, "in_order");
        accepted(work.search(SearchFound.NOTHING));
        assertThat(why(work.compare(SignatureComparison.Finding.AGREES, ""))).isEqualTo(Why.LINK_NOT_SETTLED);
        accepted(work.choose(work.own()));
        services.jdbc()
                .sql("delete from voter_image where voter_id = ?")
                .param(work.own().value())
                .update();
        assertThat(why(work.compare(SignatureComparison.Finding.AGREES, ""))).isEqualTo(Why.NO_REASON);
        assertThat(why(work.compare(SignatureComparison.Finding.DIFFERS, ""))).isEqualTo(Why.NO_REASON);
        accepted(work.compare(SignatureComparison.Finding.AGREES, "The registration card in the file."));
        assertThat(work.fact(Fact.SIGNATURE_COMPARISON)).isEqualTo(SignatureComparisonFact.AGREES);
    }
}
