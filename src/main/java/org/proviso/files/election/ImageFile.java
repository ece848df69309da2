package org.proviso.files.election;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.proviso.files.InputException;

/**
 * A picture in an election folder, by the name the folder's files give it. It is a PNG or a JPEG by its first bytes,
 * whatever its name ends in, of at most 5 MB, and lies in the folder, also where a link leads elsewhere.
 */
public record ImageFile(String name, Path file, String mediaType) {

    static final long LARGEST = 5_000_000;

    static final String OUTSIDE = "is not a file name inside the election folder";

    private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
    private static final byte[] JPEG = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF};

    /** Looks at the picture of that name; what is wrong is an {@link InputException} that names it. */
    static ImageFile in(Path folder, String name) {
        Path file = within(folder, name).orElseThrow(() -> wrong(name, OUTSIDE));
        try {
            if (!Files.isRegularFile(file)) {
                throw wrong(name, "is missing from " + folder.toAbsolutePath());
            }
            if (!file.toRealPath().startsWith(folder.toRealPath())) {
                throw wrong(name, "is a link to a place outside the election folder");
            }
            if (Files.size(file) > LARGEST) {
                throw wrong(name, "is larger than 5 MB");
            }
            return new ImageFile(name, file, mediaType(name, file));
        } catch (IOException e) {
            throw wrong(name, "cannot be read: " + e);
        }
    }

    /** The bytes; the file is looked at again, as it may have changed since. */
    public byte[] content() {
        try {
            byte[] bytes = Files.readAllBytes(file);
            if (bytes.length > LARGEST || !mediaType.equals(mediaType(name, bytes))) {
                throw wrong(name, "changed while it was being read");
            }
            return bytes;
        } catch (IOException e) {
            throw wrong(name, "cannot be read: " + e);
        }
    }

    /** The file of that name in the folder; empty where the name leads outside it or is not a file name. */
    static Optional<Path> within(Path folder, String name) {
        try {
            Path file = folder.resolve(name).normalize();
            boolean inside =
                    file.startsWith(folder.normalize()) && !Path.of(name).isAbsolute();
            return inside ? Optional.of(file) : Optional.empty();
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    private static String mediaType(String name, Path file) throws IOException {
        try (var in = Files.newInputStream(file)) {
            return mediaType(name, in.readNBytes(PNG.length));
        }
    }

    /** What kind of picture these bytes of a file are; what is wrong with them is an {@link InputException}. */
    public static String checkedType(String name, byte[] bytes) {
        if (bytes.length > LARGEST) {
            throw wrong(name, "is larger than 5 MB");
        }
        return mediaType(name, bytes);
    }

    private static String mediaType(String name, byte[] bytes) {
        if (startsWith(bytes, PNG)) {
            return "image/png";
        }
        if (startsWith(bytes, JPEG)) {
            return "image/jpeg";
        }
        throw wrong(name, "is not a PNG or JPEG image");
    }

    private static boolean startsWith(byte[] bytes, byte[] mark) {
        return bytes.length >= mark.length && Arrays.equals(bytes, 0, mark.length, mark, 0, mark.length);
    }

    private static InputException wrong(String name, String reason) {
        return new InputException(name.replaceAll("\\p{Cntrl}", "?"), 0, "", reason);
    }
}
