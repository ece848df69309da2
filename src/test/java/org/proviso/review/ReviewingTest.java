package org.proviso.review;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.journey.Office.accepted;
import static org.proviso.journey.Office.as;
import static org.proviso.journey.Primary.why;

import java.time.LocalDateTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.proviso.access.NotPermittedException;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.Key;
import org.proviso.core.UserName;
import org.proviso.core.VoterId;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.facts.CheckInFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.RegistrationFact;
import org.proviso.core.adjudication.facts.SignatureComparisonFact;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Reason;
import org.proviso.database.OnADatabase;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.intake.RecordCure;
import org.proviso.intake.cure.CureService;
import org.proviso.journey.Office;
import org.proviso.journey.Primary;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.review.acts.AnswerService;
import org.proviso.review.acts.CaseAssignmentService;
import org.proviso.review.acts.ClearCaseService;
import org.proviso.review.acts.ConfirmLink;
import org.proviso.review.acts.LinkService;
import org.proviso.review.acts.ProposalService;
import org.proviso.review.acts.RecordAnswer;
import org.proviso.review.acts.RecordSearch;
import org.proviso.review.acts.ResearchService;
import org.proviso.review.acts.SearchService;
import org.proviso.review.acts.TakeBackSearch;
import org.proviso.review.assess.AssessmentRow;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.facts.AnswerStore;
import org.proviso.review.facts.LinkStore;
import org.proviso.review.facts.OffRollReason;
import org.proviso.review.facts.ResearchStore;
import org.proviso.review.facts.SearchFound;
import org.proviso.review.facts.SearchPlace;
import org.proviso.review.facts.SignatureComparison;
import org.proviso.review.facts.VoterGroups;
import org.proviso.review.facts.WaitsFor;
import org.proviso.review.replay.CaseReplay;
import org.springframework.dao.OptimisticLockingFailureException;

/** A reviewer's acts on a case, and what the office refuses. */
class ReviewingTest {

    @OnADatabase
    void every_envelope_of_a_loaded_election_has_a_case_with_its_link_and_its_assessment(TestOffice services) {
        Office office = Primary.loaded(services).office();
        assertThat(office.the(CaseService.class).inState(new ElectionId(Primary.ID), CaseState.OPEN))
                .hasSize(60);
        List<AssessmentRow> rows = office.the(AssessmentService.class).latest(new ElectionId(Primary.ID));
        assertThat(rows).hasSize(60);
        assertThat(rows).extracting(AssessmentRow::outlook).contains(Recommendation.COUNT, Recommendation.REJECT);
        EnvelopeKey key = rows.get(0).key();
        assertThat(office.the(LinkStore.class).newest(key)).isPresent();
    }

    @OnADatabase
    void a_case_is_taken_by_one_and_given_back(TestOffice services) {
        Primary primary = Primary.loaded(services);
        CaseAssignmentService cases = services.the(CaseAssignmentService.class);
        EnvelopeKey key = primary.envelope("in_order");
        EnvelopeCase seen = primary.now(key);
        EnvelopeCase taken = primary.taken(key, new UserName("ada"));
        assertThat(Key.text(taken.takenBy())).isEqualTo("ada");
        assertThatThrownBy(() -> as("ben", () -> cases.take(key, seen.version())))
                .as("ben saw it before ada took it")
                .isInstanceOf(OptimisticLockingFailureException.class)
                .hasMessageContaining("in review, with ada");
        assertThat(why(as("ben", () -> cases.take(key, taken.version())))).isEqualTo(Why.NOT_IN_THIS_STATE);
        assertThat(why(as("ben", () -> cases.giveBack(key, taken.version())))).isEqualTo(Why.NOT_WITH_YOU);
        assertThat(why(as("carl", () -> cases.giveBack(key, taken.version()))))
                .as("a supervisor says why")
                .isEqualTo(Why.NOT_WITH_YOU);
        EnvelopeCase back = as("ada", () -> accepted(cases.giveBack(key, taken.version())));
        assertThat(back.state()).isEqualTo(CaseState.OPEN);
        assertThatThrownBy(() -> as("jon", () -> cases.take(key, back.version())))
                .isInstanceOf(NotPermittedException.class);
    }

    @OnADatabase
    void nothing_is_reviewed_before_its_time_and_the_time_is_told(TestOffice services) {
        Primary primary = Primary.loaded(services);
        EnvelopeKey key = primary.envelope("in_order");
        primary.at(1, 7, 59);
        ActResult<EnvelopeCase> early =
                as("ada", () -> services.the(CaseAssignmentService.class).take(key, 0));
        assertThat(why(early)).isEqualTo(Why.GATE_NOT_OPEN);
        assertThat(((ActResult.Refused<EnvelopeCase>) early).words()).contains("8:00 am");
        assertThat(((ActResult.Refused<EnvelopeCase>) early).refusals().get(0).reference())
                .isNotNull();
        primary.at(1, 8, 0);
        primary.taken(key, new UserName("ada"));
    }

    @OnADatabase
    void another_voter_than_the_match_names_is_chosen_with_a_ground_only(TestOffice services) {
        Primary primary = Primary.loaded(services);
        LinkService links = services.the(LinkService.class);
        EnvelopeKey key = primary.envelope("in_order");
        String other = primary.truth(primary.envelope("inactive")).voterId();
        EnvelopeCase envelopeCase = primary.taken(key, new UserName("ada"));
        assertThat(why(as(
                        "ada",
                        () -> links.confirm(new ConfirmLink(key, envelopeCase.version(), new VoterId(other), "")))))
                .isEqualTo(Why.NO_REASON);
        EnvelopeCase chosen = as(
                "ada",
                () -> accepted(links.confirm(
                        new ConfirmLink(key, envelopeCase.version(), new VoterId(other), "Seen the file."))));
        assertThat(services.the(LinkStore.class).newest(key).map(Link::voterId)).contains(new VoterId(other));
        assertThat(chosen.personId()).isEqualTo("voter:" + other);
        assertThat(primary.reviewing(key).report().settled().facts().one(Fact.IDENTITY))
                .isEqualTo(VoterIdentityFact.CONFIRMED);
        assertThat(services.the(LedgerService.class).read(LedgerChain.of(new ElectionId(Primary.ID)), 0, 99))
                .anySatisfy(entry -> assertThat(entry.act()).isEqualTo("other_voter_chosen"))
                .allSatisfy(entry -> assertThat(entry.line()).doesNotContain(other));
    }

    @OnADatabase
    void a_clear_case_is_confirmed_and_proposed_in_one_act_or_not_at_all(TestOffice services) {
        Primary primary = Primary.loaded(services);
        ClearCaseService clear = services.the(ClearCaseService.class);
        EnvelopeKey key = primary.envelope("in_order");
        String voter = String.valueOf(
                services.the(LinkStore.class).newest(key).orElseThrow().voterId());
        EnvelopeCase envelopeCase = primary.taken(key, new UserName("ada"));
        long acts = services.the(LedgerService.class)
                .head(LedgerChain.of(new ElectionId(Primary.ID)))
                .sequence();
        assertThat(why(as(
                        "ada",
                        () -> clear.confirmAndPropose(
                                new ConfirmLink(key, envelopeCase.version(), new VoterId(voter), "")))))
                .as("nobody has looked at the signature, so the rules do not say count yet")
                .isEqualTo(Why.DEPARTURE_WITHOUT_REASON);
        assertThat(services.the(LinkStore.class).newest(key).map(Link::identity))
                .contains(VoterIdentityFact.PRESUMED);
        assertThat(services.the(LedgerService.class)
                        .head(LedgerChain.of(new ElectionId(Primary.ID)))
                        .sequence())
                .isEqualTo(acts);
        EnvelopeCase seen = as(
                "ada",
                () -> accepted(services.the(AnswerService.class)
                        .recordSignatureComparison(new SignatureComparison(
                                key, envelopeCase.version(), SignatureComparison.Finding.AGREES, ""))));
        EnvelopeCase ready = as(
                "ada",
                () -> accepted(clear.confirmAndPropose(new ConfirmLink(key, seen.version(), new VoterId(voter), ""))));
        assertThat(ready.state()).isEqualTo(CaseState.READY);
        assertThat(services.the(LinkStore.class).newest(key).map(Link::identity))
                .contains(VoterIdentityFact.CONFIRMED);
        assertThat(services.the(LedgerService.class)
                        .about(LedgerChain.of(new ElectionId(Primary.ID)), key.envelopeNo()))
                .extracting(LedgerEntry::act)
                .endsWith("link_confirmed", "proposed");
    }

    @OnADatabase
    void sure_links_are_confirmed_together_and_never_one_that_needs_a_look(TestOffice services) {
        Primary primary = Primary.loaded(services);
        LinkService links = services.the(LinkService.class);
        List<CaseVersion> sure = services.the(CaseService.class).all(new ElectionId(Primary.ID)).stream()
                .map(EnvelopeCase::key)
                .filter(key ->
                        services.the(LinkStore.class).newest(key).orElseThrow().identity()
                                == VoterIdentityFact.PRESUMED)
                .filter(key -> services.the(VoterGroups.class).others(key).isEmpty())
                .limit(5)
                .map(key -> new CaseVersion(key, 0))
                .toList();
        assertThat(as("ada", () -> links.confirmTogether(sure)).ifAccepted().orElseThrow())
                .hasSize(5)
                .allSatisfy(envelopeCase -> assertThat(services.the(LinkStore.class)
                                .newest(envelopeCase.key())
                                .orElseThrow()
                                .identity())
                        .isEqualTo(VoterIdentityFact.CONFIRMED));
        EnvelopeKey nobody = primary.envelope("not_on_roll");
        assertThat(as("ada", () -> links.confirmTogether(List.of(new CaseVersion(nobody, 0))))
                        .refusals())
                .singleElement()
                .satisfies(refusal -> {
                    assertThat(refusal.why()).isEqualTo(Why.NOT_ONE_GROUP);
                    assertThat(refusal.about()).isEqualTo(nobody.envelopeNo());
                });
    }

    @OnADatabase
    void not_found_becomes_a_fact_only_by_a_search_of_the_whole_check_list(TestOffice services) {
        Primary primary = Primary.loaded(services);
        SearchService searches = services.the(SearchService.class);
        EnvelopeKey key = primary.envelope("not_on_roll");
        EnvelopeCase envelopeCase = primary.taken(key, new UserName("ada"));
        assertThat(primary.reviewing(key).report().recommendation()).isEqualTo(Recommendation.RESEARCH);
        RecordSearch half = search(key, envelopeCase, EnumSet.of(SearchPlace.PENDING, SearchPlace.AGENCY));
        assertThat(why(as("ada", () -> searches.record(half)))).isEqualTo(Why.SEARCH_NOT_COMPLETE);
        EnvelopeCase now =
                as("ada", () -> accepted(searches.record(search(key, envelopeCase, EnumSet.allOf(SearchPlace.class)))));
        assertThat(now.personId()).isEqualTo("envelope:" + key.envelopeNo());
        assertThat(primary.reviewing(key).report().settled().facts().one(Fact.REGISTRATION))
                .isEqualTo(RegistrationFact.NOT_FOUND_AFTER_SEARCH);
        assertThat(primary.reviewing(key).report().recommendation()).isEqualTo(Recommendation.REJECT);
    }

    @OnBothDatabases
    void a_search_that_found_nobody_by_mistake_is_taken_back_and_the_voter_is_settled_anew(TestOffice services) {
        Primary primary = Primary.loaded(services);
        SearchService searches = services.the(SearchService.class);
        EnvelopeKey key = primary.envelope("in_order");
        VoterId voter = services.the(LinkStore.class).newest(key).orElseThrow().voterId();
        EnvelopeCase taken = primary.taken(key, new UserName("ada"));
        assertThat(why(as("ada", () -> searches.takeBack(new TakeBackSearch(key, taken.version(), "No search.")))))
                .isEqualTo(Why.NOT_IN_THIS_STATE);
        EnvelopeCase searched =
                as("ada", () -> accepted(searches.record(search(key, taken, EnumSet.allOf(SearchPlace.class)))));
        TakeBackSearch slip = new TakeBackSearch(key, searched.version(), "It was about another envelope.");
        assertThat(why(as("ben", () -> searches.takeBack(slip)))).isEqualTo(Why.NOT_WITH_YOU);
        EnvelopeCase now = as("ada", () -> accepted(searches.takeBack(slip)));
        assertThat(now.personId()).isNull();
        assertThat(services.the(LinkStore.class).newest(key).orElseThrow())
                .returns(VoterIdentityFact.PRESUMED, Link::identity)
                .returns(voter, Link::voterId);
        assertThat(primary.reviewing(key).report().settled().facts().one(Fact.REGISTRATION))
                .isNotEqualTo(RegistrationFact.NOT_FOUND_AFTER_SEARCH);
        assertThatThrownBy(() -> as("ada", () -> searches.takeBack(slip)))
                .isInstanceOf(OptimisticLockingFailureException.class);
        assertThat(services.the(CaseReplay.class)
                        .replay(new ElectionId(Primary.ID))
                        .first())
                .isEmpty();
        services.jdbc()
                .sql("update voter_search set taken_back_because = 'another'")
                .update();
        services.jdbc()
                .sql("update link set ground = 'another' where ground <> ''")
                .update();
        assertThat(services.the(CaseReplay.class)
                        .replay(new ElectionId(Primary.ID))
                        .first())
                .as("the search, its own link, and the link that took its place")
                .hasSize(3);
    }

    private static RecordSearch search(EnvelopeKey key, EnvelopeCase envelopeCase, Set<SearchPlace> places) {
        return new RecordSearch(
                key,
                envelopeCase.version(),
                places,
                SearchFound.NOTHING,
                OffRollReason.NOT_ON_THE_ROLL,
                null,
                "Nobody.");
    }

    @OnADatabase
    void a_search_names_only_an_envelope_of_the_office_whose_voter_is_settled(TestOffice services) {
        Primary primary = Primary.loaded(services);
        SearchService searches = services.the(SearchService.class);
        EnvelopeKey key = primary.envelope("not_on_roll");
        EnvelopeCase one = primary.taken(key, new UserName("ada"));
        EnvelopeKey other = primary.envelope("other_county");
        String tooLong = "P".repeat(61);
        assertThat(why(as("ada", () -> searches.record(sameAs("P-0000", one))))).isEqualTo(Why.NO_SUCH_ENVELOPE);
        assertThat(why(as("ada", () -> searches.record(sameAs(tooLong, one))))).isEqualTo(Why.NO_SUCH_ENVELOPE);
        RecordSearch same = sameAs(other.envelopeNo().value(), one);
        assertThat(why(as("ada", () -> searches.record(same)))).isEqualTo(Why.LINK_NOT_SETTLED);
        EnvelopeCase known = primary.taken(other, new UserName("ada"));
        as("ada", () -> accepted(searches.record(search(other, known, EnumSet.allOf(SearchPlace.class)))));
        assertThat(as("ada", () -> accepted(searches.record(same))).personId())
                .isEqualTo("envelope:" + other.envelopeNo());
    }

    private static RecordSearch sameAs(String envelopeNo, EnvelopeCase one) {
        return new RecordSearch(
                one.key(),
                one.version(),
                EnumSet.allOf(SearchPlace.class),
                SearchFound.NOTHING,
                OffRollReason.NOT_ON_THE_ROLL,
                envelopeNo,
                "");
    }

    @OnADatabase
    void a_signature_is_different_only_when_two_find_it_so(TestOffice services) {
        Primary primary = Primary.loaded(services);
        AnswerService answers = services.the(AnswerService.class);
        EnvelopeKey key = primary.envelope("another_hand");
        EnvelopeCase envelopeCase = primary.taken(key, new UserName("ada"));
        EnvelopeCase linked = as(
                "ada",
                () -> accepted(services.the(LinkService.class)
                        .confirm(new ConfirmLink(
                                key,
                                envelopeCase.version(),
                                new VoterId(primary.truth(key).voterId()),
                                "Compared."))));
        assertThat(why(as("ada", () -> answers.recordSignatureComparison(look(key, linked, "")))))
                .as("a difference is noted")
                .isEqualTo(Why.NO_REASON);
        EnvelopeCase once = as("ada", () -> accepted(answers.recordSignatureComparison(look(key, linked, "Slant."))));
        assertThat(compared(primary, key)).isEqualTo(SignatureComparisonFact.DIFFERS_BY_ONE);
        assertThat(why(as("ada", () -> answers.recordSignatureComparison(look(key, once, "Slant.")))))
                .isEqualTo(Why.OWN_ACT);
        as("ben", () -> accepted(answers.recordSignatureComparison(look(key, once, "Joins."))));
        assertThat(compared(primary, key)).isEqualTo(SignatureComparisonFact.DIFFERS_BY_TWO);
        assertThat(primary.reviewing(key).report().recommendation()).isEqualTo(Recommendation.WAIT_FOR_THE_VOTER);
        LocalDateTime inTime = primary.day().plusDays(2).atTime(9, 0);
        primary.at(20, 9, 0);
        as("jon", () -> {
            services.the(CureService.class)
                    .record(new RecordCure(
                            new ElectionId(Primary.ID),
                            key.envelopeNo(),
                            Ask.SIGNATURE_DIFFERENCE,
                            inTime,
                            "Affidavit signed."));
            return true;
        });
        assertThat(compared(primary, key))
                .as("keyed weeks later, stamped in time")
                .isEqualTo(SignatureComparisonFact.CONFIRMED_BY_VOTER);
    }

    private static SignatureComparison look(EnvelopeKey key, EnvelopeCase envelopeCase, String note) {
        return new SignatureComparison(key, envelopeCase.version(), SignatureComparison.Finding.DIFFERS, note);
    }

    private static SignatureComparisonFact compared(Primary primary, EnvelopeKey key) {
        return primary.reviewing(key).report().settled().facts().one(Fact.SIGNATURE_COMPARISON);
    }

    @OnADatabase
    void facts_with_an_act_of_their_own_are_not_simply_answered(TestOffice services) {
        Primary primary = Primary.loaded(services);
        AnswerService answers = services.the(AnswerService.class);
        EnvelopeKey key = primary.envelope("in_order");
        int version = primary.taken(key, new UserName("ada")).version();
        RecordAnswer voted =
                new RecordAnswer(key, version, Fact.CHECK_IN, Set.of(CheckInFact.NONE), "I think so.", null);
        assertThat(why(as("ada", () -> answers.answer(voted)))).isEqualTo(Why.NOT_ANSWERED_THIS_WAY);
        RecordAnswer notFound = new RecordAnswer(
                key, version, Fact.REGISTRATION, Set.of(RegistrationFact.NOT_FOUND_AFTER_SEARCH), "Gone.", null);
        assertThat(why(as("ada", () -> answers.answer(notFound)))).isEqualTo(Why.NOT_ANSWERED_THIS_WAY);
        assertThatThrownBy(() -> as(
                        "ada",
                        () -> answers.answer(new RecordAnswer(
                                key, version, Fact.REGISTRATION, Set.of(CheckInFact.NONE), "Wrong word.", null))))
                .isInstanceOf(IllegalArgumentException.class);
        RecordAnswer late = new RecordAnswer(
                key, version, Fact.REGISTRATION, Set.of(RegistrationFact.LATE), "Stamp misread.", null);
        as("ada", () -> accepted(answers.answer(late)));
        assertThat(services.the(AnswerStore.class).standing(key)).hasSize(1);
        assertThat(primary.reviewing(key).report().presumed().facts().one(Fact.REGISTRATION))
                .isEqualTo(RegistrationFact.LATE);
        as("ada", () -> accepted(answers.withdrawAnswer(key, primary.now(key).version(), Fact.REGISTRATION)));
        assertThat(primary.reviewing(key).report().presumed().facts().one(Fact.REGISTRATION))
                .isEqualTo(RegistrationFact.IN_TIME);
    }

    @OnADatabase
    void a_rejection_is_read_by_another_before_it_goes_to_the_decider(TestOffice services) {
        Primary primary = Primary.loaded(services);
        ProposalService proposals = services.the(ProposalService.class);
        EnvelopeKey key = primary.envelope("registered_late");
        assertThat(primary.reviewing(key).work()).isEqualTo(Recommendation.REJECT);
        EnvelopeCase proposed = primary.now(key);
        assertThat(proposed.state()).isEqualTo(CaseState.PROPOSED);
        assertThatThrownBy(() -> as("ada", () -> proposals.secondReview(key, proposed.version(), true, "")))
                .isInstanceOf(NotPermittedException.class);
        EnvelopeCase ready = as("ben", () -> accepted(proposals.secondReview(key, proposed.version(), true, "")));
        assertThat(ready.state()).isEqualTo(CaseState.READY);
        assertThat(services.the(ProposalStore.class)
                        .newest(new ElectionId(Primary.ID), List.of(key.envelopeNo()))
                        .get(key.envelopeNo()))
                .isEqualTo(new ReadProposal(
                        services.the(ProposalStore.class).newest(key).orElseThrow(), UserName.orNull("ben")));
        EnvelopeCase back = as("ada", () -> accepted(proposals.withdraw(key, ready.version())));
        assertThat(Key.text(back.takenBy())).isEqualTo("ada");
    }

    @OnADatabase
    void nothing_counts_by_proposal_while_it_is_open_who_the_voter_is(TestOffice services) {
        Primary primary = Primary.loaded(services);
        EnvelopeKey key = primary.envelope("in_order");
        int version = primary.taken(key, new UserName("ada")).version();
        ActResult<EnvelopeCase> outcome = as(
                "ada",
                () -> services.the(ProposalService.class)
                        .propose(
                                new ProposeOutcome(key, version, DecisionOutcome.COUNT, List.of(), "", "I know her.")));
        assertThat(why(outcome)).isEqualTo(Why.QUESTION_STILL_OPEN);
        ActResult<EnvelopeCase> bare = as(
                "ada",
                () -> services.the(ProposalService.class)
                        .propose(new ProposeOutcome(
                                key, version, DecisionOutcome.REJECT, List.of(Reason.NOT_REGISTERED), "", "")));
        assertThat(((ActResult.Refused<EnvelopeCase>) bare).refusals())
                .extracting(refusal -> refusal.why())
                .containsExactly(Why.NO_REFERENCE, Why.DEPARTURE_WITHOUT_REASON);
    }

    @OnADatabase
    void two_envelopes_of_one_voter_are_settled_one_after_the_other(TestOffice services) {
        Primary primary = Primary.loaded(services);
        EnvelopeKey first = primary.envelope("two_envelopes_first");
        EnvelopeKey second = primary.envelope("two_envelopes_second");
        assertThat(primary.reviewing(second).work()).isEqualTo(Recommendation.RESEARCH);
        assertThat(primary.reviewing(first).work()).isEqualTo(Recommendation.COUNT);
        assertThat(services.the(VoterGroups.class).others(first)).containsExactly(second);
        assertThat(primary.reviewing(second).report().recommendation())
                .as("the first one is only proposed")
                .isEqualTo(Recommendation.RESEARCH);
    }

    @OnADatabase
    void research_is_asked_for_and_answered(TestOffice services) {
        Primary primary = Primary.loaded(services);
        ResearchService research = services.the(ResearchService.class);
        EnvelopeKey key = primary.envelope("in_order");
        int number = as(
                        "ada",
                        () -> research.ask(key, WaitsFor.ANOTHER_OFFICE, "The library", "Did the clerk see a license?"))
                .ifAccepted()
                .orElseThrow();
        assertThat(as("ada", () -> research.ask(key, WaitsFor.ANOTHER_OFFICE, "The library", " "))
                        .refusals())
                .extracting(Refusal::field)
                .containsExactly("asked");
        as("ben", () -> {
            research.recordAnswer(key, number, 0, "Yes, she noted it.");
            return true;
        });
        assertThat(services.the(ResearchStore.class).of(key)).singleElement().satisfies(request -> {
            assertThat(request.found()).isEqualTo("Yes, she noted it.");
            assertThat(request.foundBy()).isEqualTo("ben");
        });
    }
}
