package org.proviso.review.ui.desk;

import com.vaadin.flow.component.html.Div;
import org.proviso.access.Act;
import org.proviso.review.CaseState;
import org.proviso.review.file.DecidedLine;
import org.proviso.review.file.Proposed;
import org.proviso.ui.ActButton;
import org.proviso.ui.Links;
import org.proviso.ui.UsDates;

/** What can be done with a case that one does not work on, or why nothing can. */
final class StandingActs {

    private final Desk desk;
    private final Problem problem;
    private final Div acts;

    StandingActs(Desk desk, Problem problem, Div acts) {
        this.desk = desk;
        this.problem = problem;
        this.acts = acts;
    }

    void add() {
        CaseState state = desk.file().now().state();
        if (state == CaseState.OPEN && desk.acts().access().may(Act.PROPOSE)) {
            acts.add(new ActButton("Take this case", "T")
                    .first()
                    .onCase(pressed -> desk.firstAct(
                            pressed,
                            problem,
                            "Envelope " + desk.number() + " is assigned to you.",
                            seen -> desk.acts().cases().take(seen.key(), seen.version()))));
        } else if (state == CaseState.PROPOSED || state == CaseState.READY) {
            proposed();
        }
    }

    private void proposed() {
        Div words = new Div(why(desk));
        acts.add(words);
        boolean yours = desk.file().work().proposed().map(Proposed::yours).orElse(false);
        if (yours) {
            acts.add(new ActButton("Withdraw proposal")
                    .onCase(pressed -> desk.act(
                            pressed,
                            problem,
                            "Envelope " + desk.number() + ": proposal withdrawn. The case is assigned to you.",
                            seen -> desk.acts().proposals().withdraw(seen.key(), seen.version()))));
        } else if (desk.file().now().state() == CaseState.PROPOSED
                && desk.acts().access().may(Act.SECOND_REVIEW)) {
            acts.add(Links.link("Start second review", "review/second/" + desk.number()));
        }
    }

    /** Why nothing can be done here now. */
    static String why(Desk desk) {
        CaseState state = desk.file().now().state();
        return switch (state) {
            case RECEIVED -> "The affirmation is not keyed yet.";
            case OPEN -> "Waiting for a reviewer.";
            case IN_REVIEW -> "Assigned to " + desk.file().holding().by() + ".";
            case PROPOSED, READY -> proposedWords(desk);
            case DECIDED, RELEASED ->
                desk.file().work().decided().map(StandingActs::decided).orElse("Decided.");
            case SENT_ON -> "Sent on to the voter's home county. Not decided here.";
            case ENDED -> "Ended without a decision: there was no vote to decide.";
        };
    }

    private static String proposedWords(Desk desk) {
        String waits = desk.file().now().state() == CaseState.PROPOSED
                ? " Waiting for second review."
                : " Waiting for the decider.";
        return desk.file()
                .work()
                .proposed()
                .map(one -> one.by() + " proposed: " + one.proposal().as().words() + "." + waits)
                .orElse(waits.strip());
    }

    private static String decided(DecidedLine line) {
        String reasons = line.reasons().isEmpty() ? "" : " (" + Proposing.words(line.reasons()) + ")";
        return "Decided " + UsDates.near(line.at()) + ": " + line.as().words() + reasons + ".";
    }
}
