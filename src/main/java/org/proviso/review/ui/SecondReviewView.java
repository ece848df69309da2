package org.proviso.review.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.OptionalParameter;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.rules.Reason;
import org.proviso.review.file.CaseFile;
import org.proviso.review.file.CaseFileService;
import org.proviso.review.queue.ProposalToReview;
import org.proviso.review.queue.SecondReviewQueueService;
import org.proviso.review.ui.desk.CasePage;
import org.proviso.review.ui.desk.CasePageContext;
import org.proviso.review.ui.desk.ReviewServices;
import org.proviso.ui.AddressedEnvelope;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.PageHead;
import org.proviso.ui.RowGrid;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.frame.ElectionLine;
import org.proviso.ui.frame.NoElectionException;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** Other people's proposals waiting for second review, and one of them with its case. */
@Route(value = "review/second", layout = OfficeFrame.class)
@PermitAll
class SecondReviewView extends Composite<Div>
        implements HasUrlParameter<String>, HasDynamicTitle, CasePageContext.AfterAct {

    private final SecondReviewQueueService waiting;
    private final CaseFileService files;
    private final ReviewServices acts;
    private final ElectionLine election;
    private @Nullable String number;

    SecondReviewView(
            SecondReviewQueueService waiting, CaseFileService files, ReviewServices acts, WorkingElection workplace) {
        this.waiting = waiting;
        this.files = files;
        this.acts = acts;
        this.election = workplace.election().orElseThrow(NoElectionException::new);
    }

    @Override
    public void setParameter(BeforeEvent event, @OptionalParameter @Nullable String envelopeNo) {
        number = envelopeNo;
        again();
    }

    @Override
    public String getPageTitle() {
        return (number == null ? "Second review" : "Second review of envelope " + number) + " \u00B7 Proviso";
    }

    @Override
    public void again() {
        getContent().removeAll();
        if (number == null) {
            list();
        } else {
            one(AddressedEnvelope.number(number));
        }
    }

    @Override
    public void next() {
        List<ProposalToReview> first = waiting.toRead(election.id(), 0, 1);
        if (first.isEmpty()) {
            UI.getCurrent().navigate(SecondReviewView.class);
        } else {
            UI.getCurrent()
                    .navigate(SecondReviewView.class, first.get(0).envelopeNo().value());
        }
    }

    private void one(EnvelopeNumber envelopeNo) {
        getContent().setClassName("whole");
        CaseFile file = files.open(new EnvelopeKey(election.id(), envelopeNo))
                .orElseThrow(() -> AddressedEnvelope.missing(envelopeNo.value()));
        CasePageContext desk = new CasePageContext(file, acts, this, true);
        CasePage page = CasePage.forSecondReader(desk, Links.link("All proposals", "review/second"));
        getContent().add(page);
        page.focusTitle();
    }

    private void list() {
        getContent().setClassName("sheet");
        int count = waiting.toRead(election.id());
        PageHead head = new PageHead(
                "Second review",
                count == 0
                        ? "No proposals are waiting for your second review."
                        : UsDates.count(count, "proposal") + (count == 1 ? " is" : " are")
                                + " waiting for second review, not counting your own.");
        if (count > 0) {
            head.beside(new ActButton("Review next proposal", "N").first().does(this::next));
        }
        RowGrid<ProposalToReview> rows = new RowGrid<>(
                "Proposals waiting for second review",
                "No proposals are waiting. When a colleague proposes to reject, to count in part, or to count against the rules'"
                        + " answer, the proposal comes here before it goes to the decider. So does a proposal to send an"
                        + " envelope on or to close a case without a decision, before it takes effect.");
        columns(rows);
        rows.show((offset, limit) -> waiting.toRead(election.id(), offset, limit), () -> count);
        getContent()
                .add(
                        head,
                        new ReviewNavigation(),
                        rows,
                        DownloadLinks.of("Proposals waiting for second review", election.id(), rows));
    }

    private void columns(RowGrid<ProposalToReview> rows) {
        rows.addComponentColumn(row -> {
                    Anchor link = Links.link(row.envelopeNo().value(), "review/second/" + row.envelopeNo());
                    link.addClassName("num");
                    return link;
                })
                .setHeader("Envelope")
                .setWidth("7rem")
                .setFlexGrow(0);
        rows.words("Proposed", "12rem", ProposalToReview::words);
        rows.words(
                "Reasons",
                "24rem",
                row -> row.reasons().stream().map(Reason::words).collect(Collectors.joining("; ")));
        rows.words("Proposed by", "11rem", ProposalToReview::proposedBy);
        rows.words(
                "When",
                "11rem",
                row -> UsDates.near(row.at().atZone(election.zone()).toLocalDateTime()));
    }
}
