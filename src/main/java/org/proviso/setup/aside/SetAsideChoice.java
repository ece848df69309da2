package org.proviso.setup.aside;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.function.Consumer;
import org.proviso.core.ElectionId;
import org.proviso.review.news.NewListResult;
import org.proviso.review.news.NewerFileService;
import org.proviso.roll.ListReadService;
import org.proviso.roll.SnapshotKind;
import org.proviso.roll.StagedList;
import org.proviso.ui.MessageLine;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ActDialog;

/** A list with rows that could not be read: what they are, and whether the office refuses the file or goes without them. */
public final class SetAsideChoice extends Div {

    private static final int LONGEST_REASON = 1000;

    private final transient NewerFileService newer;
    private final transient StagedList staged;
    private final ElectionId election;
    private final transient Consumer<NewListResult> after;

    public SetAsideChoice(
            ListReadService lists,
            NewerFileService newer,
            ElectionId election,
            StagedList staged,
            Consumer<NewListResult> after) {
        this.newer = newer;
        this.staged = staged;
        this.election = election;
        this.after = after;
        Paragraph head = new Paragraph(
                UsDates.count(staged.aside().rowsAside(), "row") + " could not be read. " + atStake(staged.kind()));
        head.addClassName("warn");
        Div acts = new Div(
                new ActButton("Refuse the file").does(this::refuse),
                new ActButton("Use the list without these rows").first().does(this::ask));
        acts.addClassName("acts");
        add(
                head,
                new SetAsideTable(
                        lists, election, staged.snapshotNo(), staged.aside().rowsAside()),
                acts);
    }

    /** What the office does not know while these rows are out. */
    public static String atStake(SnapshotKind kind) {
        return switch (kind) {
            case ROLL -> "A voter in one of these rows is not found on the roll.";
            case MAIL_BALLOTS, CHECK_INS, VOTED_ELSEWHERE -> "A second vote in one of these rows is not seen.";
        };
    }

    private void refuse() {
        NewListResult result =
                newer.refuseFile(election, staged.snapshotNo(), staged.aside().rowsHash());
        if (result instanceof NewListResult.Refused refused) {
            MessageLine.refused(refused.refusal().words());
        }
        after.accept(result);
    }

    private void ask() {
        TextArea because = new TextArea("Reason");
        because.setId("because");
        because.setMaxLength(LONGEST_REASON);
        because.setWidthFull();
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog("Use the list without these rows", "Use the list", () -> {
            if (because.getValue().isBlank()) {
                return ActDialog.refuse(because, "Required. Your reason is kept with the record.");
            }
            NewListResult result = newer.useWithoutAside(
                    election, staged.snapshotNo(), staged.aside().rowsHash(), because.getValue());
            if (result instanceof NewListResult.Refused refused) {
                return sheet[0].refuse(refused.refusal().words());
            }
            after.accept(result);
            return true;
        });
        sheet[0].with(UsDates.count(staged.aside().rowsAside(), "row") + " stay set aside, as they came. "
                        + atStake(staged.kind())
                        + " Where they are more than the office's share, or decided cases change, a second person must"
                        + " confirm.")
                .with(because)
                .open();
    }
}
