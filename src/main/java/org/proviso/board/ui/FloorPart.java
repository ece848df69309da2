package org.proviso.board.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.HtmlContainer;
import com.vaadin.flow.component.Tag;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.board.BoardMotion;
import org.proviso.board.Meeting;
import org.proviso.core.deciding.MotionResult;
import org.proviso.review.CaseState;
import org.proviso.ui.ActButton;
import org.proviso.ui.Caution;

/** What is before the session: the motion on the floor, the own vote on it, or how the last vote ended. */
@Tag("section")
final class FloorPart extends HtmlContainer {

    private final BoardRoom room;
    private final String reader;
    private final Steps steps;

    FloorPart(BoardRoom room, String reader, Steps steps) {
        this.room = room;
        this.reader = reader;
        this.steps = steps;
        addClassName("floor");
        getElement().setAttribute("aria-live", "polite");
    }

    void show(Meeting meeting) {
        removeAll();
        Meeting.Floor floor = meeting.floor();
        setClassName("waiting", floor != null);
        if (floor != null) {
            onTheFloor(floor, meeting);
        } else {
            between(meeting);
        }
    }

    private void onTheFloor(Meeting.Floor floor, Meeting meeting) {
        BoardMotion motion = floor.motion();
        String seconder = floor.seconder() == null
                ? ""
                : ", seconded by " + floor.seconder().fullName();
        H2 title = new H2("The motion: " + BoardWords.moved(motion) + ".");
        title.addClassName("moved");
        add(title, new Paragraph("Moved by " + floor.mover().fullName() + seconder + ". " + grounds(motion)));
        Paragraph which = new Paragraph("Envelopes: " + BoardWords.numbers(motion.putNos(), 24) + ".");
        which.addClassName("num");
        add(which);
        boolean sits = meeting.isThere(reader);
        if (motion.putAt() == null) {
            notPutYet(floor, sits);
        } else {
            add(new BallotPart(room, reader, steps).show(floor, sits));
        }
        add(new Caution());
    }

    private static String grounds(BoardMotion motion) {
        String place = motion.legalReference().isBlank() ? "" : "Place in the law: " + motion.legalReference() + ". ";
        return place + motion.because();
    }

    private void notPutYet(Meeting.Floor floor, boolean sits) {
        add(new Paragraph("It is not put to the vote yet. An envelope can still be pulled out below."));
        if (!sits) {
            return;
        }
        BoardMotion motion = floor.motion();
        Div acts = new Div();
        acts.addClassName("acts");
        acts.add(new ActButton("Put it to the vote")
                .first()
                .does(() -> steps.take(
                        () -> room.motions().put(motion.key(), motion.version()), "The motion is put to the vote.")));
        if (floor.seconder() == null && !floor.mover().userName().equals(reader)) {
            acts.add(new ActButton("Second it")
                    .does(() -> steps.take(
                            () -> room.motions().second(motion.key(), motion.version()), "You seconded the motion.")));
        }
        acts.add(withdraw(room, motion, steps));
        add(acts);
    }

    static ActButton withdraw(BoardRoom room, BoardMotion motion, Steps steps) {
        return new ActButton("Withdraw the motion")
                .does(() -> steps.take(
                        () -> room.motions().withdraw(motion.key(), motion.version()),
                        "The motion is withdrawn. Nothing was decided."));
    }

    private void between(Meeting meeting) {
        List<BoardMotion> ended = meeting.ended();
        add(new H2(ended.isEmpty() ? "Nothing is on the floor" : "The last motion"));
        if (!ended.isEmpty()) {
            Paragraph result = new Paragraph(String.valueOf(ended.get(0).words()));
            result.addClassName("moved");
            add(result, new Paragraph(votes(ended.get(0), meeting)), new Paragraph(next(ended.get(0), meeting)));
        }
        if (meeting.session().isOpen()) {
            add(new Paragraph("A member moves a group of the agenda, or a single envelope, with its button below."));
        }
    }

    /** How each voted, once the vote is closed; of a motion that was withdrawn nobody needs to know. */
    private String votes(BoardMotion motion, Meeting meeting) {
        if (motion.end() == MotionResult.WITHDRAWN) {
            return "";
        }
        return room.motions().votes(motion.key()).stream()
                .map(vote -> meeting.name(vote.userName()) + ": " + vote.vote().code())
                .collect(Collectors.joining("; "));
    }

    /** Leads whoever acted here, wherever on the page the button was. */
    void lead() {
        getChildren()
                .findFirst()
                .ifPresent(heading -> heading.getElement()
                        .setAttribute("tabindex", "-1")
                        .executeJs("this.focus({preventScroll: true}); this.scrollIntoView({block: 'center'})"));
    }

    /** What the result of a vote means for its envelopes. */
    private String next(BoardMotion motion, Meeting meeting) {
        boolean decided = motion.kind().asks().isPresent()
                && meeting.agenda().stream()
                        .filter(one -> motion.putNos().contains(one.item().envelopeNo()))
                        .allMatch(one -> one.state() != CaseState.READY);
        if (motion.end() == MotionResult.WITHDRAWN
                || (!decided && motion.kind().asks().isPresent())) {
            return "The envelopes are still ready: move them again, move otherwise, table them, or send them back.";
        }
        return decided
                ? BoardWords.numbers(motion.putNos(), 24) + ": decided. " + byRule(motion)
                        + "The voters will be told. Until the election is closed the board can open a decision again."
                : "The vote is in the minutes.";
    }

    /** Where the motion did not carry, the rule of the pack that settled it. */
    private String byRule(BoardMotion motion) {
        if (motion.end() == MotionResult.CARRIED) {
            return "";
        }
        return room.decisions()
                .standing(new org.proviso.review.CaseKey(
                        motion.key().session().electionId(), motion.putNos().get(0)))
                .map(decision -> words(decision.departsBecause()))
                .orElse("");
    }

    private static String words(@Nullable String because) {
        return because == null ? "" : because + " ";
    }

    /** Parts of a row of buttons. */
    static Div acts(Component... parts) {
        Div acts = new Div(parts);
        acts.addClassName("acts");
        return acts;
    }
}
