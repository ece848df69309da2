package org.proviso.board.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H3;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.board.ProposalForDecision;
import org.proviso.board.agenda.EnvelopeSummary;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.deciding.CountAgainstRules;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.ui.Links;
import org.proviso.ui.UsDates;

/** One envelope on the page: voter, location, recommendation and reasons, and the acts on it. */
final class DecidingEnvelopePart extends Div {

    /** {@code full} also shows the proposal and its proposer, for an envelope that is decided individually. */
    DecidingEnvelopePart(EnvelopeSummary line, boolean full, List<Component> buttons) {
        addClassName("envelope");
        Div words = new Div(full ? heading(line) : name(line));
        if (full && line.proposed() != null) {
            words.add(proposal(line, line.proposed()));
        }
        words.add(new Paragraph(explanation(line)));
        line.chosen().ifPresent(chosen -> words.add(chosen(chosen)));
        against(line).ifPresent(rules -> {
            Paragraph warn = new Paragraph("The proposal: " + rules.words());
            warn.addClassName("warn");
            words.add(warn);
        });
        if (changed(line)) {
            Paragraph warn = new Paragraph("The recommendation changed. The rules now say: "
                    + line.now().words() + ". Read the case before you make a motion, or send it back.");
            warn.addClassName("warn");
            words.add(warn);
        }
        Div acts = new Div(read(line));
        acts.addClassName("acts");
        acts.add(buttons);
        add(words, acts);
    }

    private static Component heading(EnvelopeSummary line) {
        H3 heading = new H3();
        if (line.proposed() != null) {
            heading.add(BoardWords.mark(line.proposed().outcome()), new Span(" "));
        }
        heading.add(number(line), new Span("  " + line.voter() + ", " + line.votingLocation()));
        return heading;
    }

    private static Component name(EnvelopeSummary line) {
        Paragraph name = new Paragraph(number(line), new Span("  " + line.voter() + ", " + line.votingLocation()));
        name.addClassName("whose");
        return name;
    }

    private static Span number(EnvelopeSummary line) {
        Span number = new Span(line.envelopeNo().value());
        number.addClassName("num");
        return number;
    }

    private static Paragraph proposal(EnvelopeSummary line, ProposalForDecision proposed) {
        String why = proposed.reasons().stream().map(Reason::words).collect(Collectors.joining("; "));
        String second = line.secondReadBy().isEmpty() ? "" : "; second review by " + line.secondReadBy();
        String departs = proposed.departsBecause().isBlank()
                ? ""
                : " This differs from the recommendation: " + proposed.departsBecause();
        return new Paragraph(line.proposedBy() + " proposes to "
                + proposed.outcome().words() + (why.isEmpty() ? "" : ": " + why) + second + "." + departs);
    }

    private static Paragraph chosen(EnvelopeSummary.ChosenVoter chosen) {
        Paragraph ground = new Paragraph("Voter chosen by " + chosen.by() + ", " + UsDates.near(chosen.at())
                + ": \u201C" + chosen.ground() + "\u201D");
        ground.addClassName("given");
        return ground;
    }

    private static String explanation(EnvelopeSummary line) {
        String issued = line.issueReasons().isEmpty()
                ? ""
                : "Reason issued: "
                        + line.issueReasons().stream().map(DateWords::code).collect(Collectors.joining(", ")) + ". ";
        return issued + (line.explanation().isEmpty() ? "No defects." : String.join(" ", line.explanation()));
    }

    private static Optional<CountAgainstRules> against(EnvelopeSummary line) {
        return Optional.ofNullable(line.proposed())
                .flatMap(proposed -> CountAgainstRules.of(proposed.outcome(), line.now(), line.knownToHaveVoted()));
    }

    private static boolean changed(EnvelopeSummary line) {
        ProposalForDecision proposed = line.proposed();
        return proposed != null && proposed.departsBecause().isBlank() && line.now() != said(proposed.outcome());
    }

    private static @Nullable Recommendation said(DecisionOutcome outcome) {
        return outcome.recommendation();
    }

    private static Anchor read(EnvelopeSummary line) {
        Anchor read = Links.link("Read case", "review/case/" + line.envelopeNo());
        read.getElement().setAttribute("aria-label", "Read case " + line.envelopeNo());
        return read;
    }
}
