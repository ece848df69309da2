package org.proviso.notices.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.BeforeEnterEvent;
import com.vaadin.flow.router.BeforeEnterObserver;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.List;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.notices.Letter;
import org.proviso.notices.Notice;
import org.proviso.notices.NoticeAttempt;
import org.proviso.notices.NoticeService;
import org.proviso.notices.NoticeSlipService;
import org.proviso.notices.NoticeSlipService.TakeBackAttempt;
import org.proviso.ui.AddressedEnvelope;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.NothingHereException;
import org.proviso.ui.PageHead;
import org.proviso.ui.PlainTable;
import org.proviso.ui.ReasonDialog;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** One letter as it would go out now, next to the log of how the voter was notified. */
@Route(value = "notices/letter/:envelope/:number([0-9]{1,6})", layout = OfficeFrame.class)
@PermitAll
public final class LetterView extends Composite<Div> implements BeforeEnterObserver, HasDynamicTitle {

    private final transient NoticeService notices;
    private final transient NoticeSlipService slips;
    private final transient WorkingElection workplace;
    private String title = "";

    LetterView(NoticeService notices, NoticeSlipService slips, WorkingElection workplace) {
        this.notices = notices;
        this.slips = slips;
        this.workplace = workplace;
        getContent().addClassNames("sheet", "notices");
    }

    @Override
    public void beforeEnter(BeforeEnterEvent event) {
        String envelope = event.getRouteParameters().get("envelope").orElseThrow();
        title = " about envelope " + envelope;
        int number = event.getRouteParameters().getInteger("number").orElseThrow();
        show(new EnvelopeKey(workplace.electionId(), AddressedEnvelope.number(envelope)), number);
    }

    @Override
    public String getPageTitle() {
        return "Letter" + title + " · Proviso";
    }

    private void show(EnvelopeKey key, int number) {
        Notice notice = notices.notices(key).stream()
                .filter(logged -> logged.number() == number)
                .findFirst()
                .orElseThrow(() -> new NothingHereException("There is no such notice."));
        getContent().removeAll();
        PageHead head = new PageHead("Letter about envelope " + key.envelopeNo(), NoticeWords.about(notice));
        head.beside(pdf(key, number), Links.link("All notices", "notices"));
        Div both = new Div(new Div(paper(notices.letter(key, number))), log(notice));
        both.addClassName("letter");
        getContent().add(head, both);
    }

    private static Anchor pdf(EnvelopeKey key, int number) {
        Anchor pdf = new Anchor(
                "/notices/letter.pdf?election=" + key.electionId() + "&envelope=" + key.envelopeNo() + "&notice="
                        + number,
                "Open PDF");
        pdf.setRouterIgnore(true);
        return pdf;
    }

    private static Div paper(Letter letter) {
        Div paper = new Div();
        paper.addClassName("paper");
        letter.from().forEach(line -> paper.add(new Div(Links.withPhone(line, letter.office()))));
        Div to = new Div(new Div(letter.to().name()), new Div(letter.to().address()));
        to.addClassName("to");
        Paragraph subject = new Paragraph(letter.subject());
        subject.addClassName("subject");
        paper.add(to, subject);
        letter.paragraphs().forEach(words -> paper.add(new Paragraph(Links.withPhone(words, letter.office()))));
        Div notes = new Div();
        if (letter.formComes()) {
            notes.add(warning("Enclose a form to register to vote: the letter says that one comes with it."));
        }
        if (letter.needsTranslation()) {
            notes.add(warning("The voter asked for another language (" + letter.language()
                    + "). Enclose a translation; this letter is available in English only."));
        }
        return notes.getComponentCount() == 0 ? paper : new Div(notes, paper);
    }

    private static Paragraph warning(String words) {
        Paragraph warning = new Paragraph(words);
        warning.addClassName("warn");
        return warning;
    }

    private Div log(Notice notice) {
        Div log = new Div(new H2("Notice log"));
        if (notice.isWithdrawn()) {
            log.add(new Paragraph("Withdrawn. This notice is no longer due."));
            return log;
        }
        var attempts = notices.attempts(notice.key(), notice.number());
        if (attempts.isEmpty()) {
            log.add(new Paragraph("The voter has not been notified yet. Due " + UsDates.near(notice.dueAt()) + "."));
        } else {
            log.add(
                    attempts(notice),
                    DownloadLinks.of(
                            "Attempts to notify the voter", notice.key().electionId(), () -> attempts(notice)));
        }
        log.add(new NoticeSentSheet(notices, workplace, notice, () -> show(notice.key(), notice.number())).button());
        return log;
    }

    private PlainTable attempts(Notice notice) {
        PlainTable table = new PlainTable("Attempts to notify the voter", "No.", "How", "When", "Came back", "");
        notices.attempts(notice.key(), notice.number()).forEach(attempt -> row(table, notice, attempt));
        return table;
    }

    private void row(PlainTable table, Notice notice, NoticeAttempt attempt) {
        table.row(List.of(
                new Span(String.valueOf(attempt.number())),
                new Span(DateWords.code(attempt.channel().code())),
                new Span(UsDates.near(attempt.sentAt())),
                cameBack(notice, attempt),
                takenBack(notice, attempt)));
    }

    private Span cameBack(Notice notice, NoticeAttempt attempt) {
        Runnable again = () -> show(notice.key(), notice.number());
        Span back = new Span(attempt.cameBackAt() == null ? "" : UsDates.near(attempt.cameBackAt()));
        if (attempt.isTakenBack()) {
            return back;
        }
        if (attempt.cameBackAt() == null) {
            back.add(new ReturnedMailSheet(notices, workplace, notice, attempt, again).button());
            return back;
        }
        back.add(button(
                "Take back returned mail",
                attempt,
                () -> new ReasonDialog(
                                "Take back returned mail",
                                "Take back returned mail",
                                because -> slips.takeBackCameBack(slip(notice, attempt, because)),
                                "Returned mail taken back.",
                                again)
                        .ask("Attempt " + attempt.number() + " is logged as returned by mistake.")));
        return back;
    }

    private Span takenBack(Notice notice, NoticeAttempt attempt) {
        if (attempt.isTakenBack()) {
            return new Span("taken back: " + attempt.takenBackBecause());
        }
        return new Span(button(
                "Take back attempt",
                attempt,
                () -> new ReasonDialog(
                                "Take back attempt " + attempt.number(),
                                "Take back attempt",
                                because -> slips.takeBackSent(slip(notice, attempt, because)),
                                "Attempt taken back. Without another one, the notice is due again.",
                                () -> show(notice.key(), notice.number()))
                        .ask("It was logged by mistake: the voter was not notified then. The case is assessed anew.")));
    }

    private static ActButton button(String words, NoticeAttempt attempt, Runnable act) {
        ActButton button = new ActButton(words + "…").quiet().does(act);
        button.setAriaLabel(words + " " + attempt.number());
        return button;
    }

    private static TakeBackAttempt slip(Notice notice, NoticeAttempt attempt, String because) {
        return new TakeBackAttempt(notice.key(), notice.number(), notice.version(), attempt.number(), because);
    }
}
