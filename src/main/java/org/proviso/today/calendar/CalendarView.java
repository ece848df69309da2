package org.proviso.today.calendar;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.streams.DownloadHandler;
import com.vaadin.flow.server.streams.DownloadResponse;
import jakarta.annotation.security.PermitAll;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.DeadlineList;
import org.proviso.files.CalendarFile;
import org.proviso.ui.Caution;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.PageHead;
import org.proviso.ui.UsDates;
import org.proviso.ui.frame.ElectionLine;
import org.proviso.ui.frame.NoElectionException;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** The deadlines of the election, the earliest first: which have passed, which come next, and which wait for an act. */
@Route(value = "calendar", layout = OfficeFrame.class)
@PageTitle("Calendar · Proviso")
@PermitAll
public final class CalendarView extends Composite<Div> {

    private final transient AccessService access;

    CalendarView(ElectionDates dates, AccessService access, WorkingElection workplace) {
        this.access = access;
        access.demand(Permission.READ_FIGURES);
        ElectionLine election = workplace.election().orElseThrow(NoElectionException::new);
        DeadlineBook book = dates.book(election.id());
        LocalDateTime now = workplace.now();
        List<DeadlineList.Line> dated = DeadlineList.inOrder(book);
        getContent().addClassNames("sheet", "rules", "dates");
        getContent()
                .add(
                        head(book, election, now),
                        new H2("Dated deadlines"),
                        new DatesTable(dated, now),
                        DownloadLinks.of(
                                "Dated deadlines",
                                election.id(),
                                () -> new DatesTable(DeadlineList.inOrder(now(dates, election)), workplace.now())
                                        .getContent()));
        meeting(book).ifPresent(words -> getContent().add(note(words)));
        List<DeadlineList.Line> undated = undated(book);
        if (!undated.isEmpty()) {
            getContent()
                    .add(
                            new H2("Undated deadlines"),
                            new UndatedTable(undated),
                            DownloadLinks.of(
                                    "Undated deadlines",
                                    election.id(),
                                    () -> new UndatedTable(undated(now(dates, election))).getContent()));
        }
        getContent().add(new Caution());
    }

    private static List<DeadlineList.Line> undated(DeadlineBook book) {
        return DeadlineList.of(book).stream()
                .filter(line -> line.waitsForAnAct() || !line.given().isKnown())
                .toList();
    }

    private DeadlineBook now(ElectionDates dates, ElectionLine election) {
        access.demand(Permission.READ_FIGURES);
        return dates.book(election.id());
    }

    private static Optional<String> meeting(DeadlineBook book) {
        if (!book.needsTheMeeting()) {
            return Optional.empty();
        }
        return Optional.of(ElectionDates.meeting(book)
                .map(meeting -> "Deadlines that run to the board's meeting run to its next session, "
                        + UsDates.near(meeting) + ".")
                .orElse("Deadlines that run to the board's meeting are not dated yet: no session is called. Voters have"
                        + " until the board meets."));
    }

    private static PageHead head(DeadlineBook book, ElectionLine election, LocalDateTime now) {
        return new PageHead(
                        "Calendar",
                        book.pack().pack().name() + ". Now " + UsDates.near(now) + ", "
                                + election.zone().getId().replace('_', ' ') + ".")
                .beside(Links.link("Rules in force", "set-up/rules"), file(book, election));
    }

    /** The same deadlines for people's own calendars. */
    private static Anchor file(DeadlineBook book, ElectionLine election) {
        Anchor file = new Anchor(
                DownloadHandler.fromInputStream(event -> {
                    byte[] bytes = CalendarFile.text(book, election.zone()).getBytes(StandardCharsets.UTF_8);
                    return new DownloadResponse(
                            new ByteArrayInputStream(bytes),
                            "deadlines-" + election.date() + ".ics",
                            "text/calendar",
                            bytes.length);
                }),
                "Download calendar file (.ics)");
        file.getElement().setAttribute("download", true);
        return file;
    }

    private static Paragraph note(String words) {
        Paragraph note = new Paragraph(words);
        note.addClassNames("soft", "small");
        return note;
    }
}
