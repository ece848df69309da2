package org.proviso.setup.columns;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.upload.Upload;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.streams.DownloadHandler;
import com.vaadin.flow.server.streams.DownloadResponse;
import com.vaadin.flow.server.streams.UploadHandler;
import jakarta.annotation.security.PermitAll;
import java.io.ByteArrayInputStream;
import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.Code;
import org.proviso.files.InputException;
import org.proviso.files.mapping.FixedColumn;
import org.proviso.files.mapping.LayoutReader;
import org.proviso.files.mapping.ListKind;
import org.proviso.files.mapping.Mapping;
import org.proviso.files.mapping.MappingReader;
import org.proviso.files.mapping.MappingYaml;
import org.proviso.ui.Links;
import org.proviso.ui.MessageLine;
import org.proviso.ui.PageHead;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ChoiceField;
import org.proviso.ui.field.TypedField;
import org.proviso.ui.frame.OfficeFrame;

/** An office's own export: what was recognized, which column is which, and the same file in our columns to take along. */
@Route(value = "set-up/columns", layout = OfficeFrame.class)
@PageTitle("Match columns · Proviso")
@PermitAll
public final class MatchColumnsView extends Composite<Div> {

    /** What the name of a layout for fixed width ends with. */
    private static final String LAYOUT = "layout.csv";

    private final transient AccessService access;
    private final transient Clock clock;
    private final ChoiceField list = new ChoiceField("own-list", "List", lists());
    private final Div shown = new Div();
    private transient @Nullable Path folder;
    private transient @Nullable OwnFile file;
    private transient @Nullable Mapping office;
    private transient List<FixedColumn> layout = List.of();

    MatchColumnsView(AccessService access, Clock clock) {
        access.demand(Permission.LOAD_FILES);
        this.access = access;
        this.clock = clock;
        Upload upload = new Upload(UploadHandler.toTempFile((metadata, came) -> take(metadata.fileName(), came)));
        upload.setDropLabel(new Span("or drop it here"));
        upload.setUploadButton(new ActButton("Choose file"));
        shown.addClassName("columns");
        Div chosen = new Div(list);
        chosen.addClassName("facts");
        getContent().addClassNames("sheet", "intake", "transmittals");
        getContent()
                .add(
                        new PageHead("Match columns", "Your own export, read in our columns.")
                                .beside(Links.link("Back to Setup", "set-up")),
                        new Paragraph(
                                "Choose which list it is, then the file as your system exports it. A mapping that you"
                                        + " saved before (.yaml), or the layout of a file in fixed width (name, from, to in a file"
                                        + " named ...layout.csv), is chosen before the file. Nothing is loaded here: download the"
                                        + " file in our columns and load it in Setup."),
                        chosen,
                        upload,
                        new ActButton("Clear files").does(() -> over(upload)),
                        shown);
        list.onChosen(code -> propose());
        addDetachListener(event -> forget());
    }

    /** A mapping or a layout that was chosen is for no file that comes after this. */
    private void over(Upload upload) {
        forget();
        office = null;
        layout = List.of();
        upload.clearFileList();
        shown.removeAll();
    }

    private static Map<String, String> lists() {
        Map<String, String> words = new LinkedHashMap<>();
        for (ListKind kind : ListKind.values()) {
            words.put(kind.code(), ColumnsTable.words(kind.code()) + " (" + kind.file() + ")");
        }
        return words;
    }

    private ListKind kind() {
        return Code.find(ListKind.class, list.code()).orElse(ListKind.ROLL);
    }

    private void take(String name, File came) {
        shown.removeAll();
        try {
            access.demand(Permission.LOAD_FILES);
            if (name.endsWith(".yaml") || name.endsWith(".yml")) {
                mapping(MappingReader.read(name, Files.readString(came.toPath())));
            } else if (name.endsWith(LAYOUT)) {
                layout = LayoutReader.read(came.toPath(), MessageLine::refused);
                MessageLine.done(
                        "The layout has " + layout.size() + " columns. It is used for the file in fixed width.");
                propose();
            } else {
                keep(name, came.toPath());
                propose();
            }
        } catch (InputException e) {
            refuse(e);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            came.delete();
        }
    }

    private void mapping(Mapping read) {
        office = read;
        list.code(read.list().code());
        MessageLine.done("Mapping " + read.name() + " is used for the file that you choose next.");
        propose();
    }

    private void keep(String name, Path came) throws IOException {
        forget();
        Path kept = Files.createTempDirectory("proviso-columns");
        folder = kept;
        Files.move(came, kept.resolve(Path.of(name).getFileName()), StandardCopyOption.REPLACE_EXISTING);
    }

    private Optional<Path> path() {
        if (folder == null) {
            return Optional.empty();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.filter(Files::isRegularFile).findFirst();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void propose() {
        Optional<Path> path = path();
        if (path.isEmpty()) {
            return;
        }
        int year = LocalDate.ofInstant(clock.instant(), ZoneOffset.UTC).getYear();
        try {
            Mapping saved = office;
            file = saved != null && saved.list() == kind()
                    ? OwnFile.read(path.get(), saved, year)
                    : OwnFile.proposed(path.get(), layout, kind(), year);
            show();
        } catch (InputException e) {
            refuse(e);
        }
    }

    private void refuse(InputException wrong) {
        shown.removeAll();
        shown.add(new Paragraph(String.valueOf(wrong.getMessage())));
        MessageLine.refused("File not read: " + wrong.getMessage());
    }

    /** The page is drawn anew; whoever chose with the keyboard goes on where they were. */
    private void showAgain(String id) {
        show();
        shown.getElement()
                .executeJs("(document.getElementById($0) || document.getElementById('mapping-name'))?.focus();", id);
    }

    private void show() {
        OwnFile now = file;
        if (now == null) {
            return;
        }
        shown.removeAll();
        try {
            shown.add(new OwnFileRows(path().orElseThrow().getFileName().toString(), now.recognized()));
            shown.add(new H2("Which column is which"), new ColumnsTable(now, this::showAgain));
            shown.add(new WhatFitsPart(now, this::showAgain), along(now));
        } catch (InputException e) {
            refuse(e);
        }
    }

    private Div along(OwnFile now) {
        TypedField name = new TypedField("mapping-name", "Name of the mapping")
                .text(now.mapping().name());
        name.onTyped(text -> now.named(
                text.isBlank() ? now.mapping().name() : text.strip(),
                now.mapping().version()));
        Div along = new Div(new H2("Take it along"), name);
        along.add(new Paragraph(link(yaml(now), "Download mapping")));
        Path place = folder;
        if (now.mapping().missing().isEmpty() && place != null) {
            String target = now.mapping().list().file();
            along.add(new Paragraph(link(ours(now, place), "Download " + target)));
        } else {
            along.add(new Paragraph("Every row needs "
                    + String.join(
                            ", ",
                            now.mapping().missing().stream()
                                    .map(ColumnsTable::words)
                                    .toList())
                    + ". Choose its column first."));
        }
        return along;
    }

    private static Anchor link(DownloadHandler file, String words) {
        Anchor link = new Anchor(file, words);
        link.getElement().setAttribute("download", true);
        return link;
    }

    private DownloadHandler yaml(OwnFile now) {
        return DownloadHandler.fromInputStream(event -> {
            access.demand(Permission.LOAD_FILES);
            byte[] text = MappingYaml.of(now.mapping()).getBytes(StandardCharsets.UTF_8);
            String name = "mapping-" + now.mapping().list().code().replace('_', '-') + ".yaml";
            return new DownloadResponse(new ByteArrayInputStream(text), name, "application/yaml", text.length);
        });
    }

    /** A roll of a million voters is written to a file and sent from there. */
    private DownloadHandler ours(OwnFile now, Path place) {
        return DownloadHandler.fromInputStream(event -> {
            access.demand(Permission.LOAD_FILES);
            Path made = Files.createDirectories(place.resolve("in-our-columns"));
            Path file = now.convert(made.resolve(now.mapping().list().file())).file();
            return new DownloadResponse(
                    Files.newInputStream(file), file.getFileName().toString(), "text/csv", Files.size(file));
        });
    }

    private void forget() {
        Path gone = folder;
        folder = null;
        file = null;
        if (gone != null) {
            delete(gone);
        }
    }

    private static void delete(Path place) {
        try (Stream<Path> files = Files.walk(place)) {
            for (Path one : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(one);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
