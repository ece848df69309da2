package org.proviso.review.ui.desk;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import java.util.Optional;
import org.proviso.access.Permission;
import org.proviso.core.CourtOrder;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.adjudication.questions.QuestionHeading;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseGraph;
import org.proviso.review.CaseState;
import org.proviso.review.acts.ConfirmLink;
import org.proviso.review.file.DecisionSummary;
import org.proviso.review.ui.ends.EndedCaseActs;
import org.proviso.review.ui.ends.ProposeEndSheet;
import org.proviso.ui.OutcomeMark;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;

/** The foot of a case: what the rules say on these facts, the caution, and the acts that settle the review. */
final class CaseFoot extends Div {

    private final CasePageContext desk;
    private final RefusalLine problem = new RefusalLine();

    CaseFoot(CasePageContext desk) {
        this.desk = desk;
        addClassName("case-foot");
        Div acts = new Div();
        acts.addClassName("acts");
        add(
                desk.file()
                        .work()
                        .decided()
                        .map(this::settled)
                        .orElseGet(() -> says(desk.file().report())),
                new Div(problem, acts));
        CaseState state = desk.file().now().state();
        if (!desk.isPaper() && (state == CaseState.SENT_ON || state == CaseState.ENDED)) {
            acts.add(new EndedCaseActs(
                    desk.file(), desk.acts().ended(), desk.acts().access(), desk::onSheet));
        } else if (desk.mayWork()) {
            working(acts);
        } else if (!desk.isReading()) {
            new UnassignedCaseActs(desk, problem, acts).add();
        }
        if (!desk.isPaper()) {
            ordered().ifPresent(acts::add);
        }
        if (acts.getComponentCount() == 0) {
            acts.add(new Span(UnassignedCaseActs.why(desk)));
        }
    }

    /** If a court ordered how this envelope is decided, the person who records orders enters it, whoever has the case. */
    private Optional<Component> ordered() {
        CaseState state = desk.file().now().state();
        if (CaseGraph.refusal(state, CaseAct.ORDER).isPresent()
                || !desk.acts().access().isPermitted(Permission.RECORD_ORDERS)) {
            return Optional.empty();
        }
        return desk.file().orders().stream()
                .filter(recorded -> recorded.order().settles(desk.number()))
                .findFirst()
                .filter(recorded -> !isSettledBy(recorded.order()))
                .map(recorded -> recorded.recordedBy()
                                .contains(desk.acts().access().signedIn().userName())
                        ? new Span("You recorded the court's order. Another supervisor enters it here.")
                        : new ActButton("Enter court order…").does(() -> new CourtOrderSheet(desk, recorded).open()));
    }

    private boolean isSettledBy(CourtOrder order) {
        return desk.file()
                .work()
                .decided()
                .filter(decided -> decided.decider().equals("court"))
                .filter(decided -> decided.as() == DecisionOutcome.REJECT == (order.kind() == CourtOrder.Kind.REJECT))
                .isPresent();
    }

    /** What was decided, by whom and when; what the rules say is beside it only where it is something else by now. */
    private Component settled(DecisionSummary decided) {
        Div verdict = new Div(mark(decided.as().recommendation()));
        verdict.addClassName("verdict");
        Recommendation now = desk.file().report().recommendation();
        if (now != decided.as().recommendation()) {
            Span then = new Span("The rules would now say: " + now.words());
            then.addClassName("outlook");
            verdict.add(then);
        }
        Div under = new Div(
                new Span("Decided " + UsDates.near(decided.at()) + " by " + DeciderWords.of(decided.decider()) + "."));
        under.addClassNames("soft", "small");
        Div settled = new Div(verdict, under);
        desk.file().work().waitsForMailDesk().ifPresent(words -> settled.add(closed(words)));
        return settled;
    }

    private static Component closed(String words) {
        Div line = new Div(new Span("Not opened yet: " + words + "."));
        line.addClassNames("small");
        return line;
    }

    private static Component says(CaseReport report) {
        Recommendation says = report.recommendation();
        Div mark = new Div(mark(says));
        mark.addClassName("verdict");
        Span caution = new Span("What the rules say on these facts. People decide; local law governs.");
        Div under = new Div(caution);
        under.addClassNames("soft", "small");
        Div rec = new Div(mark, under);
        outlook(report).ifPresent(words -> {
            Span then = new Span(words);
            then.addClassName("outlook");
            mark.add(then);
        });
        return rec;
    }

    /** The expected outcome if the open questions turn out as the records suggest. */
    private static Optional<String> outlook(CaseReport report) {
        Recommendation outlook = report.outlook().outcome().recommendation();
        boolean same = outlook == report.recommendation() || outlook == Recommendation.RESEARCH;
        return same ? Optional.empty() : Optional.of("Outlook: " + outlook.words());
    }

    /** A recommendation with its mark, if it has one. */
    static Component mark(Recommendation says) {
        String words = says.words().substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                + says.words().substring(1);
        return switch (says) {
            case COUNT -> new OutcomeMark(OutcomeMark.Shape.COUNT, words);
            case COUNT_IN_PART -> new OutcomeMark(OutcomeMark.Shape.COUNT_IN_PART, words);
            case REJECT -> new OutcomeMark(OutcomeMark.Shape.REJECT, words);
            default -> {
                Span plain = new Span(words);
                plain.addClassName("outcome");
                yield plain;
            }
        };
    }

    private void working(Div acts) {
        acts.add(new ActButton("Return case to queue").quiet().onCase(this::giveBack));
        acts.add(new ActButton("Request research", "R").does(() -> new ResearchSheet(desk).open()));
        acts.add(new ActButton("Propose a different outcome", "D").does(() -> new DifferentOutcomeSheet(desk).open()));
        Recommendation says = desk.file().report().recommendation();
        Optional<DecisionOutcome> as = RecommendedProposal.recommended(says);
        if (as.isPresent()) {
            acts.add(new ActButton("Propose " + says.words(), "P")
                    .first()
                    .onCase(pressed -> propose(pressed, as.get())));
        } else if (says == Recommendation.SENT_ON || says == Recommendation.ADMINISTRATIVE_END) {
            acts.add(proposeEnd(says));
        } else if (onlyTheSureLinkIsOpen(desk.file().report())) {
            acts.add(
                    new ActButton("Confirm link and propose count", "P").first().onCase(this::confirmAndPropose));
        } else {
            acts.add(nothingToPropose(says));
        }
    }

    private ActButton proposeEnd(Recommendation says) {
        List<Reason> reasons = desk.file().report().settled().outcome().reasons();
        return says == Recommendation.SENT_ON
                ? new ActButton("Propose to send on", "P")
                        .first()
                        .does(() -> ProposeEndSheet.sendOn(
                                desk.number(), reasons, desk.acts().endings(), desk::onLastSheet))
                : new ActButton("Propose to close without a decision", "P")
                        .first()
                        .does(() -> ProposeEndSheet.close(
                                desk.number(), reasons, desk.acts().endings(), desk::onLastSheet));
    }

    /** The match is almost certain, everything else is clear, and with that voter the ballot counts. */
    static boolean onlyTheSureLinkIsOpen(CaseReport report) {
        return report.link().identity() == VoterIdentityFact.PRESUMED
                && report.stillOpen().size() == 1
                && report.presumed().answered().stream()
                        .filter(answeredQuestion -> answeredQuestion.answer() instanceof Answer.Open)
                        .allMatch(
                                answeredQuestion -> answeredQuestion.question().heading() == QuestionHeading.VOTER)
                && report.outlook().outcome().recommendation() == Recommendation.COUNT;
    }

    private void confirmAndPropose(String pressed) {
        VoterId voterId = new VoterId(String.valueOf(desk.file().report().link().voterId()));
        desk.lastAct(
                pressed,
                problem,
                "Link confirmed. " + RecommendedProposal.done(desk.number(), DecisionOutcome.COUNT, false),
                seen -> desk.acts()
                        .clear()
                        .confirmAndPropose(new ConfirmLink(seen.key(), seen.version(), voterId, "")));
    }

    private Component nothingToPropose(Recommendation says) {
        List<String> open = desk.file().report().stillOpen();
        String words = says == Recommendation.WAIT_FOR_THE_VOTER
                ? "Nothing to propose until the voter's deadline."
                : open.size() == 1
                        ? "1 open question must be answered before you can propose."
                        : open.size() + " open questions must be answered before you can propose.";
        Span why = new Span(words);
        why.addClassNames("soft", "small");
        return why;
    }

    private void propose(String pressed, DecisionOutcome as) {
        desk.lastAct(
                pressed,
                problem,
                RecommendedProposal.done(desk.number(), as, as != DecisionOutcome.COUNT),
                seen -> desk.acts()
                        .proposals()
                        .propose(RecommendedProposal.of(
                                seen, as, desk.file().report().settled())));
    }

    private void giveBack(String pressed) {
        desk.awayAct(
                pressed,
                problem,
                "Envelope " + desk.number() + " returned to the queue.",
                seen -> desk.acts().cases().giveBack(seen.key(), seen.version()));
    }
}
