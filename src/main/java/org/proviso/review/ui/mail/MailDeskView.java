package org.proviso.review.ui.mail;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.Stream;
import org.proviso.core.act.ActResult;
import org.proviso.review.mail.GivenAnswer;
import org.proviso.review.mail.MailLine;
import org.proviso.review.mail.MailList;
import org.proviso.review.mail.MailListService;
import org.proviso.review.mail.SentLine;
import org.proviso.review.ui.ReviewNavigation;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.MessageLine;
import org.proviso.ui.PageHead;
import org.proviso.ui.PageSection;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ActDialog;
import org.proviso.ui.frame.ElectionLine;
import org.proviso.ui.frame.NoElectionException;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** The lists for the mail-ballot desk: the next one, those that were sent, and what the desk answered. */
@Route(value = "review/mail-desk", layout = OfficeFrame.class)
@PageTitle("Mail desk \u00B7 Proviso")
@PermitAll
class MailDeskView extends Composite<Div> {

    private final transient MailListService lists;
    private final transient ElectionLine election;

    MailDeskView(MailListService lists, WorkingElection workplace) {
        this.lists = lists;
        this.election = workplace.election().orElseThrow(NoElectionException::new);
        getContent().addClassName("sheet");
        show();
    }

    private void show() {
        List<MailLine> next = lists.next(election.id());
        List<MailList> sent = lists.sent(election.id());
        getContent().removeAll();
        getContent().add(new PageHead("Mail desk", lead(next, sent)), new ReviewNavigation());
        if (!next.isEmpty()) {
            getContent().add(next(next, sent.size() + 1));
        }
        for (int place = sent.size() - 1; place >= 0; place--) {
            getContent().add(list(sent.get(place)));
        }
    }

    private String lead(List<MailLine> next, List<MailList> sent) {
        int unanswered = sent.stream().mapToInt(MailList::unanswered).sum();
        if (next.isEmpty() && unanswered == 0) {
            return lists.isAsked(election.id())
                    ? "Nothing is left to tell the mail desk, and it has answered every line."
                    : "The rules of this election ask nothing of the mail desk.";
        }
        return Stream.of(
                                next.isEmpty() ? "" : UsDates.count(next.size(), "line") + " to send",
                                unanswered == 0 ? "" : UsDates.count(unanswered, "line") + " without an answer")
                        .filter(words -> !words.isEmpty())
                        .reduce((one, other) -> one + ", " + other)
                        .orElse("")
                + ". An envelope that counts stays closed until the mail desk has answered its line.";
    }

    private PlainTable next(List<MailLine> lines) {
        PlainTable table = new PlainTable(
                "Lines of the next list",
                "Envelope",
                "Receipt",
                "Voter",
                "Name",
                "Mail ballots as loaded",
                "The desk is told");
        lines.forEach(line -> table.row(List.of(
                envelope(line),
                new Span(line.receiptNo()),
                new Span(line.voterId().value()),
                new Span(line.voterName()),
                new Span(line.ballots()),
                new Span(line.kind().words()))));
        return table;
    }

    private Component next(List<MailLine> lines, int number) {
        Div part = new Div(
                next(lines),
                DownloadLinks.of("Lines of the next list", election.id(), () -> next(lists.next(election.id()))));
        if (!election.closed()) {
            part.add(new ActButton("Send list " + number + "\u2026").first().does(() -> ask(lines, number)));
        }
        return new PageSection("mail-list", "Next list", part);
    }

    private void ask(List<MailLine> lines, int number) {
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog("Send list " + number, "Record as sent", () -> send(sheet[0], lines));
        sheet[0].with(UsDates.count(lines.size(), "line")
                        + ". Recording keeps the list as it is now, with your name and"
                        + " the time. Then download the file and hand it to the mail desk.")
                .open();
    }

    private boolean send(ActDialog sheet, List<MailLine> lines) {
        ActResult<Integer> sent = lists.send(election.id(), lines);
        if (sent instanceof ActResult.Refused<Integer> refused) {
            return sheet.refuse(refused.words());
        }
        show();
        sent.ifAccepted().ifPresent(number -> MessageLine.done("List " + number + " recorded as sent."));
        return true;
    }

    private PlainTable lines(MailList list) {
        PlainTable table = new PlainTable(
                "Lines of list " + list.number(),
                "Line",
                "Envelope",
                "Voter",
                "Name",
                "Mail ballots as loaded",
                "The desk is told",
                "Its answer",
                "");
        list.lines()
                .forEach(line -> table.row(List.of(
                        new Span(String.valueOf(line.lineNo())),
                        envelope(line.line()),
                        new Span(line.line().voterId().value()),
                        new Span(line.line().voterName()),
                        new Span(line.line().ballots()),
                        new Span(line.line().kind().words()),
                        new Span(answer(line)),
                        correct(line))));
        return table;
    }

    private PlainTable linesNow(int number) {
        return lines(lists.sent(election.id()).stream()
                .filter(list -> list.number() == number)
                .findFirst()
                .orElseThrow());
    }

    private Component list(MailList list) {
        Paragraph sent = new Paragraph("Sent " + moment(list) + " by " + list.sentBy() + ", "
                + UsDates.count(list.lines().size(), "line") + ". ");
        sent.add(file(list));
        Div part = new Div(
                sent,
                lines(list),
                DownloadLinks.of("Lines of list " + list.number(), election.id(), () -> linesNow(list.number())));
        if (list.unanswered() > 0 && !election.closed()) {
            part.add(new ActButton("Record answers to list " + list.number() + "\u2026")
                    .does(() -> new DeskAnswersSheet(lists, election.id(), list, this::show).open()));
        }
        return new PageSection("mail-list", "List " + list.number(), part);
    }

    private Component correct(SentLine line) {
        if (line.given() == null || election.closed()) {
            return new Span();
        }
        ActButton button = new ActButton("Correct answer\u2026")
                .quiet()
                .does(() -> new CorrectAnswerSheet(lists, line, this::show).open());
        button.setAriaLabel("Correct answer: line " + line.lineNo() + " of list " + line.listNo());
        return button;
    }

    private String moment(MailList list) {
        return UsDates.near(LocalDateTime.ofInstant(list.sentAt(), election.zone()));
    }

    private static String answer(SentLine line) {
        GivenAnswer given = line.given();
        if (given == null) {
            return "None yet";
        }
        return given.answer().words() + ", " + UsDates.digits(given.answeredOn()) + ", " + given.answeredBy()
                + (given.because().isEmpty() ? "" : " (corrected: " + given.because() + ")");
    }

    private static Anchor envelope(MailLine line) {
        Anchor link = Links.link(
                line.key().envelopeNo().value(), "review/case/" + line.key().envelopeNo());
        link.addClassName("num");
        return link;
    }

    private Anchor file(MailList list) {
        Anchor file = new Anchor("/review/mail-desk/" + election.id() + "/" + list.number(), "Download CSV");
        file.setRouterIgnore(true);
        file.setAriaLabel("Download CSV of list " + list.number());
        return file;
    }
}
