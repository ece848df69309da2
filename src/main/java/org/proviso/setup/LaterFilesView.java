package org.proviso.setup;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.streams.UploadHandler;
import jakarta.annotation.security.PermitAll;
import java.io.File;
import java.nio.file.Path;
import java.util.List;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.files.InputException;
import org.proviso.files.election.LaterFolder;
import org.proviso.intake.LaterFileService;
import org.proviso.intake.LaterFiles;
import org.proviso.ui.Links;
import org.proviso.ui.MessageLine;
import org.proviso.ui.PageHead;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** Envelopes and returns that come as files after the election was loaded: read, compared, then loaded. */
@Route(value = "set-up/envelopes", layout = OfficeFrame.class)
@PageTitle("Load envelopes · Proviso")
@PermitAll
public final class LaterFilesView extends Composite<Div> {

    /** So many numbers are named; of others only the count is. */
    private static final int NAMED = 20;

    private final transient LaterFileService later;
    private final transient AccessService access;
    private final ElectionId election;
    private final Div found = new Div();
    private final Upload upload;
    private transient FolderUpload files = new FolderUpload();

    LaterFilesView(LaterFileService later, AccessService access, WorkingElection workplace) {
        access.demand(Permission.LOAD_FILES);
        this.later = later;
        this.access = access;
        this.election = workplace.electionId();
        upload = new Upload(UploadHandler.toTempFile((metadata, file) -> take(metadata.fileName(), file)));
        upload.setDropLabel(new Span("or drop them here"));
        upload.setUploadButton(new ActButton("Choose files"));
        found.getElement().setAttribute("role", "status");
        getContent().addClassNames("sheet", "intake", "transmittals");
        getContent()
                .add(
                        new PageHead("Load envelopes", "Envelopes and returns that come as files after the first load.")
                                .beside(Links.link("Back to Setup", "set-up")),
                        new H2("Choose the files"),
                        new Paragraph(
                                "Choose envelopes.csv, transmittals.csv or both, or one zip file with them and the"
                                        + " signature images. The files are compared first. What the office has already stays"
                                        + " as it is and is not loaded twice."),
                        upload,
                        found);
        addDetachListener(event -> files.close());
    }

    private void take(String name, File file) {
        found.removeAll();
        try {
            access.demand(Permission.LOAD_FILES);
            files.take(name, file.toPath());
            show(later.look(election, folder()));
        } catch (InputException e) {
            refuse(e);
        } finally {
            file.delete();
        }
    }

    private Path folder() {
        return files.holding(LaterFolder.ENVELOPES, LaterFolder.TRANSMITTALS);
    }

    private void show(LaterFiles read) {
        UnorderedList lines = new UnorderedList();
        lines.add(new ListItem("New: " + UsDates.count(read.envelopes().size(), "envelope") + ", "
                + UsDates.count(read.transmittals().size(), "return") + "."));
        add(lines, read.there().size(), "The office has already, as in the file: ", numbers(read.there()));
        add(
                lines,
                read.thereOtherwise().size(),
                "The office has already, and the file says something else. Correct by hand what is wrong: ",
                numbers(read.thereOtherwise()));
        add(lines, read.returnsThere(), "Returns that the office has already: ", String.valueOf(read.returnsThere()));
        add(
                lines,
                read.returnsThereOtherwise().size(),
                "Returns of a bag that the office has with other figures. Correct by hand what is wrong: ",
                String.join("; ", read.returnsThereOtherwise()));
        read.warnings().forEach(warning -> lines.add(new ListItem(warning)));
        found.add(new H2("What the files hold"), lines);
        Div acts = new Div();
        acts.addClassName("acts");
        if (read.isNothingNew()) {
            found.add(new Paragraph("Nothing in these files is new."));
        } else {
            acts.add(new ActButton("Load what is new").first().does(this::load));
        }
        acts.add(new ActButton("Clear files").does(this::over));
        found.add(acts);
    }

    private static void add(UnorderedList lines, int count, String words, String which) {
        if (count > 0) {
            lines.add(new ListItem(words + which + "."));
        }
    }

    private static String numbers(List<EnvelopeNumber> numbers) {
        String named = String.join(
                ", ", numbers.stream().limit(NAMED).map(EnvelopeNumber::value).toList());
        return numbers.size() > NAMED ? named + " and " + (numbers.size() - NAMED) + " more" : named;
    }

    private void load() {
        try {
            ActResult<LaterFiles> result = later.load(election, folder());
            if (result instanceof ActResult.Refused<LaterFiles> refused) {
                MessageLine.refused(refused.words());
            }
            result.ifAccepted().ifPresent(this::loaded);
        } catch (InputException e) {
            found.removeAll();
            refuse(e);
        }
    }

    private void loaded(LaterFiles files) {
        over();
        MessageLine.done(UsDates.count(files.envelopes().size(), "envelope") + " and "
                + UsDates.count(files.transmittals().size(), "return") + " loaded.");
    }

    private void over() {
        files.close();
        files = new FolderUpload();
        upload.clearFileList();
        found.removeAll();
    }

    private void refuse(InputException wrong) {
        found.add(new BadRowList(wrong), new ActButton("Clear files").does(this::over));
        MessageLine.refused("Nothing was loaded: " + BadRowList.inShort(wrong));
    }
}
