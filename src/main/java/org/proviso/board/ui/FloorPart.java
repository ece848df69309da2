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
import org.proviso.board.record.SessionDetails;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.deciding.MotionResult;
import org.proviso.review.CaseState;
import org.proviso.ui.Caution;
import org.proviso.ui.field.ActButton;

/** What is before the session: the motion on the floor and one's own vote, or how the last vote ended. */
@Tag("section")
final class FloorPart extends HtmlContainer {

    private final BoardServices room;
    private final String reader;
    private final BoardActRunner steps;

    FloorPart(BoardServices room, String reader, BoardActRunner steps) {
        this.room = room;
        this.reader = reader;
        this.steps = steps;
        addClassName("floor");
        getElement().setAttribute("aria-live", "polite");
    }

    void show(SessionDetails meeting) {
        removeAll();
        SessionDetails.Floor floor = meeting.floor();
        setClassName("waiting", floor != null);
        if (floor != null) {
            onTheFloor(floor, meeting);
        } else {
            between(meeting);
        }
    }

    private void onTheFloor(SessionDetails.Floor floor, SessionDetails meeting) {
        BoardMotion motion = floor.motion();
        String seconder = floor.seconder() == null
                ? ""
                : ", seconded by " + floor.seconder().fullName();
        H2 title = new H2("Motion on the floor: " + BoardWords.moved(motion) + ".");
        title.addClassName("moved");
        add(title, new Paragraph("Moved by " + floor.mover().fullName() + seconder + ". " + grounds(motion)));
        Paragraph which = new Paragraph("Envelopes: " + BoardWords.numbers(motion.putNos(), 24) + ".");
        which.addClassName("num");
        add(which);
        motion.against().forEach(one -> add(warning(one.spoken())));
        floor.forecast().forEach(sentence -> add(new Paragraph(sentence)));
        boolean sits = meeting.isThere(new UserName(reader));
        List<EnvelopeNumber> recused = meeting.recusedFromFloor(new UserName(reader));
        if (motion.putAt() == null) {
            notPutYet(floor, sits, recused.isEmpty());
        } else {
            add(new VotePart(room, reader, steps).show(floor, sits, recused));
        }
        add(new Caution());
    }

    private static Paragraph warning(String words) {
        Paragraph warning = new Paragraph(words);
        warning.addClassName("warn");
        return warning;
    }

    private static String grounds(BoardMotion motion) {
        String place = motion.legalReference().isBlank() ? "" : "Legal reference: " + motion.legalReference() + ". ";
        return place + motion.because();
    }

    private void notPutYet(SessionDetails.Floor floor, boolean sits, boolean takesPart) {
        add(new Paragraph("The vote is not open yet. Envelopes can still be pulled out below."));
        if (!sits) {
            return;
        }
        BoardMotion motion = floor.motion();
        Div acts = new Div();
        acts.addClassName("acts");
        acts.add(new ActButton("Open the vote")
                .first()
                .does(() -> steps.take(
                        () -> room.motions().putToVote(motion.key(), motion.version()), "The vote is open.")));
        if (takesPart && floor.seconder() == null && !floor.mover().userName().equals(new UserName(reader))) {
            acts.add(new ActButton("Second the motion")
                    .does(() -> steps.take(
                            () -> room.motions().second(motion.key(), motion.version()), "You seconded the motion.")));
        }
        acts.add(withdraw(room, motion, steps));
        add(acts);
    }

    static ActButton withdraw(BoardServices room, BoardMotion motion, BoardActRunner steps) {
        return new ActButton("Withdraw the motion")
                .does(() -> steps.take(
                        () -> room.motions().withdraw(motion.key(), motion.version()),
                        "Motion withdrawn. Nothing was decided."));
    }

    private void between(SessionDetails meeting) {
        List<BoardMotion> ended = meeting.ended();
        add(new H2(ended.isEmpty() ? "No motion on the floor" : "Last motion"));
        if (!ended.isEmpty()) {
            Paragraph result = new Paragraph(String.valueOf(ended.get(0).words()));
            result.addClassName("moved");
            add(result, new Paragraph(votes(ended.get(0), meeting)), new Paragraph(next(ended.get(0), meeting)));
        }
        if (meeting.session().isOpen()) {
            add(new Paragraph("To make a motion, use the button on a group or an envelope below."));
        }
    }

    /** How each member voted, once the vote is closed; not shown for a withdrawn motion. */
    private String votes(BoardMotion motion, SessionDetails meeting) {
        if (motion.end() == MotionResult.WITHDRAWN) {
            return "";
        }
        return room.motions().votes(motion.key()).stream()
                .map(vote -> meeting.name(vote.userName()) + ": " + vote.vote().code())
                .collect(Collectors.joining("; "));
    }

    /** Moves the focus here after an act elsewhere on the page. */
    void lead() {
        getChildren()
                .findFirst()
                .ifPresent(heading -> heading.getElement()
                        .setAttribute("tabindex", "-1")
                        .executeJs("this.focus({preventScroll: true}); this.scrollIntoView({block: 'center'})"));
    }

    /** What the result of a vote means for its envelopes. */
    private String next(BoardMotion motion, SessionDetails meeting) {
        boolean decided = motion.kind().asks().isPresent()
                && meeting.agenda().stream()
                        .filter(itemDetails ->
                                motion.putNos().contains(itemDetails.item().envelopeNo()))
                        .allMatch(itemDetails -> itemDetails.state() != CaseState.READY);
        if (motion.end() == MotionResult.WITHDRAWN
                || (!decided && motion.kind().asks().isPresent())) {
            return "The envelopes are still ready. Make the same or a different motion, table them, or send them back.";
        }
        return decided
                ? BoardWords.numbers(motion.putNos(), 24) + ": decided. " + byRule(motion)
                        + (motion.putNos().size() == 1 ? "The voter" : "The voters")
                        + " will be told. The board can reopen a decision until the election is closed."
                : "The vote is in the minutes.";
    }

    /** If the motion failed, the rule that settled it. */
    private String byRule(BoardMotion motion) {
        if (motion.end() == MotionResult.CARRIED) {
            return "";
        }
        return room.decisions()
                .standing(new org.proviso.core.EnvelopeKey(
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
