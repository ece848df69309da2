package org.proviso.setup;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.server.streams.UploadHandler;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.files.InputException;
import org.proviso.review.news.NewListResult;
import org.proviso.review.news.NewerFileService;
import org.proviso.roll.ListReadService;
import org.proviso.roll.SnapshotKind;
import org.proviso.roll.StagedList;
import org.proviso.setup.aside.SetAsideChoice;
import org.proviso.ui.MessageLine;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ChoiceField;
import org.proviso.ui.frame.ElectionLine;

/** A newer list: read next to the one in use, with what it would change, then put in use. */
final class NewerListPart extends Div {

    private final transient ListReadService lists;
    private final transient NewerFileService newer;
    private final ElectionLine election;
    private final Runnable after;
    private final ChoiceField kind = new ChoiceField("list-kind", "List", kinds());
    private final Div shown = new Div();
    private transient @Nullable Path file;

    NewerListPart(ListReadService lists, NewerFileService newer, ElectionLine election, Runnable after) {
        this.lists = lists;
        this.newer = newer;
        this.election = election;
        this.after = after;
        Upload upload = new Upload(UploadHandler.toTempFile((metadata, came) -> take(metadata.fileName(), came)));
        upload.setMaxFiles(1);
        upload.setDropLabel(new com.vaadin.flow.component.html.Span("or drop it here"));
        upload.setUploadButton(new ActButton("Choose file"));
        shown.getElement().setAttribute("role", "status");
        add(
                new H2("Load a newer list"),
                new Paragraph("The list is read and compared first. Nothing changes until you put it in use. If decided"
                        + " cases would change, a second person must confirm."),
                kind,
                upload,
                shown);
        addDetachListener(event -> forget());
    }

    private static Map<String, String> kinds() {
        Map<String, String> words = new LinkedHashMap<>();
        for (SnapshotKind snapshotKind : SnapshotKind.values()) {
            words.put(snapshotKind.code(), ListsPart.words(snapshotKind));
        }
        return words;
    }

    private SnapshotKind kind() {
        return Code.find(SnapshotKind.class, kind.code()).orElseThrow();
    }

    private void take(String name, File came) {
        shown.removeAll();
        forget();
        try {
            Path folder = Files.createTempDirectory("proviso-list");
            file = Files.move(came.toPath(), folder.resolve(Path.of(name).getFileName()));
            stage(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void stage(Path path) {
        try {
            StagedList staged = lists.stage(election.id(), kind(), path);
            say(staged);
            after.run();
        } catch (InputException e) {
            shown.add(new BadRowList(e));
            MessageLine.refused("File not read as " + ListsPart.words(kind()) + ": " + BadRowList.inShort(e));
        }
    }

    private void say(StagedList staged) {
        int touched = staged.touchedVoterIds().size() + staged.changedLines().size();
        shown.add(new Paragraph(UsDates.count(staged.rows(), "row") + " read"
                + (staged.known() ? " (this file was already loaded)" : "") + "; " + touched
                + (touched == 1 ? " differs" : " differ") + " from the list in use."));
        staged.warnings().forEach(warning -> shown.add(new Paragraph(warning)));
        if (staged.mendedInUse() > 0) {
            Paragraph lost = new Paragraph(UsDates.count(staged.mendedInUse(), "row") + " of the list in use "
                    + (staged.mendedInUse() == 1 ? "was" : "were")
                    + " mended by hand. This list takes its place with the rows as they are in the file.");
            lost.addClassName("warn");
            shown.add(lost);
        }
        if (staged.snapshotNo() == staged.inUseNo()) {
            shown.add(new Paragraph("This is the list in use. Nothing to change."));
            return;
        }
        shown.add(new ChangedCases(election.id(), () -> newer.wouldChange(election.id(), staged.snapshotNo())));
        if (!staged.aside().isSettled()) {
            shown.add(new SetAsideChoice(lists, newer, election.id(), staged, this::brought));
            return;
        }
        if (!staged.aside().isEmpty()) {
            shown.add(new Paragraph(UsDates.count(staged.aside().rowsAside(), "row")
                    + " of this list are set aside. It was decided before to use it without them."));
        }
        shown.add(new ActButton("Put list in use").first().does(() -> bring(staged.kind())));
    }

    /** As the list that the file was read as, whatever was chosen since. */
    private void bring(SnapshotKind readAs) {
        if (file == null) {
            return;
        }
        brought(newer.load(election.id(), readAs, file));
    }

    private void brought(NewListResult brought) {
        shown.removeAll();
        if (brought instanceof NewListResult.InUse inUse) {
            MessageLine.done("List " + inUse.snapshotNo() + " is in use. "
                    + UsDates.count(inUse.changed().size(), "case") + " changed.");
        } else if (brought instanceof NewListResult.WaitsForSecond waits) {
            MessageLine.done("List " + waits.snapshotNo()
                    + " waits for a second person to confirm it. Nothing has changed yet.");
        } else if (brought instanceof NewListResult.FileRefused) {
            MessageLine.done("File refused. Nothing of it was kept.");
        } else if (brought instanceof NewListResult.Refused refused) {
            MessageLine.refused(refused.refusal().words());
        } else {
            MessageLine.done("This list is already in use.");
        }
        forget();
        after.run();
    }

    private void forget() {
        Path gone = file;
        file = null;
        if (gone != null) {
            try {
                Files.deleteIfExists(gone);
                Files.deleteIfExists(gone.getParent());
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
