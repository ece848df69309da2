package org.proviso.review.ui.voters;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Span;
import org.proviso.core.Voter;
import org.proviso.core.adjudication.explain.MatchWords;
import org.proviso.review.file.PossibleVoter;
import org.proviso.ui.UsDates;

/** A possible voter: name, likelihood in a word (figure on demand), record, evidence. */
public final class VoterLine extends Div {

    public VoterLine(PossibleVoter possibleVoter) {
        addClassName("candidate");
        setClassName("named", possibleVoter.linked() || possibleVoter.presumed());
        Voter voter = possibleVoter.voter();
        Span name = new Span(voter.name().listed());
        name.addClassName("strong");
        Span id = new Span(voter.voterId().value());
        id.addClassNames("num", "soft");
        Div first = new Div(name, id, likeness(possibleVoter));
        first.addClassName("candidate-name");
        Voter.Residence home = voter.residence();
        Span born = new Span(UsDates.digits(voter.birthDate()));
        born.addClassName("num");
        Div record = new Div(
                new Span("born "),
                born,
                new Span(" \u00B7 " + possibleVoter.address() + " \u00B7 precinct " + home.precinct()
                        + (home.split().isEmpty() ? "" : " split " + home.split())
                        + (voter.party().isEmpty() ? "" : " \u00B7 " + voter.party())));
        Div evidence = new Div(new Span(String.join(" ", possibleVoter.evidence())));
        evidence.addClassName("soft");
        add(first, record, evidence);
    }

    private static Component likeness(PossibleVoter possibleVoter) {
        if (possibleVoter.linked() && possibleVoter.probability() == 0) {
            return soft("linked by a reviewer");
        }
        NativeDetails likely = new NativeDetails(
                (possibleVoter.linked() ? "linked; " : "") + MatchWords.likelihood(possibleVoter.probability()),
                new Span(MatchWords.percent(possibleVoter.probability())));
        likely.addClassName("likely");
        return likely;
    }

    private static Span soft(String words) {
        Span span = new Span(words);
        span.addClassNames("soft", "likely");
        return span;
    }
}
