package org.proviso.review.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.adjudication.explain.MatchWords;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.acts.LinkService;
import org.proviso.review.queue.SecondReviewQueueService;
import org.proviso.review.queue.SureLink;
import org.proviso.ui.Links;
import org.proviso.ui.MessageLine;
import org.proviso.ui.PageHead;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ActDialog;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** Almost certain links, in a list with their evidence, confirmed together; each is recorded separately. */
@Route(value = "review/links", layout = OfficeFrame.class)
@PageTitle("Links to confirm \u00B7 Proviso")
@PermitAll
class LinksView extends Composite<Div> {

    /** As many as a person can read carefully at one time. */
    private static final int TOGETHER = 20;

    private final SecondReviewQueueService waiting;
    private final LinkService links;
    private final ReviewShift shift;
    private final ElectionId electionId;

    LinksView(SecondReviewQueueService waiting, LinkService links, ReviewShift shift, WorkingElection workplace) {
        this.waiting = waiting;
        this.links = links;
        this.shift = shift;
        this.electionId = workplace.electionId();
        getContent().addClassNames("sheet", "together");
        show();
    }

    private void show() {
        List<SureLink> sure = waiting.sureLinks(electionId, TOGETHER);
        PageHead head = new PageHead(
                "Confirm sure links",
                "These matches are almost certain, and none of these voters has a second envelope. Read them all;"
                        + " each link is recorded separately.");
        head.beside(shift.button());
        getContent().removeAll();
        getContent().add(head, new ReviewNavigation());
        if (sure.isEmpty()) {
            getContent()
                    .add(new Paragraph(
                            "No links to confirm. Almost certain matches appear here after a roll is loaded or"
                                    + " envelopes are keyed. All others are confirmed case by case."));
            return;
        }
        ActButton all = new ActButton("Confirm these " + UsDates.count(sure.size(), "link"))
                .first()
                .does(() -> ask(sure).open());
        getContent().add(table(sure), new Div(all));
    }

    private static PlainTable table(List<SureLink> sure) {
        PlainTable table = new PlainTable(
                "Links to confirm", "Envelope", "Name on envelope", "Voter ID", "Likelihood", "Evidence");
        for (SureLink link : sure) {
            EnvelopeNumber number = link.seen().key().envelopeNo();
            table.row(List.<Component>of(
                    Links.link(number.value(), "review/case/" + number),
                    new Span(link.name().listed()),
                    new Span(link.voterId().value()),
                    new Span(MatchWords.words(link.probability())),
                    new Span(String.join(" ", link.evidence()))));
        }
        return table;
    }

    private ActDialog ask(List<SureLink> sure) {
        ActDialog[] asking = new ActDialog[1];
        asking[0] = new ActDialog("Confirm " + UsDates.count(sure.size(), "link"), "Confirm links", () -> {
            ActResult<List<EnvelopeCase>> confirmed =
                    links.confirmTogether(sure.stream().map(SureLink::seen).toList());
            if (confirmed instanceof ActResult.Refused<List<EnvelopeCase>> refused) {
                return asking[0].refuse("No links confirmed. " + refused.words());
            }
            MessageLine.done(UsDates.count(sure.size(), "link") + " confirmed. Each was recorded separately.");
            show();
            return true;
        });
        return asking[0].with(
                "Confirm that you read the whole list and that each envelope belongs to the voter named.");
    }
}
