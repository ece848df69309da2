package org.proviso.board.ui;

import com.vaadin.flow.component.radiobutton.RadioButtonGroup;
import com.vaadin.flow.component.select.Select;
import java.util.List;
import org.proviso.board.MotionKey;
import org.proviso.board.motion.CastVote;
import org.proviso.board.record.SessionDetails.Member;
import org.proviso.core.deciding.Vote;
import org.proviso.ui.field.ActDialog;

/** Records the vote of a member without a device, who says it aloud; the member confirms it on the minutes. */
final class RecordVoteSheet {

    private final BoardServices room;
    private final BoardActRunner steps;
    private final MotionKey motion;
    private final Select<Member> member = new Select<>();
    private final RadioButtonGroup<Vote> vote = new RadioButtonGroup<>();
    private final ActDialog sheet = new ActDialog("Record a member's vote", "Record vote", this::record);

    RecordVoteSheet(BoardServices room, BoardActRunner steps, MotionKey motion, List<Member> missing) {
        this.room = room;
        this.steps = steps;
        this.motion = motion;
        member.setLabel("Member");
        member.setItems(missing);
        member.setItemLabelGenerator(Member::fullName);
        member.setValue(missing.get(0));
        vote.setLabel("Vote, as the member says it");
        vote.setItems(Vote.YES, Vote.NO, Vote.ABSTAINS);
        vote.setItemLabelGenerator(RecordVoteSheet::words);
        sheet.addClassName("board-sheet");
        sheet.with("For a member without a device, who says the vote aloud. The minutes name who recorded it, and the"
                        + " member confirms it there.")
                .with(member, vote);
    }

    private static String words(Vote vote) {
        return switch (vote) {
            case YES -> "Yes";
            case NO -> "No";
            default -> "Abstain";
        };
    }

    void open() {
        sheet.open();
    }

    private boolean record() {
        Member whose = member.getValue();
        Vote said = vote.getValue();
        if (whose == null) {
            return ActDialog.refuse(member, "Choose the member.");
        }
        if (said == null) {
            return ActDialog.refuse(vote, "Choose the vote.");
        }
        return steps.sheet(
                        () -> room.motions().vote(new CastVote(motion, whose.userName(), said)),
                        "Vote recorded for " + whose.fullName() + ".")
                .map(sheet::refuse)
                .orElse(true);
    }
}
