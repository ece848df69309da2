package org.proviso.files.mapping;

import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.proviso.files.InputException;

/**
 * Files of which some are an office's own, all in our columns while this is open. In an election folder the mappings in
 * its folder {@code mappings} are used for the files they are for; a mapping named by hand goes before them.
 */
public final class MappedFolder implements Closeable {

    private static final String MAPPINGS = "mappings";

    private final List<Converted> converted = new ArrayList<>();
    private final Path original;
    private @Nullable Path made;

    private MappedFolder(Path original) {
        this.original = original;
    }

    /** An election folder with its own mappings and these; without any it is the folder itself. */
    public static MappedFolder of(Path folder, List<Path> named) {
        MappedFolder mapped = new MappedFolder(folder);
        return named.isEmpty() && !Files.isDirectory(folder.resolve(MAPPINGS))
                ? mapped
                : mapped.or(() -> mapped.fill(folder, named));
    }

    /** No folder: files are converted one by one. */
    public static MappedFolder ofSingleFiles() {
        return new MappedFolder(Path.of(""));
    }

    private MappedFolder or(Runnable filling) {
        try {
            filling.run();
            return this;
        } catch (RuntimeException e) {
            close();
            throw e;
        }
    }

    /** The folder with every file in our columns. */
    public Path folder() {
        return made == null ? original : inside(made);
    }

    /** Named as the office's folder, whose name may be the election's. */
    private Path inside(Path place) {
        Path name = original.toAbsolutePath().normalize().getFileName();
        return name == null ? place.resolve("election") : place.resolve(name.toString());
    }

    private Path made() {
        if (made == null) {
            try {
                made = Files.createTempDirectory("proviso-mapped");
                Files.createDirectory(inside(made));
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
        return inside(made);
    }

    /** Converts one file; what is wrong with it later is told of the office's own. */
    public Path convert(Path file, Mapping mapping) {
        Converted one =
                Conversion.write(file, mapping, made().resolve(mapping.list().file()));
        converted.add(one);
        return one.file();
    }

    /** What is read from here; what is wrong is told with the office's files, lines and columns. */
    public <T> T read(Supplier<T> reading) {
        try {
            return reading.get();
        } catch (InputException wrong) {
            throw told(wrong);
        }
    }

    public InputException told(InputException wrong) {
        InputException told = wrong;
        for (Converted one : converted) {
            told = one.told(told);
        }
        return made == null ? told : inOriginal(told, inside(made).toString());
    }

    /** A missing file is missing from the office's folder. */
    private InputException inOriginal(InputException told, String place) {
        List<InputException> all = told.all().stream()
                .map(one -> !one.reason().contains(place)
                        ? one
                        : new InputException(
                                one.file(),
                                one.line(),
                                one.column(),
                                one.reason()
                                        .replace(
                                                place, original.toAbsolutePath().toString())))
                .toList();
        return InputException.ofAll(all.get(0), all.subList(1, all.size()), told.untold());
    }

    /** What was read otherwise than the mappings say and no reader refuses. */
    public List<String> warnings() {
        return converted.stream().flatMap(one -> one.warnings().stream()).toList();
    }

    private void fill(Path folder, List<Path> named) {
        if (!Files.isDirectory(folder)) {
            throw new InputException(folder.toString(), 0, "", "is not a folder");
        }
        Map<ListKind, Use> uses = new EnumMap<>(ListKind.class);
        named.forEach(file -> use(uses, folder, file));
        Map<ListKind, Use> found = new EnumMap<>(ListKind.class);
        for (Path file : entries(folder.resolve(MAPPINGS))) {
            Mapping mapping = MappingReader.read(file);
            source(folder, mapping).ifPresent(source -> newest(found, new Use(file, mapping, source)));
        }
        found.forEach(uses::putIfAbsent);
        if (uses.isEmpty()) {
            return;
        }
        uses.values().forEach(use -> alone(folder, use));
        uses.values().forEach(use -> convert(use.source(), use.mapping()));
        List<Path> own = uses.values().stream().map(Use::source).toList();
        for (Path entry : entries(folder)) {
            if (!own.contains(entry) && !entry.endsWith(MAPPINGS)) {
                bring(entry, made().resolve(name(entry)));
            }
        }
    }

    /** A mapping, its file, and the office's file that it is used for. */
    private record Use(Path file, Mapping mapping, Path source) {}

    private static void use(Map<ListKind, Use> uses, Path folder, Path file) {
        Mapping mapping = MappingReader.read(file);
        Path source = source(folder, mapping)
                .orElseThrow(() ->
                        new InputException(name(file), 0, "", "no file in " + folder + " is named " + mapping.files()));
        if (uses.put(mapping.list(), new Use(file, mapping, source)) != null) {
            throw new InputException(
                    name(file),
                    0,
                    "",
                    "is a second mapping for " + mapping.list().file() + "; name one");
        }
    }

    /** Of the versions of one mapping the newest is used; two different ones for a list leave it open which. */
    private static void newest(Map<ListKind, Use> found, Use one) {
        Use other = found.get(one.mapping().list());
        if (other != null && !other.mapping().name().equals(one.mapping().name())) {
            String reason =
                    "and " + name(other.file()) + " are both for " + name(one.source()) + "; name one as --mapping";
            throw new InputException(MAPPINGS + "/" + name(one.file()), 0, "", reason);
        }
        if (other == null || other.mapping().version() < one.mapping().version()) {
            found.put(one.mapping().list(), one);
        }
    }

    private static void alone(Path folder, Use use) {
        Path ours = folder.resolve(use.mapping().list().file());
        if (!ours.equals(use.source()) && Files.exists(ours)) {
            throw new InputException(
                    name(use.source()), 0, "", "found beside " + name(ours) + "; an election has only one of them");
        }
    }

    /** The one file of a folder that a mapping is for. */
    private static Optional<Path> source(Path folder, Mapping mapping) {
        List<Path> files = entries(folder).stream()
                .filter(file -> Files.isRegularFile(file) && mapping.isFor(file))
                .toList();
        if (files.size() > 1) {
            throw new InputException(
                    name(files.get(1)),
                    0,
                    "",
                    "found beside " + name(files.get(0)) + "; the mapping for " + mapping.files() + " is for one file");
        }
        return files.stream().findFirst();
    }

    /** Files stay where they are; pictures are looked for within the folder itself, so folders are linked file by file. */
    private static void bring(Path from, Path to) {
        try {
            if (Files.isDirectory(from)) {
                Files.createDirectory(to);
                entries(from).forEach(entry -> bring(entry, to.resolve(name(entry))));
            } else {
                link(from, to);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void link(Path from, Path to) throws IOException {
        try {
            Files.createLink(to, from.toRealPath());
        } catch (UnsupportedOperationException | IOException otherDisk) {
            Files.copy(from, to, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    private static List<Path> entries(Path folder) {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> entries = Files.list(folder)) {
            return entries.sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String name(Path file) {
        return file.getFileName().toString();
    }

    /** Removes what was made here. */
    @Override
    public void close() {
        if (made == null) {
            return;
        }
        try (Stream<Path> all = Files.walk(made)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
