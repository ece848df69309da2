package org.proviso.intake.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import org.proviso.core.ElectionId;
import org.proviso.intake.desk.EnvelopeFilter;
import org.proviso.intake.desk.EnvelopeListService;
import org.proviso.intake.desk.LocationReturnService;
import org.proviso.intake.desk.NextEnvelopeService;
import org.proviso.intake.numbers.NumberCheckService;
import org.proviso.ui.Links;
import org.proviso.ui.MessageLine;
import org.proviso.ui.PageHead;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** The Intake page: returns from the voting locations, and every envelope with its keying state. */
@Route(value = "intake", layout = OfficeFrame.class)
@PageTitle("Intake · Proviso")
@PermitAll
public final class IntakeView extends Composite<Div> {

    private final transient NextEnvelopeService next;
    private final ElectionId election;

    IntakeView(
            EnvelopeListService lists,
            LocationReturnService returns,
            NextEnvelopeService next,
            NumberCheckService numbers,
            WorkingElection workplace) {
        this.next = next;
        this.election = workplace.electionId();
        int all = lists.count(election, EnvelopeFilter.ALL, "");
        int waiting = lists.count(election, EnvelopeFilter.NOT_KEYED, "");
        PageHead head = new PageHead("Intake", UsDates.count(all, "envelope") + " received, " + waiting + " to key.");
        head.beside(
                Links.link("Receive envelopes", "intake/receive", "R"),
                Links.link("Transmittals", "intake/transmittals", "T"),
                Links.link("Cure evidence", "intake/cure", "C"),
                new ActButton("Start second keying", "S").does(this::second),
                new ActButton("Key next envelope", "N").first().does(this::first));
        Div parts = new Div(new EnvelopesPart(lists, election, waiting > 0), new ReturnsPart(returns.all(election)));
        parts.addClassName("came-in");
        getContent().addClassNames("sheet", "intake");
        getContent().add(head, new MarkedNumbersPart(numbers, election), parts);
    }

    private void first() {
        next.first(election)
                .ifPresentOrElse(
                        IntakeView::key, () -> MessageLine.done("No envelopes to key. Receive envelopes first."));
    }

    private void second() {
        next.second(election)
                .ifPresentOrElse(IntakeView::key, () -> MessageLine.done("No envelopes need a second keying by you."));
    }

    private static void key(String number) {
        MessageLine.nothing();
        UI.getCurrent().navigate(KeyingView.class, number);
    }
}
