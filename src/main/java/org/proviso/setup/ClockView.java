package org.proviso.setup;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.datetimepicker.DateTimePicker;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.Locale;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.act.ActResult;
import org.proviso.election.clock.OfficeClockService;
import org.proviso.today.UpcomingDates;
import org.proviso.ui.MessageLine;
import org.proviso.ui.PageHead;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** The office's clock: what it says now, and in a demonstration how to move it forward, past a deadline or to a day. */
@Route(value = "set-up/clock", layout = OfficeFrame.class)
@PageTitle("Clock · Proviso")
@PermitAll
public final class ClockView extends Composite<Div> {

    private static final int SHOWN = 8;

    private final transient OfficeClockService clock;
    private final transient WorkingElection workplace;
    private final transient UpcomingDates clocks;

    ClockView(OfficeClockService clock, WorkingElection workplace, UpcomingDates clocks, AccessService access) {
        access.demand(Permission.LOAD_FILES);
        this.clock = clock;
        this.workplace = workplace;
        this.clocks = clocks;
        getContent().addClassName("sheet");
        show();
    }

    private void show() {
        LocalDateTime now = workplace.now();
        getContent().removeAll();
        getContent()
                .add(new PageHead(
                        UsDates.weekday(now.toLocalDate()) + ", " + UsDates.hour(now.toLocalTime()),
                        clock.canBeMoved()
                                ? "The demonstration clock runs by itself. You can move it forward but not back."
                                : "The office uses the server's clock."));
        if (clock.canBeMoved()) {
            getContent().add(deadlines(now), otherMoment(now));
        }
    }

    private Div deadlines(LocalDateTime now) {
        Div part = new Div(new H2("Move past a deadline"));
        clocks.ahead(workplace.electionId(), now).stream().limit(SHOWN).forEach(moment -> {
            ActButton past = new ActButton(moment.what() + ": " + UsDates.near(moment.at()))
                    .quiet()
                    .does(() -> move(moment.at().plusMinutes(1)));
            part.add(new Paragraph(past));
        });
        return part;
    }

    private Div otherMoment(LocalDateTime now) {
        DateTimePicker to = new DateTimePicker("Move to date and time");
        to.setLocale(Locale.US);
        to.setDateAriaLabel("Date");
        to.setTimeAriaLabel("Time");
        to.setMin(now);
        to.setValue(now.plusDays(1).withHour(9).withMinute(0).withSecond(0).withNano(0));
        ActButton move = new ActButton("Move clock").first().does(() -> {
            if (to.getValue() != null) {
                move(to.getValue());
            }
        });
        Div part = new Div(to, move);
        part.addClassName("acts");
        return part;
    }

    private void move(LocalDateTime to) {
        if (clock.moveTo(to) instanceof ActResult.Refused<Instant> refused) {
            MessageLine.refused(refused.words());
            return;
        }
        show();
        MessageLine.done("The clock was moved. Deadlines that passed were recorded.");
    }
}
