package org.proviso.today.setup;

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
import org.proviso.access.Act;
import org.proviso.election.ElectionRefusedException;
import org.proviso.election.ElectionService;
import org.proviso.election.LoadOutcome;
import org.proviso.files.InputException;
import org.proviso.ui.ActButton;
import org.proviso.ui.Said;
import org.proviso.ui.Workplace;

/** Loading an election from its folder of files: whole, or not at all. */
final class LoadPart extends Div {

    private final transient ElectionService elections;
    private final transient AccessService access;
    private final transient Workplace workplace;
    private final Paragraph came = new Paragraph();
    private final Div problem = new Div();
    private final Upload upload;
    private transient FolderUpload files = new FolderUpload();
    private transient @Nullable CompletableFuture<LoadOutcome> loading;

    LoadPart(ElectionService elections, AccessService access, Workplace workplace) {
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
                new ActButton("Load the election").first().does(this::load),
                new ActButton("Start over").does(this::over));
        acts.addClassName("acts");
        add(
                new H2("Load an election"),
                new Paragraph(
                        "Give its folder as one zip, or its files: election.yaml, contests.csv, roll.csv and so on."
                                + " They are checked together; where one row is not right, nothing is loaded."),
                upload,
                came,
                problem,
                acts);
        addDetachListener(event -> leave());
    }

    private void take(String name, File file) {
        try {
            access.demand(Act.LOAD_FILES);
            files.take(name, file.toPath());
            came.setText("Here: " + String.join(", ", files.names()) + ".");
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

    /** A large roll takes longer than anybody waits for a page; the line at the top says how far it is. */
    private void load() {
        if (isLoading()) {
            Said.refused("These files are being loaded already.");
            return;
        }
        problem.removeAll();
        Path folder = files.election();
        loading = Beside.begin(() -> elections.load(folder), this::loaded, this::refused);
    }

    private boolean isLoading() {
        return stillLoading().isPresent();
    }

    private Optional<CompletableFuture<LoadOutcome>> stillLoading() {
        return Optional.ofNullable(loading).filter(begun -> !begun.isDone());
    }

    private void loaded(LoadOutcome outcome) {
        workplace.choose(outcome.electionId());
        over();
        Said.done(
                outcome.wasThere()
                        ? "These files are in the office already, as " + outcome.electionId() + ". Nothing was written."
                        : outcome.electionId() + " is loaded.");
    }

    private void refused(RuntimeException why) {
        if (why instanceof InputException wrong) {
            show(wrong);
        } else if (why instanceof ElectionRefusedException) {
            Said.refused("Nothing was loaded: " + why.getMessage());
        } else {
            throw why;
        }
    }

    /** Whoever leaves the page while files are loaded takes them away only after that. */
    private void leave() {
        FolderUpload loaded = files;
        stillLoading().ifPresentOrElse(begun -> closeAfter(begun, loaded), loaded::close);
    }

    private static void closeAfter(CompletableFuture<LoadOutcome> begun, FolderUpload loaded) {
        CompletableFuture<LoadOutcome> unused = begun.whenComplete((outcome, wrong) -> loaded.close());
    }

    private void show(InputException wrong) {
        problem.removeAll();
        problem.add(new WhatIsWrong(wrong));
        Said.refused("Nothing was loaded: " + WhatIsWrong.inShort(wrong));
    }
}
