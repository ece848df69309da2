package org.proviso.review.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.EnvelopeNumber;
import org.proviso.review.ends.EndedCaseService;
import org.proviso.review.ends.SentOnEnvelope;
import org.proviso.review.mail.MailListService;
import org.proviso.review.ui.ends.EndedCaseActs;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.PageHead;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;
import org.proviso.ui.frame.ElectionLine;
import org.proviso.ui.frame.NoElectionException;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** Envelopes that were sent on to other counties: to which, since when, and whether the other county has them. */
@Route(value = "review/sent-on", layout = OfficeFrame.class)
@PageTitle("Sent on \u00B7 Proviso")
@PermitAll
class SentOnView extends Composite<Div> {

    SentOnView(EndedCaseService ended, MailListService mailLists, AccessService access, WorkingElection workplace) {
        ElectionLine election = workplace.election().orElseThrow(NoElectionException::new);
        List<SentOnEnvelope> all = ended.sentOn(election.id());
        getContent().addClassName("sheet");
        getContent().add(new PageHead("Sent on", lead(all)), new ReviewNavigation());
        if (access.isPermitted(Permission.TELL_MAIL_DESK) && mailLists.isAsked(election.id())) {
            getContent().add(new Paragraph(Links.link("Lists for the mail desk", "review/mail-desk")));
        }
        if (all.isEmpty()) {
            getContent()
                    .add(new Paragraph("No envelopes are sent on. An envelope comes here when a different reviewer has"
                            + " confirmed that it goes to the voter's home county."));
            return;
        }
        getContent()
                .add(
                        table(all, election.zone()),
                        DownloadLinks.of(
                                "Envelopes sent on",
                                election.id(),
                                () -> table(ended.sentOn(election.id()), election.zone())));
    }

    private static PlainTable table(List<SentOnEnvelope> all, ZoneId zone) {
        PlainTable table = new PlainTable("Envelopes sent on", "Envelope", "County", "Sent on", "Receipt", "Form");
        all.forEach(envelope -> table.row(List.of(
                number(envelope.key().envelopeNo()),
                new Span(envelope.toCounty().isEmpty() ? "Not recorded" : envelope.toCounty()),
                new Span(moment(envelope.sentAt(), zone)),
                new Span(receipt(envelope)),
                envelope.sentAt() == null ? new Span() : EndedCaseActs.form(envelope.key()))));
        return table.acts("Form");
    }

    private static String lead(List<SentOnEnvelope> all) {
        long open = all.stream().filter(envelope -> !envelope.hasReceipt()).count();
        return open == 0
                ? "Every envelope that was sent on has its receipt."
                : UsDates.count(open, "envelope") + (open == 1 ? " has" : " have")
                        + " no receipt from the other county yet. Record it on the case.";
    }

    private static Anchor number(EnvelopeNumber number) {
        Anchor link = Links.link(number.value(), "review/case/" + number);
        link.addClassName("num");
        return link;
    }

    private static String moment(@Nullable Instant at, ZoneId zone) {
        return at == null ? "" : UsDates.near(at.atZone(zone).toLocalDateTime());
    }

    private static String receipt(SentOnEnvelope envelope) {
        return envelope.receivedOn() == null
                ? "None yet"
                : UsDates.digits(envelope.receivedOn()) + ", " + envelope.receivedBy()
                        + (envelope.countyReference().isEmpty() ? "" : ", " + envelope.countyReference());
    }
}
