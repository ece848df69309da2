package org.proviso.board.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.access.Permission;
import org.proviso.board.BodyKind;
import org.proviso.board.MotionKind;
import org.proviso.board.motion.DecideAsOfficial;
import org.proviso.core.ElectionId;
import org.proviso.review.CaseState;
import org.proviso.review.decide.ContradictedDecision;
import org.proviso.review.decide.FollowUp;
import org.proviso.ui.Caution;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.PageHead;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;
import org.proviso.ui.frame.ElectionLine;
import org.proviso.ui.frame.NoElectionException;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** Decisions that a newer record contradicts: what changed, and what can still be done about each. */
@Route(value = ContradictedView.ROUTE, layout = OfficeFrame.class)
@PageTitle("Contradicted decisions · Proviso")
@PermitAll
public final class ContradictedView extends Composite<Div> {

    static final String ROUTE = "board/contradicted";

    private final transient BoardServices room;
    private final transient BoardActRunner steps = new BoardActRunner(this::show);
    private final transient AgendaOfDecided agenda;
    private final ElectionId election;
    private final ZoneId zone;
    private final boolean alone;
    private final boolean decides;

    ContradictedView(BoardServices room, WorkingElection workplace) {
        this.room = room;
        ElectionLine line = workplace.election().orElseThrow(NoElectionException::new);
        this.election = line.id();
        this.zone = line.zone();
        room.access().demand(Permission.FOLLOW_UP);
        this.agenda = new AgendaOfDecided(room, steps, election);
        this.alone = room.ready().bodies(election).contains(BodyKind.OFFICIAL);
        this.decides = room.access().isPermitted(Permission.DECIDE);
        getContent().addClassNames("sheet", "board");
        show();
    }

    private void show() {
        getContent().removeAll();
        getContent()
                .add(new PageHead(
                        "Contradicted decisions",
                        "A newer record says something else about these envelopes than when they were settled."
                                + " An envelope that is still closed stays closed until the decider lets the"
                                + " decision stand or reopens it."));
        open(room.followUps().open(election));
        done(room.followUps().done(election));
        getContent().add(new Caution());
    }

    private void open(List<ContradictedDecision> open) {
        if (open.isEmpty()) {
            getContent().add(new Paragraph("No decision is contradicted."));
            return;
        }
        getContent()
                .add(
                        contradicted(open),
                        DownloadLinks.of("Contradicted decisions", election, () -> contradicted(open())));
    }

    private List<ContradictedDecision> open() {
        room.access().demand(Permission.FOLLOW_UP);
        return room.followUps().open(election);
    }

    private PlainTable contradicted(List<ContradictedDecision> open) {
        PlainTable table = new PlainTable(
                "Contradicted decisions", "Envelope", "Settled as", "The rules now say", "What changed", "What to do");
        open.forEach(found -> table.row(List.of(
                Links.link(
                        found.key().envelopeNo().value(),
                        "review/case/" + found.key().envelopeNo()),
                new Span(BoardWords.sentence(found.wasSettled())),
                new Span(BoardWords.sentence(found.saysNow())),
                new Span(found.because().isEmpty() ? "See the case" : found.because()),
                buttons(found))));
        return table;
    }

    private Div buttons(ContradictedDecision found) {
        List<Component> buttons = new ArrayList<>();
        if (!found.isTheDeciders()) {
            buttons.add(EnvelopeButtons.button(
                    "Record what was done…", found.key().envelopeNo(), () -> askWhatWasDone(found)));
        }
        if (found.state() == CaseState.SENT_ON && room.access().isPermitted(Permission.REOPEN_ENDED)) {
            buttons.add(EnvelopeButtons.button("Reopen…", found.key().envelopeNo(), () -> askToReopenSentOn(found)));
        } else if (decides && found.state() != CaseState.RELEASED) {
            buttons.addAll(decidersButtons(found));
        }
        if (buttons.isEmpty()) {
            buttons.add(new Span("Waits for the decider"));
        }
        Div together = new Div();
        together.add(buttons);
        return together;
    }

    private List<Component> decidersButtons(ContradictedDecision found) {
        if (!found.isTheDeciders()) {
            return List.of();
        }
        return alone
                ? List.of(
                        EnvelopeButtons.button(
                                "Let stand…",
                                found.key().envelopeNo(),
                                () -> askOfficial(
                                        found,
                                        MotionKind.LET_STAND,
                                        "The decision stands. Your reason is kept with it.",
                                        "Reason to let it stand",
                                        "Let decision stand")),
                        EnvelopeButtons.button(
                                "Reopen…",
                                found.key().envelopeNo(),
                                () -> askOfficial(
                                        found,
                                        MotionKind.REOPEN,
                                        "The decision is set aside, and the case goes back to the reviewers.",
                                        "Reason for reopening",
                                        "Reopen decision")))
                : List.of(EnvelopeButtons.button(
                        "Add to agenda",
                        found.key().envelopeNo(),
                        () -> agenda.add(found.key().envelopeNo())));
    }

    private void askOfficial(ContradictedDecision found, MotionKind kind, String says, String label, String button) {
        ReasonSheet.ask(
                "Envelope " + found.key().envelopeNo(),
                says,
                label,
                button,
                because -> steps.refused(() -> room.officials()
                        .decide(new DecideAsOfficial(
                                election,
                                kind,
                                Map.of(found.key().envelopeNo(), found.version()),
                                Set.of(),
                                List.of(),
                                "",
                                because))));
    }

    private void askToReopenSentOn(ContradictedDecision found) {
        ReasonSheet.ask(
                "Reopen envelope " + found.key().envelopeNo(),
                "The case goes back to the reviewers. Ask the other county to send the envelope back."
                        + receiptOf(found),
                "Reason for reopening",
                "Reopen case",
                because -> steps.refused(() -> room.ended().reopen(found.key(), found.version(), because)));
    }

    /** That the other county has said that it received the envelope. */
    private String receiptOf(ContradictedDecision found) {
        return room.ended()
                .receipt(found.key())
                .map(receipt -> " " + receipt.words())
                .orElse("");
    }

    private void askWhatWasDone(ContradictedDecision found) {
        ReasonSheet.ask(
                "Follow up envelope " + found.key().envelopeNo(),
                "It is " + found.wasSettled() + ". Nothing about the envelope changes. Enter what was done and who was"
                        + " told, for example that it was referred to the county's attorney.",
                "What was done",
                "Record what was done",
                done -> steps.refused(() -> room.followUps().record(found.key(), found.version(), done)));
    }

    private void done(List<FollowUp> done) {
        if (done.isEmpty()) {
            return;
        }
        getContent()
                .add(
                        new H2("Followed up"),
                        followedUp(done),
                        DownloadLinks.of("Followed up", election, () -> followedUp(done())));
    }

    private List<FollowUp> done() {
        room.access().demand(Permission.FOLLOW_UP);
        return room.followUps().done(election);
    }

    private PlainTable followedUp(List<FollowUp> done) {
        PlainTable table = new PlainTable("Followed up", "Envelope", "The rules said", "What was done", "Recorded");
        done.forEach(followUp -> table.row(List.of(
                Links.link(
                        followUp.key().envelopeNo().value(),
                        "review/case/" + followUp.key().envelopeNo()),
                new Span(BoardWords.sentence(followUp.said())),
                new Span((followUp.motionNo() == null ? "" : "The decision stands: ") + followUp.note()),
                new Span(UsDates.moment(LocalDateTime.ofInstant(followUp.recordedAt(), zone))))));
        return table;
    }
}
