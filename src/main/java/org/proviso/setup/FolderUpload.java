package org.proviso.setup;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.proviso.files.InputException;
import org.proviso.files.UploadFolder;

/** Files on their way in, gathered in a folder of their own; a zip is unpacked there. Nothing is loaded from here alone. */
final class FolderUpload implements AutoCloseable {

    /** The most that a zip may unpack to. */
    private static final long MOST = 4L << 30;

    private final Path folder;

    FolderUpload() {
        folder = UploadFolder.create();
    }

    /** Takes a file under its own name, or unpacks a zip; a name that leads out of the folder is refused. */
    void take(String name, Path file) {
        try {
            if (name.endsWith(".zip")) {
                unpack(name, file);
            } else {
                // A mended file takes the place of the one before it.
                Files.copy(file, place(name, name), StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (IOException e) {
            throw new InputException(name, 0, "", "cannot be read: " + e.getMessage());
        }
    }

    /** Puts a text among the files, under that name, beside those that came. */
    void put(String name, String text) {
        try {
            Files.writeString(election().resolve(name), text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void unpack(String name, Path file) throws IOException {
        long left = MOST;
        try (InputStream in = Files.newInputStream(file);
                ZipInputStream zip = new ZipInputStream(in)) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                Path place = place(name, entry.getName());
                if (entry.isDirectory()) {
                    Files.createDirectories(place);
                } else {
                    Files.createDirectories(place.getParent());
                    left -= copy(zip, place, left, name);
                }
            }
        }
    }

    private static long copy(InputStream in, Path place, long left, String name) throws IOException {
        byte[] buffer = new byte[1 << 16];
        long written = 0;
        try (var out = Files.newOutputStream(place)) {
            for (int read = in.read(buffer); read >= 0; read = in.read(buffer)) {
                written += read;
                if (written > left) {
                    throw new InputException(name, 0, "", "unpacks to more than 4 GB");
                }
                out.write(buffer, 0, read);
            }
        }
        return written;
    }

    private Path place(String upload, String name) {
        Path place = folder.resolve(name).normalize();
        if (!place.startsWith(folder) || name.isBlank()) {
            throw new InputException(upload, 0, "", "contains a file outside its folder: " + name);
        }
        return place;
    }

    /** The election folder: the one that holds election.yaml, or where it is missing all that came. */
    Path election() {
        try (Stream<Path> files = Files.walk(folder, 3)) {
            return files.filter(file -> file.getFileName().toString().equals("election.yaml"))
                    .map(Path::getParent)
                    .findFirst()
                    .orElse(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The folder that holds one of these files, or where all are missing all that came. */
    Path holding(String... names) {
        try (Stream<Path> files = Files.walk(folder, 3)) {
            return files.filter(
                            file -> List.of(names).contains(file.getFileName().toString()))
                    .map(Path::getParent)
                    .findFirst()
                    .orElse(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The names of the uploaded files. */
    List<String> names() {
        try (Stream<Path> files = Files.walk(election(), 1)) {
            return files.filter(Files::isRegularFile)
                    .map(file -> file.getFileName().toString())
                    .sorted()
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Removes everything. */
    @Override
    public void close() {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(java.util.Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
