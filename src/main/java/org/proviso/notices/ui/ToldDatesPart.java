package org.proviso.notices.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.List;
import java.util.function.Supplier;
import org.proviso.core.ElectionId;
import org.proviso.notices.told.ToldDate;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;

/** Voters who were told another date than the board's meeting; nothing where there are none. */
final class ToldDatesPart extends Composite<Div> {

    private final transient Supplier<List<ToldDate>> reader;
    private final List<ToldDate> told;
    private final ElectionId election;

    ToldDatesPart(Supplier<List<ToldDate>> reader, ElectionId election) {
        this.reader = reader;
        this.told = reader.get();
        this.election = election;
    }

    @Override
    protected Div initContent() {
        Div part = new Div();
        if (told.isEmpty()) {
            return part;
        }
        part.add(new H2("Told another date than the meeting"), new Paragraph(lead()));
        part.add(
                table(told),
                DownloadLinks.of("Told another date than the meeting", election, () -> table(reader.get())));
        return part;
    }

    private static PlainTable table(List<ToldDate> told) {
        PlainTable table = new PlainTable(
                "Told another date than the meeting",
                "Envelope",
                "The voter may",
                "Told",
                "The board meets",
                "What it means");
        told.forEach(line -> table.row(List.of(
                Links.link(
                        line.key().envelopeNo().value(),
                        "notices/letter/" + line.key().envelopeNo() + "/" + line.noticeNo()),
                new Span(line.ask().words()),
                new Span(UsDates.near(line.told())),
                new Span(line.meeting() == null ? "not called" : UsDates.near(line.meeting())),
                new Span(
                        line.isLaterThanTheMeeting()
                                ? "told a later date than the meeting"
                                : "told an earlier date; the voter has more time"))));
        return table;
    }

    private String lead() {
        long later = told.stream().filter(ToldDate::isLaterThanTheMeeting).count();
        return later == 0
                ? "Nobody was told a later date than the meeting."
                : UsDates.count(later, "voter") + (later == 1 ? " was" : " were")
                        + " told a later date than the meeting. Tell them the new date, and log it on the letter's page.";
    }
}
