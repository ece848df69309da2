package org.proviso.review;

import static org.proviso.journey.Office.accepted;
import static org.proviso.journey.Office.as;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.deciding.DeciderKind;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Ask;
import org.proviso.database.TestOffice;
import org.proviso.intake.RecordCure;
import org.proviso.intake.cure.CureService;
import org.proviso.journey.Office;
import org.proviso.journey.Primary;
import org.proviso.journey.Truth;
import org.proviso.ledger.Actor;
import org.proviso.review.acts.LinkService;
import org.proviso.review.acts.NoteService;
import org.proviso.review.acts.ProposalService;
import org.proviso.review.acts.ResearchService;
import org.proviso.review.decide.DecidedCaseService;
import org.proviso.review.decide.DecisionService;
import org.proviso.review.facts.LinkStore;
import org.proviso.review.facts.VoterGroups;
import org.proviso.review.facts.WaitsFor;

/** The sample primary after every kind of act on its cases: all reviewed, most decided, some opened again or recalled. */
public record WorkedPrimary(Primary primary) {

    public static WorkedPrimary in(TestOffice services) {
        services.begin("the primary, worked", () -> work(services));
        return new WorkedPrimary(new Primary(new Office(services), Truth.of(Primary.ID)));
    }

    private static void work(TestOffice services) {
        WorkedPrimary worked = new WorkedPrimary(Primary.loaded(services));
        worked.sureLinksTogether();
        worked.research();
        worked.primary
                .truths()
                .values()
                .forEach(truth -> worked.primary
                        .reviewing(new EnvelopeKey(new ElectionId(Primary.ID), truth.envelopeNo()))
                        .work());
        worked.readAgain();
        worked.takenBackAndProposedAgain();
        worked.primary.at(2, 12, 0);
        worked.broughtSomething();
        worked.sentBack();
        worked.decided();
        worked.openedAgain();
    }

    private Office office() {
        return primary.office();
    }

    List<EnvelopeCase> inState(CaseState state) {
        return office().the(CaseService.class).inState(new ElectionId(Primary.ID), state);
    }

    private void sureLinksTogether() {
        List<CaseVersion> two = inState(CaseState.OPEN).stream()
                .filter(envelopeCase -> office().the(LinkStore.class)
                        .newest(envelopeCase.key())
                        .orElseThrow()
                        .identity()
                        .code()
                        .equals("presumed"))
                .filter(envelopeCase -> office().the(VoterGroups.class)
                        .others(envelopeCase.key())
                        .isEmpty())
                .limit(2)
                .map(envelopeCase -> new CaseVersion(envelopeCase.key(), envelopeCase.version()))
                .toList();
        as("ada", () -> office().the(LinkService.class).confirmTogether(two));
    }

    private void research() {
        EnvelopeKey key = primary.envelope("in_order");
        ResearchService research = office().the(ResearchService.class);
        int number = as(
                        "ada",
                        () -> research.ask(key, WaitsFor.ANOTHER_OFFICE, "The library", "Did the clerk see a license?"))
                .ifAccepted()
                .orElseThrow();
        as("ben", () -> {
            research.recordAnswer(key, number, 0, "Yes, she noted it.");
            return research.ask(key, WaitsFor.ANOTHER_OFFICE, "The library", "Which clerk?");
        });
        NoteService notes = office().the(NoteService.class);
        as("ada", () -> accepted(notes.write(key, "The voter calls again on Friday.")));
        as("ada", () -> accepted(notes.correct(key, 1, "The voter calls again on Monday.")));
    }

    private void readAgain() {
        List<EnvelopeCase> proposed = inState(CaseState.PROPOSED);
        ProposalService proposals = office().the(ProposalService.class);
        as("ben", () -> {
            proposed.stream()
                    .skip(1)
                    .forEach(envelopeCase ->
                            accepted(proposals.secondReview(envelopeCase.key(), envelopeCase.version(), true, "")));
            EnvelopeCase first = proposed.get(0);
            return accepted(proposals.secondReview(first.key(), first.version(), false, "Look at the date again."));
        });
    }

    private void takenBackAndProposedAgain() {
        EnvelopeCase envelopeCase = inState(CaseState.READY).get(0);
        ProposalService proposals = office().the(ProposalService.class);
        Proposal before =
                office().the(ProposalStore.class).newest(envelopeCase.key()).orElseThrow();
        as("ada", () -> {
            EnvelopeCase back = accepted(proposals.withdraw(envelopeCase.key(), envelopeCase.version()));
            return accepted(proposals.propose(new ProposeOutcome(
                    envelopeCase.key(),
                    back.version(),
                    before.as(),
                    before.grounds().reasons(),
                    before.grounds().legalReference(),
                    before.grounds().departsBecause())));
        });
    }

    private void broughtSomething() {
        EnvelopeKey key = primary.envelope("in_order");
        as("jon", () -> {
            office().the(CureService.class)
                    .record(new RecordCure(
                            new ElectionId(Primary.ID),
                            key.envelopeNo(),
                            Ask.IDENTIFICATION,
                            primary.day().plusDays(1).atTime(9, 30),
                            "Showed a license."));
            return key;
        });
    }

    private void sentBack() {
        List<EnvelopeCase> ready = inState(CaseState.READY);
        EnvelopeCase last = ready.get(ready.size() - 1);
        as(
                "eve",
                () -> accepted(office().the(DecidedCaseService.class)
                        .sendBack(last.key(), last.version(), "The reference is missing.")));
    }

    private void decided() {
        for (EnvelopeCase envelopeCase : inState(CaseState.READY)) {
            Proposal proposal =
                    office().the(ProposalStore.class).newest(envelopeCase.key()).orElseThrow();
            Settlement settlement = new Settlement(
                    envelopeCase.key(), envelopeCase.version(), proposal.as(), proposal.grounds(), Set.of());
            DecidedBy board = new DecidedBy(
                    DeciderKind.BOARD,
                    null,
                    null,
                    Set.of(new UserName("eve"), new UserName("fay"), new UserName("gil")),
                    new Actor("staff-TEST04"));
            office().services()
                    .inTransaction(() -> office().the(DecisionService.class).settle(List.of(settlement), board));
        }
    }

    private void openedAgain() {
        EnvelopeCase envelopeCase = inState(CaseState.DECIDED).get(0);
        as(
                "eve",
                () -> accepted(office().the(DecidedCaseService.class)
                        .reopen(envelopeCase.key(), envelopeCase.version(), "A paper was found.")));
    }

    /** How many cases stand where. */
    public Map<CaseState, Integer> states() {
        Map<CaseState, Integer> states = new LinkedHashMap<>();
        office().the(CaseService.class)
                .all(new ElectionId(Primary.ID))
                .forEach(envelopeCase -> states.merge(envelopeCase.state(), 1, Integer::sum));
        return states;
    }

    /** A decided case that was decided so. */
    public EnvelopeKey decidedAs(DecisionOutcome as) {
        return office().the(DecisionService.class).standing(new ElectionId(Primary.ID)).entrySet().stream()
                .filter(entry -> entry.getValue().as() == as)
                .map(entry -> new EnvelopeKey(new ElectionId(Primary.ID), entry.getKey()))
                .findFirst()
                .orElseThrow();
    }
}
