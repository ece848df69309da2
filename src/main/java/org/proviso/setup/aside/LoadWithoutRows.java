package org.proviso.setup.aside;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.function.Consumer;
import org.proviso.election.LookedAtFolder;
import org.proviso.files.SetAsideCount;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ActDialog;

/** An election folder with bad rows in its outside lists: what they are, and whether it is loaded without them. */
public final class LoadWithoutRows extends Div {

    private static final int LONGEST_REASON = 1000;

    private final transient LookedAtFolder looked;
    private final transient Consumer<String> load;

    /** {@code load} is handed the reason. */
    public LoadWithoutRows(LookedAtFolder looked, Runnable refuse, Consumer<String> load) {
        this.looked = looked;
        this.load = load;
        int total =
                looked.counts().values().stream().mapToInt(Integer::intValue).sum();
        Paragraph head = new Paragraph("Nothing was loaded. Could not be read: " + SetAsideCount.words(looked.counts())
                + ". A voter or a second vote in one of these rows would not be found.");
        head.addClassName("warn");
        add(head);
        looked.agreedBecause()
                .ifPresent(because -> add(new Paragraph(
                        "Another supervisor agreed to load these files without them. Reason given: " + because)));
        Div acts = new Div(
                new ActButton("Refuse the files").does(refuse),
                new ActButton("Load without these rows").first().does(this::ask));
        acts.addClassName("acts");
        add(new SetAsideTable(looked.first(), total), acts);
    }

    private void ask() {
        TextArea because = new TextArea("Reason");
        because.setId("because");
        because.setMaxLength(LONGEST_REASON);
        because.setWidthFull();
        boolean waits = looked.byTwo() && looked.agreedBecause().isEmpty();
        ActDialog sheet = new ActDialog("Load without these rows", waits ? "Agree" : "Load election", () -> {
            if (because.getValue().isBlank()) {
                return ActDialog.refuse(because, "Required. Your reason is kept with the record.");
            }
            load.accept(because.getValue());
            return true;
        });
        sheet.with(
                        waits
                                ? "More rows are left out than one person may. Your word is kept, and a second supervisor"
                                        + " loads the same files. Until then nothing is loaded."
                                : "The rows are kept as they came, set aside, and can be seen here afterwards.")
                .with(because)
                .open();
    }
}
