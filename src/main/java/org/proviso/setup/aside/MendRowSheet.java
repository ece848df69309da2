package org.proviso.setup.aside;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextArea;
import com.vaadin.flow.component.textfield.TextField;
import java.util.LinkedHashMap;
import java.util.Map;
import org.proviso.core.ElectionId;
import org.proviso.core.act.Refusal;
import org.proviso.review.news.NewListResult;
import org.proviso.review.news.NewerFileService;
import org.proviso.roll.aside.MendRow;
import org.proviso.roll.aside.MendableRow;
import org.proviso.ui.MessageLine;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActDialog;

/** Mends a row that was set aside: its cells under their columns, read like a row of the file. */
public final class MendRowSheet {

    private static final int LONGEST_REASON = 1000;

    private final NewerFileService newer;
    private final ElectionId election;
    private final int snapshotNo;
    private final int rowNo;
    private final MendableRow mendable;
    private final Runnable after;
    private final Map<String, TextField> boxes = new LinkedHashMap<>();
    private final TextArea because = new TextArea("Reason");
    private final ActDialog sheet = new ActDialog("Mend a row set aside", "Put mended row in use", this::mend);

    public MendRowSheet(
            NewerFileService newer,
            ElectionId election,
            int snapshotNo,
            int rowNo,
            MendableRow mendable,
            Runnable after) {
        this.newer = newer;
        this.election = election;
        this.snapshotNo = snapshotNo;
        this.rowNo = rowNo;
        this.mendable = mendable;
        this.after = after;
        because.setId("because");
        because.setMaxLength(LONGEST_REASON);
        because.setWidthFull();
        because.setHelperText("Where you know it from. It is kept with the row as it came.");
        Div fields = new Div();
        fields.addClassName("in-columns");
        for (int i = 0; i < mendable.columns().size(); i++) {
            String column = mendable.columns().get(i);
            TextField box = new TextField(column);
            box.setId("mend-" + column);
            box.setValue(i < mendable.cells().size() ? mendable.cells().get(i) : "");
            boxes.put(column, box);
            fields.add(box);
        }
        String place =
                mendable.row().column().isEmpty() ? "" : ", " + mendable.row().column();
        sheet.setWidth("52rem");
        sheet.with("Line " + mendable.row().line() + place + ": "
                        + mendable.row().reason())
                .with(new Paragraph("As it came: " + mendable.row().asItCame()))
                .with(fields, because);
    }

    public void open() {
        sheet.open();
    }

    private boolean mend() {
        if (because.getValue().isBlank()) {
            return ActDialog.refuse(because, "Required. Your reason is kept with the record.");
        }
        boxes.values().forEach(box -> box.setInvalid(false));
        NewListResult result = newer.mend(new MendRow(
                election,
                snapshotNo,
                rowNo,
                mendable.rowsHash(),
                mendable.columns(),
                boxes.values().stream().map(TextField::getValue).toList(),
                because.getValue().strip()));
        if (result instanceof NewListResult.Refused refused) {
            return refuse(refused.refusal());
        }
        MessageLine.done(
                result instanceof NewListResult.InUse inUse
                        ? "Row mended. " + UsDates.count(inUse.changed().size(), "case") + " changed."
                        : "Row mended. It would change decided cases, so a second person must confirm.");
        after.run();
        return true;
    }

    private boolean refuse(Refusal refusal) {
        String field = refusal.field();
        TextField box = field == null ? null : boxes.get(field);
        return box == null ? sheet.refuse(refusal.words()) : ActDialog.refuse(box, refusal.words());
    }
}
