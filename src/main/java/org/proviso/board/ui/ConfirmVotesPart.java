package org.proviso.board.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Span;
import org.proviso.access.Permission;
import org.proviso.board.SessionKey;
import org.proviso.board.motion.VoteConfirmationService.RecordedForYou;
import org.proviso.core.deciding.Vote;
import org.proviso.ui.field.ActButton;

/** Votes that somebody else recorded for the reader: theirs, or not. */
final class ConfirmVotesPart extends Div {

    private final transient BoardServices room;
    private final transient BoardActRunner steps;

    ConfirmVotesPart(BoardServices room, BoardActRunner steps) {
        this.room = room;
        this.steps = steps;
    }

    void show(SessionKey session) {
        removeAll();
        if (!room.access().isPermitted(Permission.VOTE)) {
            return;
        }
        for (RecordedForYou recorded : room.confirmations().waiting(session)) {
            if (getComponentCount() == 0) {
                add(new H2("Votes recorded for you"));
            }
            add(line(recorded));
        }
    }

    private Div line(RecordedForYou recorded) {
        int number = recorded.motion().motionNo();
        Div line = new Div(
                new Span("Motion " + number + ": " + words(recorded.vote()) + ", recorded by " + recorded.by() + ". "));
        line.addClassName("acts");
        line.add(
                new ActButton("Confirm vote")
                        .does(() -> steps.take(
                                () -> room.confirmations().confirm(recorded.motion(), true), "Vote confirmed.")),
                new ActButton("Not my vote")
                        .does(() -> steps.take(
                                () -> room.confirmations().confirm(recorded.motion(), false),
                                "The record says that this was not your vote. Ask to reopen the case if it changes"
                                        + " the outcome.")));
        return line;
    }

    private static String words(Vote vote) {
        return switch (vote) {
            case YES -> "yes";
            case NO -> "no";
            case ABSTAINS -> "abstained";
            case RECUSED -> "recused";
        };
    }
}
