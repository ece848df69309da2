package org.proviso.review.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.review.CaseVersion;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.acts.LinkService;
import org.proviso.review.queue.SecondReviewQueueService;
import org.proviso.review.queue.SureLink;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.MessageLine;
import org.proviso.ui.PageHead;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ActDialog;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;
import org.springframework.dao.OptimisticLockingFailureException;

/**
 * Almost certain links, each record beside its envelope. Those ticked are confirmed together; each is recorded separately. A line
 * that changed meanwhile says so and loses its tick, and the others keep theirs.
 */
@Route(value = "review/links", layout = OfficeFrame.class)
@PageTitle("Links to confirm \u00B7 Proviso")
@PermitAll
class LinksView extends Composite<Div> {

    /** The most lines on one page; the next come when these are confirmed. */
    private static final int MOST = 50;

    private final SecondReviewQueueService waiting;
    private final LinkService links;
    private final ReviewShift shift;
    private final ElectionId electionId;
    private final ActButton confirm = new ActButton("");
    private LinkLines lines = new LinkLines(List.of(), this::counted);

    LinksView(SecondReviewQueueService waiting, LinkService links, ReviewShift shift, WorkingElection workplace) {
        this.waiting = waiting;
        this.links = links;
        this.shift = shift;
        this.electionId = workplace.electionId();
        getContent().addClassNames("sheet", "together");
        confirm.first().does(this::ask);
        show();
    }

    private void show() {
        lines = new LinkLines(waiting.sureLinks(electionId, MOST), this::counted);
        PageHead head = new PageHead(
                "Confirm sure links",
                "These matches are almost certain, and none of these voters has a second envelope. Tick the lines you read."
                        + " Each link is recorded separately.");
        head.beside(shift.button());
        getContent().removeAll();
        getContent().add(head, new ReviewNavigation());
        if (lines.links().isEmpty()) {
            getContent()
                    .add(new Paragraph(
                            "No links to confirm. Almost certain matches appear here after a roll is loaded or"
                                    + " envelopes are keyed. All others are confirmed case by case."));
            return;
        }
        Div acts = new Div(
                confirm,
                new ActButton("Tick all that are the same").does(lines::tickTheSame),
                new ActButton("Untick all").does(lines::untickAll));
        acts.addClassName("acts");
        Div foot = new Div(acts);
        foot.addClassName("links-foot");
        getContent()
                .add(
                        count(),
                        lines,
                        DownloadLinks.of(
                                "Links to confirm",
                                electionId,
                                () -> new LinkLines(waiting.sureLinks(electionId, MOST), () -> {}).table()),
                        foot);
        counted();
    }

    private Paragraph count() {
        int all = lines.links().size();
        long differ = lines.links().stream().filter(SureLink::differs).count();
        return new Paragraph((all == MOST ? "The first " + MOST + " links. " : UsDates.count(all, "link") + ". ")
                + "In " + differ + " the record differs from the envelope in a field.");
    }

    /** The button says how many lines are ticked. */
    private void counted() {
        int ticked = lines.ticked().size();
        confirm.removeAll();
        confirm.add(new Span(ticked == 0 ? "Confirm ticked links" : "Confirm " + UsDates.count(ticked, "link")));
    }

    private void ask() {
        List<SureLink> ticked = lines.ticked();
        if (ticked.isEmpty()) {
            MessageLine.refused("Tick the links that you read and want to confirm.");
            return;
        }
        new ActDialog("Confirm " + UsDates.count(ticked.size(), "link"), "Confirm links", () -> confirmed(ticked))
                .with("Confirm that you read each ticked line and that each envelope belongs to the voter named.")
                .open();
    }

    /** The sheet closes in any case: what stands in the way is said on the lines it is about. */
    private boolean confirmed(List<SureLink> ticked) {
        try {
            ActResult<List<EnvelopeCase>> confirmed =
                    links.confirmTogether(ticked.stream().map(SureLink::seen).toList());
            if (confirmed instanceof ActResult.Refused<List<EnvelopeCase>> refused) {
                keep(said(refused.refusals()), refused.words());
                return true;
            }
            MessageLine.done(UsDates.count(ticked.size(), "link") + " confirmed. Each was recorded separately.");
            show();
        } catch (OptimisticLockingFailureException e) {
            keep(Map.of(), "Somebody changed at least one of these cases in the meantime.");
        }
        return true;
    }

    private static Map<EnvelopeNumber, String> said(List<Refusal> refusals) {
        Map<EnvelopeNumber, String> said = new HashMap<>();
        refusals.forEach(refusal -> {
            if (refusal.about() != null) {
                said.put(refusal.about(), refusal.spoken());
            }
        });
        return said;
    }

    /** Nothing was confirmed: the lines as they are now, with the ticks of all that nothing is said about. */
    private void keep(Map<EnvelopeNumber, String> said, String why) {
        List<SureLink> before = lines.ticked();
        show();
        Map<EnvelopeNumber, CaseVersion> now = lines.links().stream()
                .map(SureLink::seen)
                .collect(Collectors.toMap(seen -> seen.key().envelopeNo(), seen -> seen));
        StringBuilder gone = new StringBuilder();
        for (SureLink link : before) {
            EnvelopeNumber number = link.seen().key().envelopeNo();
            if (!now.containsKey(number)) {
                gone.append(' ').append(number).append(" is no longer among them.");
            } else if (said.containsKey(number)) {
                lines.tell(number, said.get(number));
            } else if (!link.seen().equals(now.get(number))) {
                lines.tell(number, "Changed in the meantime. Read it again.");
            } else {
                lines.tick(number);
            }
        }
        MessageLine.refused("No links confirmed. " + why + gone + " The other lines are still ticked.");
    }
}
