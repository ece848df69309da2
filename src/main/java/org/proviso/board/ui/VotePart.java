package org.proviso.board.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.board.BoardMotion;
import org.proviso.board.motion.CastVote;
import org.proviso.board.record.SessionDetails;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.deciding.Vote;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ActDialog;

/**
 * The vote on a motion: one's own vote, who has voted, and closing the vote. For a member without a device another records
 * the vote, which the member confirms on the minutes.
 */
final class VotePart {

    private static final String STAYS =
            " Nothing was decided. The votes stand: change a vote, pull an envelope out, or withdraw the motion.";

    private final BoardServices room;
    private final String reader;
    private final BoardActRunner steps;

    VotePart(BoardServices room, String reader, BoardActRunner steps) {
        this.room = room;
        this.reader = reader;
        this.steps = steps;
    }

    /** Whoever is recused from one of the envelopes has nothing to vote with. */
    Div show(SessionDetails.Floor floor, boolean sits, List<EnvelopeNumber> recused) {
        Div part = new Div();
        part.addClassName("ballot");
        if (sits && !recused.isEmpty()) {
            part.add(new Paragraph(
                    "You are recused from " + BoardWords.numbers(recused, 24) + ". You do not vote on this motion."));
            takeBack(floor).ifPresent(part::add);
        } else if (sits) {
            part.add(new Paragraph(own(floor.own())), votes(floor));
        }
        part.add(new Paragraph(whose(floor)));
        if (sits) {
            Div acts = FloorPart.acts(FloorPart.withdraw(room, floor.motion(), steps));
            if (floor.missing().isEmpty()) {
                acts.addComponentAsFirst(close(floor));
            }
            List<SessionDetails.Member> others = floor.missing().stream()
                    .filter(member -> !member.userName().equals(new UserName(reader)))
                    .toList();
            if (floor.missing().size() > 1) {
                acts.add(everyoneYes(room, steps, floor));
            }
            if (!others.isEmpty()) {
                acts.add(new ActButton("Record a member's vote\u2026")
                        .does(() ->
                                new RecordVoteSheet(room, steps, floor.motion().key(), others).open()));
            }
            part.add(acts);
        }
        return part;
    }

    /** For one who voted before the recusal: the vote cannot be closed with it. */
    private Optional<Component> takeBack(SessionDetails.Floor floor) {
        if (floor.own() == null || floor.own() == Vote.RECUSED) {
            return Optional.empty();
        }
        return Optional.of(new ActButton("Withdraw my vote")
                .does(() -> steps.take(
                        () -> room.motions().withdrawVote(floor.motion().key(), new UserName(reader)),
                        "Your vote was withdrawn.")));
    }

    private static String own(@Nullable Vote own) {
        return own == null
                ? "The vote is open. How do you vote?"
                : "You " + said(own) + ". You can change your vote until the vote is closed.";
    }

    private static String said(Vote vote) {
        return switch (vote) {
            case YES -> "voted yes";
            case NO -> "voted no";
            case ABSTAINS -> "abstained";
            case RECUSED -> "are recused";
        };
    }

    private Div votes(SessionDetails.Floor floor) {
        Div votes = FloorPart.acts(
                vote(floor, "Yes", Vote.YES), vote(floor, "No", Vote.NO), vote(floor, "Abstain", Vote.ABSTAINS));
        votes.addClassName("votes");
        votes.getElement().setAttribute("role", "group");
        votes.getElement().setAttribute("aria-label", "Your vote");
        return votes;
    }

    private ActButton vote(SessionDetails.Floor floor, String words, Vote vote) {
        ActButton button = new ActButton(words)
                .does(() -> steps.take(
                        () -> room.motions().vote(new CastVote(floor.motion().key(), new UserName(reader), vote)),
                        "Vote recorded: you " + said(vote) + "."));
        button.getElement().setAttribute("aria-pressed", String.valueOf(vote == floor.own()));
        return button;
    }

    static String whose(SessionDetails.Floor floor) {
        String in = floor.voted().isEmpty() ? "No votes yet." : "Voted: " + BoardWords.names(floor.voted()) + ".";
        String missing = floor.missing().isEmpty()
                ? " All votes are in. How each member voted is shown when the vote is closed."
                : " Still to vote: " + BoardWords.names(floor.missing())
                        + ". The vote can be closed when all votes are in.";
        return in + missing;
    }

    /** A voice vote on which nobody says no: one press records yes for each member whose vote is missing. */
    static ActButton everyoneYes(BoardServices room, BoardActRunner steps, SessionDetails.Floor floor) {
        return new ActButton("Everyone says yes")
                .does(() -> steps.take(
                        () -> {
                            ActResult<BoardMotion> last = ActResult.accepted(floor.motion());
                            for (SessionDetails.Member member : floor.missing()) {
                                last = last.then(before ->
                                        room.motions().vote(new CastVote(before.key(), member.userName(), Vote.YES)));
                            }
                            return last;
                        },
                        "Yes recorded for " + BoardWords.names(floor.missing()) + "."));
    }

    private ActButton close(SessionDetails.Floor floor) {
        return new ActButton("Close the vote…").first().does(() -> ask(floor));
    }

    private void ask(SessionDetails.Floor floor) {
        BoardMotion motion = floor.motion();
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog(
                "Close the vote?",
                "Close the vote",
                () -> steps.sheet(() -> room.motions().close(motion.key(), motion.version()), "The vote is closed.")
                        .map(words -> sheet[0].refuse(words + STAYS))
                        .orElse(true));
        sheet[0].addClassName("board-sheet");
        sheet[0].with("If the motion carries, this is recorded: "
                        + BoardWords.recorded(motion.kind(), motion.putNos().size(), motion.reasons()))
                .with(String.join(" ", floor.forecast()))
                .with("Votes cannot be changed after the vote is closed.")
                .open();
    }
}
