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
import org.proviso.access.Act;
import org.proviso.board.DecideAlone;
import org.proviso.board.EnvelopeLine;
import org.proviso.board.MotionKind;
import org.proviso.board.ReadyGroup;
import org.proviso.review.CaseKey;
import org.proviso.ui.ActButton;
import org.proviso.ui.Caution;
import org.proviso.ui.OfficeFrame;
import org.proviso.ui.PageHead;
import org.proviso.ui.Said;
import org.proviso.ui.Workplace;

/** Where a single official decides: ready groups as a whole, or individual envelopes. */
@Route(value = "board/official", layout = OfficeFrame.class)
@PageTitle("Decide · Proviso")
@PermitAll
public final class OfficialView extends Composite<Div> {

    private static final List<MotionKind> OUTCOMES =
            List.of(MotionKind.COUNT, MotionKind.COUNT_IN_PART, MotionKind.REJECT);

    private final transient BoardRoom room;
    private final transient Steps steps = new Steps(this::show);
    private final String election;
    /** Pulled out while this page is open; decided individually. */
    private final Set<String> pulledOut = new TreeSet<>();

    OfficialView(BoardRoom room, Workplace workplace) {
        this.room = room;
        this.election = workplace.electionId();
        room.access().demand(Act.DECIDE);
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
        List<String> alone = new ArrayList<>();
        ready.forEach(group -> add(group, alone));
        oneByOne(alone);
    }

    private void add(ReadyGroup ready, List<String> alone) {
        ready.envelopes().keySet().stream()
                .filter(number -> ready.alone() || pulledOut.contains(number))
                .forEach(alone::add);
        Group group = Group.of(ready).without(pulledOut);
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
                        line -> List.of(Lines.button("Pull out", line.envelopeNo(), () -> pullOut(line))),
                        List.of(decide)));
    }

    private void pullOut(EnvelopeLine line) {
        pulledOut.add(line.envelopeNo());
        show();
        Said.done(line.envelopeNo() + " pulled out of its group. It is listed under Individual envelopes.");
    }

    private void oneByOne(List<String> alone) {
        if (alone.isEmpty()) {
            return;
        }
        getContent().add(new H2("Individual envelopes"));
        room.ready()
                .lines(election, alone.subList(0, Math.min(alone.size(), 50)))
                .forEach(line -> {
                    List<Component> buttons = List.of(
                            Lines.button("Decide…", line.envelopeNo(), () -> sheet().one(line, OUTCOMES))
                                    .first(),
                            Lines.button("Send back…", line.envelopeNo(), () -> sendBack(line)));
                    getContent().add(new EnvelopePart(line, true, buttons));
                });
    }

    private MovingSheet sheet() {
        return new MovingSheet("decide", wanted -> {
            Optional<String> refused = steps.refused(() -> room.officials()
                    .decide(new DecideAlone(
                            election,
                            wanted.kind(),
                            wanted.envelopes(),
                            wanted.contests(),
                            wanted.reasons(),
                            wanted.reference(),
                            wanted.because())));
            if (refused.isEmpty()) {
                Said.done("Decided: "
                        + BoardWords.moved(wanted.kind(), wanted.envelopes().size(), wanted.reasons()) + ".");
            }
            return refused;
        });
    }

    private void sendBack(EnvelopeLine line) {
        WordSheet.ask(
                "Send envelope " + line.envelopeNo() + " back to the reviewers",
                "The case goes back to the reviewers, undecided, with your note.",
                "What the reviewers should check",
                "Send back",
                note -> steps.refused(() ->
                        room.decisions().sendBack(new CaseKey(election, line.envelopeNo()), line.version(), note)));
    }
}
