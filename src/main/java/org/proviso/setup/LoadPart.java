package org.proviso.setup;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.server.streams.UploadHandler;
import java.io.File;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.act.ActResult;
import org.proviso.election.ElectionLoadService;
import org.proviso.election.LoadResult;
import org.proviso.files.InputException;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.frame.WorkingElection;

/** Loading an election from its folder of files: whole, or not at all. */
final class LoadPart extends Div {

    private final transient ElectionLoadService elections;
    private final transient AccessService access;
    private final transient WorkingElection workplace;
    private final Paragraph came = new Paragraph();
    private final Div problem = new Div();
    private final Upload upload;
    private transient FolderUpload files = new FolderUpload();
    private transient @Nullable CompletableFuture<ActResult<LoadResult>> loading;

    LoadPart(ElectionLoadService elections, AccessService access, WorkingElection workplace) {
        this.elections = elections;
        this.access = access;
        this.workplace = workplace;
        upload = new Upload(UploadHandler.toTempFile((metadata, file) -> take(metadata.fileName(), file)));
        upload.setDropLabel(new com.vaadin.flow.component.html.Span("or drop them here"));
        ActButton choose = new ActButton("Choose files");
        upload.setUploadButton(choose);
        problem.getElement().setAttribute("role", "alert");
        came.getElement().setAttribute("role", "status");
        Div acts = new Div(
                new ActButton("Load election").first().does(this::load), new ActButton("Start over").does(this::over));
        acts.addClassName("acts");
        add(
                new H2("Load an election"),
                new Paragraph(
                        "Choose the election folder as one zip file, or its files: election.yaml, contests.csv, roll.csv and so on."
                                + " All files are checked together. If any row has an error, nothing is loaded."),
                upload,
                came,
                problem,
                acts);
        addDetachListener(event -> leave());
    }

    private void take(String name, File file) {
        try {
            access.demand(Permission.LOAD_FILES);
            files.take(name, file.toPath());
            came.setText("Files chosen: " + String.join(", ", files.names()) + ".");
        } catch (InputException e) {
            show(e);
        } finally {
            file.delete();
        }
    }

    private void over() {
        if (isLoading()) {
            return;
        }
        files.close();
        files = new FolderUpload();
        came.setText("");
        problem.removeAll();
        upload.clearFileList();
    }

    /** A large roll takes longer than a page should take; the line at the top shows the progress. */
    private void load() {
        if (isLoading()) {
            MessageLine.refused("These files are already loading.");
            return;
        }
        problem.removeAll();
        Path folder = files.election();
        loading = BackgroundWork.begin(() -> elections.load(folder), this::loaded, this::failed);
    }

    private boolean isLoading() {
        return stillLoading().isPresent();
    }

    private Optional<CompletableFuture<ActResult<LoadResult>>> stillLoading() {
        return Optional.ofNullable(loading).filter(begun -> !begun.isDone());
    }

    private void loaded(ActResult<LoadResult> result) {
        if (result instanceof ActResult.Refused<LoadResult> refused) {
            MessageLine.refused("Nothing was loaded: " + refused.words());
        }
        result.ifAccepted().ifPresent(this::show);
    }

    private void show(LoadResult outcome) {
        workplace.choose(outcome.electionId());
        over();
        MessageLine.done(
                outcome.wasThere()
                        ? "These files were already loaded as " + outcome.electionId() + ". Nothing changed."
                        : "Election " + outcome.electionId() + " loaded.");
    }

    private void failed(RuntimeException why) {
        if (why instanceof InputException wrong) {
            show(wrong);
        } else {
            throw why;
        }
    }

    /** Leaving the page during a load removes the files only after the load. */
    private void leave() {
        FolderUpload loaded = files;
        stillLoading().ifPresentOrElse(begun -> closeAfter(begun, loaded), loaded::close);
    }

    private static void closeAfter(CompletableFuture<ActResult<LoadResult>> begun, FolderUpload loaded) {
        CompletableFuture<ActResult<LoadResult>> unused = begun.whenComplete((outcome, wrong) -> loaded.close());
    }

    private void show(InputException wrong) {
        problem.removeAll();
        problem.add(new BadRowList(wrong));
        MessageLine.refused("Nothing was loaded: " + BadRowList.inShort(wrong));
    }
}
