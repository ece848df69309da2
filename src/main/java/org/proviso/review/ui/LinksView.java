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
import org.proviso.core.adjudication.explain.MatchWords;
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
import org.springframework.dao.OptimisticLockingFailureException;

/** Links that the match is sure of, in a list with their evidence, to be confirmed together; each is recorded. */
@Route(value = "review/links", layout = OfficeFrame.class)
@PageTitle("Links to confirm \u00B7 Proviso")
@PermitAll
class LinksView extends Composite<Div> {

    /** As many as can be read through with care at one sitting. */
    private static final int TOGETHER = 20;

    private final SecondReviewQueueService waiting;
    private final LinkService links;
    private final ReviewShift shift;
    private final String electionId;

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
                "Links to confirm together",
                "The match is almost sure of these, and no voter among them has a second envelope. Read them through;"
                        + " each is recorded by itself.");
        head.beside(shift.button());
        getContent().removeAll();
        getContent().add(head, new ReviewNavigation());
        if (sure.isEmpty()) {
            getContent()
                    .add(new Paragraph("No link waits here. Links that the match is sure of come with a newly loaded"
                            + " roll or newly keyed envelopes; all others are confirmed case by case."));
            return;
        }
        ActButton all = new ActButton("Confirm these " + UsDates.count(sure.size(), "link"))
                .first()
                .does(() -> ask(sure).open());
        getContent().add(table(sure), new Div(all));
    }

    private static PlainTable table(List<SureLink> sure) {
        PlainTable table = new PlainTable(
                "Links to confirm", "Envelope", "Name on the envelope", "Record", "How likely", "Evidence");
        for (SureLink one : sure) {
            String number = one.seen().key().envelopeNo();
            table.row(List.<Component>of(
                    Links.link(number, "review/case/" + number),
                    new Span(one.name().listed()),
                    new Span(one.voterId()),
                    new Span(MatchWords.words(one.probability())),
                    new Span(String.join(" ", one.evidence()))));
        }
        return table;
    }

    private ActDialog ask(List<SureLink> sure) {
        ActDialog[] asking = new ActDialog[1];
        asking[0] = new ActDialog("Confirm " + UsDates.count(sure.size(), "link"), "Confirm them", () -> {
            try {
                links.confirmTogether(sure.stream().map(SureLink::seen).toList());
            } catch (OptimisticLockingFailureException | IllegalArgumentException e) {
                return asking[0].refuse("None was confirmed. " + e.getMessage());
            }
            MessageLine.done(UsDates.count(sure.size(), "link") + " confirmed, each recorded by itself.");
            show();
            return true;
        });
        return asking[0].with("You have read the list: each of these envelopes is the named voter's.");
    }
}
