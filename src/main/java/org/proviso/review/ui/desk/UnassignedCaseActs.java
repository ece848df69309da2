package org.proviso.review.ui.desk;

import com.vaadin.flow.component.html.Div;
import java.util.Optional;
import org.proviso.access.Permission;
import org.proviso.review.CaseState;
import org.proviso.review.file.DecisionSummary;
import org.proviso.review.file.EndOfCase;
import org.proviso.review.file.ProposalDetails;
import org.proviso.review.ui.ends.EndedCaseActs;
import org.proviso.ui.Links;
import org.proviso.ui.field.ActButton;

/** What can be done with a case that one does not work on, or why nothing can. */
final class UnassignedCaseActs {

    private final CasePageContext desk;
    private final RefusalLine problem;
    private final Div acts;

    UnassignedCaseActs(CasePageContext desk, RefusalLine problem, Div acts) {
        this.desk = desk;
        this.problem = problem;
        this.acts = acts;
    }

    void add() {
        CaseState state = desk.file().now().state();
        if (state == CaseState.OPEN && desk.acts().access().isPermitted(Permission.PROPOSE)) {
            acts.add(new ActButton("Take this case", "T")
                    .first()
                    .onCase(pressed -> desk.firstAct(
                            pressed,
                            problem,
                            "Envelope " + desk.number() + " is assigned to you.",
                            seen -> desk.acts().cases().take(seen.key(), seen.version()))));
        } else if (state == CaseState.IN_REVIEW && desk.acts().access().isPermitted(Permission.RELEASE_CASES)) {
            acts.add(new Div(why(desk)));
            acts.add(new ActButton("Release case\u2026").does(() -> new ReleaseCaseSheet(desk).open()));
        } else if (state == CaseState.PROPOSED || state == CaseState.READY) {
            proposed();
        }
    }

    private void proposed() {
        Div words = new Div(why(desk));
        acts.add(words);
        boolean yours = desk.file()
                .work()
                .end()
                .waits()
                .map(EndOfCase.Proposed::yours)
                .or(() -> desk.file().work().proposed().map(ProposalDetails::yours))
                .orElse(false);
        if (yours) {
            acts.add(new ActButton("Withdraw proposal")
                    .onCase(pressed -> desk.act(
                            pressed,
                            problem,
                            "Envelope " + desk.number() + ": proposal withdrawn. The case is assigned to you.",
                            seen -> desk.acts().proposals().withdraw(seen.key(), seen.version()))));
        } else if (desk.file().now().state() == CaseState.PROPOSED
                && desk.acts().access().isPermitted(Permission.SECOND_REVIEW)) {
            acts.add(Links.link("Start second review", "review/second/" + desk.number()));
        }
    }

    /** Why nothing can be done here now. */
    static String why(CasePageContext desk) {
        CaseState state = desk.file().now().state();
        return switch (state) {
            case RECEIVED -> "The affirmation is not keyed yet.";
            case OPEN -> "Waiting for a reviewer.";
            case IN_REVIEW -> "Assigned to " + desk.file().holding().by() + ".";
            case PROPOSED, READY -> proposedWords(desk);
            case DECIDED, RELEASED ->
                desk.file().work().decided().map(UnassignedCaseActs::because).orElse("Decided.");
            case SENT_ON, ENDED -> EndedCaseActs.words(desk.file());
        };
    }

    private static String proposedWords(CasePageContext desk) {
        String waits = desk.file().now().state() == CaseState.PROPOSED
                ? " Waiting for second review."
                : " Waiting for the decider.";
        return desk.file()
                .work()
                .end()
                .waits()
                .map(details ->
                        details.by() + " proposed: " + details.proposal().words() + "." + waits)
                .or(() -> outcomeWords(desk, waits))
                .orElse(waits.strip());
    }

    private static Optional<String> outcomeWords(CasePageContext desk, String waits) {
        return desk.file()
                .work()
                .proposed()
                .map(details ->
                        details.by() + " proposed: " + details.proposal().as().words() + "." + waits);
    }

    /** The reasons of a decision; the outcome stands beside them. */
    private static String because(DecisionSummary line) {
        return line.reasons().isEmpty()
                ? "No defects were found."
                : "Because " + RecommendedProposal.words(line.reasons()) + ".";
    }
}
