package org.proviso.setup;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.server.streams.UploadHandler;
import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.stream.Stream;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.act.ActResult;
import org.proviso.election.ElectionLoadService;
import org.proviso.election.LoadResult;
import org.proviso.election.LookedAtFolder;
import org.proviso.files.InputException;
import org.proviso.files.packs.RulePacks;
import org.proviso.setup.aside.LoadWithoutRows;
import org.proviso.setup.first.ElectionFacts;
import org.proviso.setup.first.ElectionFactsForm;
import org.proviso.setup.first.NeededFile;
import org.proviso.setup.first.NeededFilesTable;
import org.proviso.setup.first.TemplateFile;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.frame.WorkingElection;

/** Loading an election from its folder of files: whole, or not at all. */
final class LoadPart extends Div {

    private static final CompletableFuture<?> NOTHING = CompletableFuture.completedFuture("");

    private static final String ELECTION = "election.yaml";

    private final transient ElectionLoadService elections;
    private final transient AccessService access;
    private final transient WorkingElection workplace;
    private final Paragraph came = new Paragraph();
    private final Div problem = new Div();
    private final Upload upload;
    private final NeededFilesTable needed;
    private transient FolderUpload files = new FolderUpload();
    private transient CompletableFuture<?> loading = NOTHING;
    private transient CompletableFuture<?> looking = NOTHING;

    LoadPart(ElectionLoadService elections, AccessService access, WorkingElection workplace) {
        this.elections = elections;
        this.access = access;
        this.workplace = workplace;
        needed = new NeededFilesTable(workplace.election().isEmpty());
        upload = new Upload(UploadHandler.toTempFile((metadata, file) -> take(metadata.fileName(), file)));
        upload.setDropLabel(new com.vaadin.flow.component.html.Span("or drop them here"));
        ActButton choose = new ActButton("Choose files");
        upload.setUploadButton(choose);
        problem.getElement().setAttribute("role", "alert");
        came.getElement().setAttribute("role", "status");
        Div acts = new Div(
                new ActButton("Load election").first().does(this::load), new ActButton("Clear files").does(this::over));
        acts.addClassName("acts");
        add(
                new H2("Load an election"),
                new Paragraph(
                        "Choose the election folder as one zip file, or its files: election.yaml, contests.csv, roll.csv and so on."
                                + " All files are checked together. Where rows of an outside list have errors, you decide."),
                needed,
                new ElectionFactsForm(packs(), this::take),
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
            tell();
        } catch (InputException e) {
            show(e);
        } finally {
            file.delete();
        }
    }

    private void take(ElectionFacts facts) {
        access.demand(Permission.LOAD_FILES);
        files.put(ELECTION, facts.yaml());
        tell();
        MessageLine.done("The facts of " + facts.name() + " are among the files. Choose the others.");
    }

    private void tell() {
        List<String> names = files.names();
        came.setText("Files chosen: " + String.join(", ", names) + ".");
        needed.show(names);
    }

    private static Map<String, String> packs() {
        Map<String, String> words = new LinkedHashMap<>();
        RulePacks.bundled().forEach(pack -> words.put(pack, pack));
        return words;
    }

    private void over() {
        if (isLoading()) {
            return;
        }
        files.close();
        files = new FolderUpload();
        came.setText("");
        needed.show(List.of());
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
        List<String> names = files.names();
        List<String> missing = new ArrayList<>(NeededFilesTable.missing(names));
        if (!names.contains(ELECTION)) {
            missing.add(0, ELECTION);
        }
        if (!missing.isEmpty()) {
            MessageLine.refused("Not loaded. Still missing: " + String.join(", ", missing) + ".");
            return;
        }
        Arrays.stream(NeededFile.values())
                .filter(file -> file.mayComeLater() && !names.contains(file.file()))
                .forEach(file -> files.put(file.file(), TemplateFile.empty(file)));
        Path folder = files.election();
        loading = BackgroundWork.begin(() -> elections.load(folder), this::loaded, why -> failed(folder, why));
    }

    /** Where only rows of outside lists are bad, the office may go without them. */
    private void look(Path folder, InputException wrong) {
        looking = BackgroundWork.begin(
                () -> elections.look(folder),
                looked -> {
                    if (looked.counts().isEmpty()) {
                        show(wrong);
                    } else {
                        problem.add(new LoadWithoutRows(looked, this::over, because -> load(folder, looked, because)));
                        MessageLine.refused("Nothing was loaded: " + BadRowList.inShort(wrong));
                    }
                },
                why -> show(wrong));
    }

    private void load(Path folder, LookedAtFolder looked, String because) {
        if (isLoading()) {
            MessageLine.refused("These files are already loading.");
            return;
        }
        loading = BackgroundWork.begin(
                () -> elections.loadWithoutAside(folder, looked.rowsHash(), because), this::loaded, why -> {
                    if (why instanceof InputException wrong) {
                        show(wrong);
                    } else {
                        throw why;
                    }
                });
    }

    private boolean isLoading() {
        return stillLoading().isPresent();
    }

    private Optional<CompletableFuture<?>> stillLoading() {
        return Stream.<CompletableFuture<?>>of(loading, looking)
                .filter(begun -> !begun.isDone())
                .findFirst();
    }

    private void loaded(ActResult<LoadResult> result) {
        if (result instanceof ActResult.Refused<LoadResult> refused) {
            MessageLine.refused("Nothing was loaded: " + refused.words());
        }
        result.ifAccepted().ifPresent(this::show);
    }

    private void show(LoadResult outcome) {
        if (outcome.waits()) {
            over();
            MessageLine.done("You agreed to load " + outcome.electionId()
                    + " without these rows. A second supervisor must load the same files. Nothing was loaded yet.");
            return;
        }
        workplace.choose(outcome.electionId());
        over();
        MessageLine.done(
                outcome.wasThere()
                        ? "These files were already loaded as " + outcome.electionId() + ". Nothing changed."
                        : "Election " + outcome.electionId() + " loaded.");
    }

    private void failed(Path folder, RuntimeException why) {
        if (why instanceof InputException wrong) {
            look(folder, wrong);
        } else {
            throw why;
        }
    }

    /** Leaving the page during a load removes the files only after the load. */
    private void leave() {
        FolderUpload loaded = files;
        stillLoading().ifPresentOrElse(begun -> closeAfter(begun, loaded), loaded::close);
    }

    private static void closeAfter(CompletableFuture<?> begun, FolderUpload loaded) {
        CompletableFuture<?> unused = begun.whenComplete((outcome, wrong) -> loaded.close());
    }

    private void show(InputException wrong) {
        problem.removeAll();
        problem.add(new BadRowList(wrong));
        MessageLine.refused("Nothing was loaded: " + BadRowList.inShort(wrong));
    }
}
