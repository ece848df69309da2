package org.proviso.files;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.Writer;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicLong;

/**
 * Writes a text file whole or not at all: into a temporary file beside it, forced to disk, then moved into place. Until
 * then an older file of that name stays as it was. UTF-8; a character that cannot be written is an error.
 */
public final class AtomicFile {

    private static final AtomicLong COUNT = new AtomicLong();

    private AtomicFile() {}

    /** Replaces the file by this text. */
    public static void writeText(Path target, String text) {
        write(target, out -> out.write(text));
    }

    /** Replaces the file by what the content writes. */
    public static void write(Path target, Content content) {
        Path file = target.toAbsolutePath();
        if (Files.exists(file) && !Files.isRegularFile(file)) {
            throw new InputException(target.toString(), 0, "", "cannot be replaced: it is not a regular file");
        }
        Path part = file.resolveSibling("." + file.getFileName() + "." + unique() + ".part");
        try {
            try {
                fill(part, content);
                Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
                force(Objects.requireNonNull(file.getParent(), "a file that was written lies in a folder"));
            } finally {
                Files.deleteIfExists(part);
            }
        } catch (IOException e) {
            throw new InputException(target.toString(), 0, "", "cannot be written: " + e);
        }
    }

    private static void fill(Path part, Content content) throws IOException {
        try (FileChannel channel = FileChannel.open(part, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
                Writer out = new BufferedWriter(Channels.newWriter(channel, StandardCharsets.UTF_8.newEncoder(), -1))) {
            content.writeTo(out);
            out.flush();
            channel.force(true);
        }
    }

    /** Makes the move itself last; systems on which a folder cannot be opened do without. */
    private static void force(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // The file's own bytes are on disk already.
        }
    }

    private static String unique() {
        return ProcessHandle.current().pid() + "-" + COUNT.incrementAndGet();
    }

    /** Writes the text of a file. */
    @FunctionalInterface
    public interface Content {
        void writeTo(Writer out) throws IOException;
    }
}
