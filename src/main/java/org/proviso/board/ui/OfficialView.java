package org.proviso.board.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.proviso.access.Permission;
import org.proviso.board.MotionKind;
import org.proviso.board.agenda.EnvelopeSummary;
import org.proviso.board.agenda.ReadyGroup;
import org.proviso.board.motion.DecideAsOfficial;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.ui.Caution;
import org.proviso.ui.MessageLine;
import org.proviso.ui.PageHead;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** Where a single official decides: ready groups as a whole, or individual envelopes. */
@Route(value = "board/official", layout = OfficeFrame.class)
@PageTitle("Decide · Proviso")
@PermitAll
public final class OfficialView extends Composite<Div> {

    private static final List<MotionKind> OUTCOMES =
            List.of(MotionKind.COUNT, MotionKind.COUNT_IN_PART, MotionKind.REJECT);

    private final transient BoardServices room;
    private final transient BoardActRunner steps = new BoardActRunner(this::show);
    private final ElectionId election;
    /** Pulled out while this page is open; decided individually. */
    private final Set<EnvelopeNumber> pulledOut = new TreeSet<>();

    OfficialView(BoardServices room, WorkingElection workplace) {
        this.room = room;
        this.election = workplace.electionId();
        room.access().demand(Permission.DECIDE);
        getContent().addClassNames("sheet", "board");
        show();
    }

    private void show() {
        getContent().removeAll();
        PageHead head = new PageHead("Decide ready envelopes", "A decision takes effect when it is recorded.");
        getContent().add(head, new Caution());
        List<ReadyGroup> ready = room.ready().groups(election);
        if (ready.isEmpty()) {
            getContent()
                    .add(new Paragraph("No envelopes are ready. A case appears here after an outcome is proposed."));
        }
        List<EnvelopeNumber> alone = new ArrayList<>();
        ready.forEach(group -> add(group, alone));
        oneByOne(alone);
    }

    private void add(ReadyGroup ready, List<EnvelopeNumber> alone) {
        ready.envelopes().keySet().stream()
                .filter(number -> ready.alone() || pulledOut.contains(number))
                .forEach(alone::add);
        AgendaGroup group = AgendaGroup.of(ready).without(pulledOut);
        if (ready.alone() || group.envelopes().isEmpty()) {
            return;
        }
        ActButton decide = new ActButton(BoardWords.sentence(group.kind().words()) + "…")
                .first()
                .does(() -> sheet().group(group, ready.references()));
        decide.getElement()
                .setAttribute("aria-label", group.kind().words() + ": " + BoardWords.because(group.reason()));
        getContent()
                .add(new GroupPart(
                        group,
                        numbers -> room.ready().lines(election, numbers),
                        line -> List.of(EnvelopeButtons.button("Pull out", line.envelopeNo(), () -> pullOut(line))),
                        List.of(decide)));
    }

    private void pullOut(EnvelopeSummary line) {
        pulledOut.add(line.envelopeNo());
        show();
        MessageLine.done(line.envelopeNo() + " pulled out of its group. It is listed under Individual envelopes.");
    }

    private void oneByOne(List<EnvelopeNumber> alone) {
        if (alone.isEmpty()) {
            return;
        }
        getContent().add(new H2("Individual envelopes"));
        room.ready()
                .lines(election, alone.subList(0, Math.min(alone.size(), 50)))
                .forEach(line -> {
                    List<Component> buttons = List.of(
                            EnvelopeButtons.button("Decide…", line.envelopeNo(), () -> sheet().one(line, OUTCOMES))
                                    .first(),
                            EnvelopeButtons.button("Send back…", line.envelopeNo(), () -> sendBack(line)));
                    getContent().add(new DecidingEnvelopePart(line, true, buttons));
                });
    }

    private MotionSheet sheet() {
        return MotionSheet.toDecide(wanted -> {
            Optional<String> refused = steps.refused(() -> room.officials()
                    .decide(new DecideAsOfficial(
                            election,
                            wanted.kind(),
                            wanted.envelopes(),
                            wanted.contests(),
                            wanted.reasons(),
                            wanted.reference(),
                            wanted.because())));
            if (refused.isEmpty()) {
                MessageLine.done("Decided: "
                        + BoardWords.moved(wanted.kind(), wanted.envelopes().size(), wanted.reasons()) + ".");
            }
            return refused;
        });
    }

    private void sendBack(EnvelopeSummary line) {
        ReasonSheet.ask(
                "Send envelope " + line.envelopeNo() + " back to the reviewers",
                "The case goes back to the reviewers, undecided, with your note.",
                "What the reviewers should check",
                "Send back",
                note -> steps.refused(() ->
                        room.decisions().sendBack(new EnvelopeKey(election, line.envelopeNo()), line.version(), note)));
    }
}
