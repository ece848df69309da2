package org.proviso.review.ui.desk;

import com.vaadin.flow.component.html.Div;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.explain.LawLine;
import org.proviso.core.adjudication.facts.CheckInFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.SignatureComparisonFact;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.judging.AnsweredQuestion;
import org.proviso.review.acts.ConfirmLink;
import org.proviso.review.acts.TakeBackSearch;
import org.proviso.review.facts.AnswerKind;
import org.proviso.review.facts.RecordedAnswer;
import org.proviso.review.facts.SignatureComparison;
import org.proviso.ui.Links;
import org.proviso.ui.ReasonDialog;
import org.proviso.ui.field.ActButton;

/** The acts for one question of the law, and the line for a refusal. */
final class HeadingActs extends Div {

    private final CasePageContext desk;
    private final LawLine line;
    private final RefusalLine problem = new RefusalLine();
    private final Div acts = new Div();

    HeadingActs(CasePageContext desk, LawLine line) {
        this.desk = desk;
        this.line = line;
        acts.addClassName("acts");
        add(acts, problem);
        switch (line.heading()) {
            case VOTER -> voter();
            case ALREADY_VOTED -> alreadyVoted();
            case SIGNATURE -> signature();
            default -> {}
        }
        otherwise();
    }

    /** Every fact that the questions under a heading read. */
    static Set<Fact<?>> facts(CasePageContext desk, LawLine line) {
        return desk.file().report().presumed().answered().stream()
                .filter(answeredQuestion -> answeredQuestion.question().heading() == line.heading())
                .map(AnsweredQuestion::question)
                .flatMap(question -> question.reads().stream())
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private void voter() {
        Link link = desk.file().report().link();
        VoterId voterId = link.voterId();
        if (voterId != null && !link.isSettled()) {
            acts.add(new ActButton("Confirm link", "C")
                    .onCase(pressed -> desk.act(
                            pressed,
                            problem,
                            "Envelope " + desk.number() + ": link confirmed.",
                            seen -> desk.acts()
                                    .links()
                                    .confirm(new ConfirmLink(seen.key(), seen.version(), voterId, "")))));
        }
        acts.add(quiet("Choose another voter", () -> new ChooseVoterSheet(desk).open()));
        acts.add(quiet("Record a search", () -> new SearchSheet(desk).open()));
        if (link.identity() == VoterIdentityFact.NOT_ON_ROLL) {
            acts.add(quiet("Take back the search", this::takeBackSearch));
        }
    }

    private void takeBackSearch() {
        new ReasonDialog(
                        "Take back the search for envelope " + desk.number(),
                        "Take back search",
                        because -> desk.acts()
                                .searches()
                                .takeBack(new TakeBackSearch(
                                        desk.key(), desk.file().now().version(), because)),
                        "Envelope " + desk.number() + ": search taken back.",
                        desk::again)
                .ask("It was recorded by mistake. The voter is what the match says, and has to be settled again.");
    }

    private void alreadyVoted() {
        if (desk.file().report().presumed().facts().one(Fact.CHECK_IN) == CheckInFact.ELSEWHERE_UNSEEN) {
            acts.add(new ActButton("Record poll book check").does(() -> new PollBookSheet(desk).open()));
        }
        if (!desk.file().around().others().isEmpty()) {
            acts.add(quiet("Choose this envelope to count", () -> new ChooseEnvelopeSheet(desk).open()));
        }
    }

    private void signature() {
        SignatureComparisonFact now = desk.file().report().presumed().facts().one(Fact.SIGNATURE_COMPARISON);
        boolean first = now == null || now == SignatureComparisonFact.NOT_YET;
        if (line.standing() != LawLine.Status.OPEN || !first) {
            return;
        }
        if (desk.signatureHidden()) {
            acts.add(Links.link("Compare signature", "review/signature/" + desk.number()));
            return;
        }
        acts.add(new ActButton("Signature agrees", "A")
                .onCase(pressed -> desk.act(
                        pressed,
                        problem,
                        "Envelope " + desk.number() + ": signature agrees, recorded.",
                        seen -> desk.acts()
                                .answers()
                                .recordSignatureComparison(new SignatureComparison(
                                        seen.key(), seen.version(), SignatureComparison.Finding.AGREES, "")))));
        acts.add(Links.link("Compare at full size", "review/signature/" + desk.number()));
    }

    private void otherwise() {
        Set<Fact<?>> facts = facts(desk, line);
        Set<Fact<?>> answerable = new LinkedHashSet<>(facts);
        answerable.removeAll(OverrideAnswerSheet.BY_OTHER_ACTS);
        if (!answerable.isEmpty()) {
            acts.add(quiet(
                    "Override this answer", () -> new OverrideAnswerSheet(desk, line.heading(), answerable).open()));
        }
        for (RecordedAnswer given : desk.file().work().answers()) {
            if (facts.contains(given.fact())
                    && given.kind() != AnswerKind.SECOND_SIGNATURE_LOOK
                    && given.kind() != AnswerKind.OTHER) {
                acts.add(takeBack(given));
            }
        }
    }

    private ActButton takeBack(RecordedAnswer given) {
        String which = switch (given.kind()) {
            case OTHERWISE -> "override";
            case POLL_BOOK_SEEN -> "poll book check";
            default -> "comparison";
        };
        return new ActButton("Withdraw " + which)
                .quiet()
                .onCase(pressed -> desk.act(
                        pressed,
                        problem,
                        "Envelope " + desk.number() + ": withdrawn. The records apply again.",
                        seen -> desk.acts().answers().withdrawAnswer(seen.key(), seen.version(), given.fact())));
    }

    private static ActButton quiet(String words, Runnable act) {
        return new ActButton(words).quiet().does(act);
    }
}
