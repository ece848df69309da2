package org.proviso.setup.first;

import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Span;
import java.util.Arrays;
import java.util.List;
import org.proviso.ui.PlainTable;

/** The files of an election: what each is, who usually has it, what happens without it, and which are chosen. */
public final class NeededFilesTable extends Div {

    private final Div place = new Div();

    /** {@code open}: unfolded, as an office that has no election yet needs it. */
    public NeededFilesTable(boolean open) {
        NativeDetails folded = new NativeDetails("What the files are, and files to begin from", place);
        folded.setOpen(open);
        add(folded);
        show(List.of());
    }

    /** Shows which of them are among the files chosen. */
    public void show(List<String> chosen) {
        PlainTable table = new PlainTable(
                "Files of an election",
                "File",
                "What it is",
                "Who usually has it",
                "Without it",
                "Chosen",
                "Begin from");
        for (NeededFile file : NeededFile.values()) {
            Anchor template = new Anchor(TemplateController.address(file), "template");
            template.getElement().setAttribute("aria-label", "template of " + file.file());
            template.setRouterIgnore(true);
            table.row(List.of(
                    new Span(file.file()),
                    new Span(file.what()),
                    new Span(file.whoHasIt()),
                    new Span(file.without()),
                    new Span(chosen.contains(file.file()) ? "yes" : file.isNeeded() ? "missing" : "not yet"),
                    template));
        }
        place.removeAll();
        place.add(table);
    }

    /** The files without which the election cannot be loaded, and that are not chosen. */
    public static List<String> missing(List<String> chosen) {
        return Arrays.stream(NeededFile.values())
                .filter(NeededFile::isNeeded)
                .map(NeededFile::file)
                .filter(file -> !chosen.contains(file) && !(file.equals("roll.csv") && chosen.contains("roll.json")))
                .toList();
    }
}
