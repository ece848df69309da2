package org.proviso.board.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.access.Permission;
import org.proviso.board.BodyKind;
import org.proviso.board.MotionKind;
import org.proviso.board.motion.DecideAsOfficial;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseState;
import org.proviso.review.DecidedCase;
import org.proviso.ui.Caution;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.PageHead;
import org.proviso.ui.RowGrid;
import org.proviso.ui.UsDates;
import org.proviso.ui.frame.ElectionLine;
import org.proviso.ui.frame.NoElectionException;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** The decisions, newest first, and the button to reopen one. */
@Route(value = "board/settled", layout = OfficeFrame.class)
@PageTitle("Decisions · Proviso")
@PermitAll
public final class DecisionsView extends Composite<Div> {

    private final transient BoardServices room;
    private final transient BoardActRunner steps = new BoardActRunner(this::again);
    private final ElectionId election;
    private final ZoneId zone;
    private final boolean alone;
    private final transient AgendaOfDecided agenda;
    private final RowGrid<DecidedCase> rows =
            new RowGrid<>("Decisions", "No decisions yet. A decision appears here when its vote is closed.");

    DecisionsView(BoardServices room, WorkingElection workplace) {
        this.room = room;
        ElectionLine line = workplace.election().orElseThrow(NoElectionException::new);
        this.election = line.id();
        this.zone = line.zone();
        room.access().demand(Permission.SEE_WHOLE_CASE);
        this.agenda = new AgendaOfDecided(room, steps, election);
        this.alone = room.ready().bodies(election).contains(BodyKind.OFFICIAL);
        getContent().addClassNames("sheet", "board");
        getContent()
                .add(
                        new PageHead(
                                "Decisions",
                                "A decision can be reopened, with a reason, until its envelope is opened or the"
                                        + " election is closed."),
                        new Paragraph(Links.link("Decisions contradicted by newer records", ContradictedView.ROUTE)),
                        rows,
                        DownloadLinks.of("Decisions", election, rows),
                        new Caution());
        columns();
        again();
    }

    private void columns() {
        rows.addComponentColumn(decidedCase -> Links.link(
                        decidedCase.key().envelopeNo().value(),
                        "review/case/" + decidedCase.key().envelopeNo()))
                .setHeader("Envelope")
                .setWidth("8rem")
                .setFlexGrow(0);
        rows.addComponentColumn(
                        decidedCase -> BoardWords.mark(decidedCase.decision().as()))
                .setHeader("Decided")
                .setWidth("11rem")
                .setFlexGrow(0);
        rows.words("Reasons", "20rem", DecisionsView::why);
        rows.words(
                "Decided on",
                "11rem",
                decidedCase -> UsDates.moment(
                        LocalDateTime.ofInstant(decidedCase.decision().decidedAt(), zone)));
        rows.addComponentColumn(this::reopen)
                .setHeader("Reopen")
                .setWidth("13rem")
                .setFlexGrow(0);
        rows.setHeight("calc(100vh - 17rem)");
    }

    private void again() {
        rows.show(
                (offset, limit) -> room.decisions().standing(election, offset, limit),
                () -> room.decisions().counts(election).values().stream()
                        .mapToInt(Integer::intValue)
                        .sum());
    }

    private static String why(DecidedCase decidedCase) {
        String reasons =
                decidedCase.decision().reasons().stream().map(Reason::words).collect(Collectors.joining("; "));
        String departs = decidedCase.decision().departsBecause();
        String words = reasons.isEmpty() ? "no defects" : reasons;
        return departs == null ? words : words + ". " + departs;
    }

    private Component reopen(DecidedCase decidedCase) {
        EnvelopeNumber number = decidedCase.key().envelopeNo();
        if (decidedCase.state() != CaseState.DECIDED) {
            return new Span("Envelope opened");
        }
        return alone
                ? EnvelopeButtons.button("Reopen…", number, () -> ask(decidedCase))
                : EnvelopeButtons.button("Add to agenda", number, () -> agenda.add(number));
    }

    private void ask(DecidedCase decidedCase) {
        ReasonSheet.ask(
                "Reopen envelope " + decidedCase.key().envelopeNo(),
                "The decision is set aside, and the case goes back to the reviewers.",
                "Reason for reopening",
                "Reopen decision",
                because -> steps.refused(() -> room.officials()
                        .decide(new DecideAsOfficial(
                                election,
                                MotionKind.REOPEN,
                                Map.of(decidedCase.key().envelopeNo(), decidedCase.version()),
                                Set.of(),
                                List.of(),
                                "",
                                because))));
    }
}
