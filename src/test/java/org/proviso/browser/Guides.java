package org.proviso.browser;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The pictures that the guides show, by the names of their screens. */
public final class Guides {

    public static final Path FOLDER = Path.of("docs", "guides");

    private static final Pattern PICTURE = Pattern.compile("]\\(pictures/([a-z0-9-]+)\\.png\\)");

    private Guides() {}

    /** The names of the screens, without the ending of a picture. */
    public static Set<String> pictures() {
        try (Stream<Path> files = Files.list(FOLDER)) {
            List<Path> guides =
                    files.filter(file -> file.toString().endsWith(".md")).toList();
            return guides.stream()
                    .flatMap(guide -> PICTURE.matcher(text(guide)).results().map(shown -> shown.group(1)))
                    .collect(Collectors.toCollection(TreeSet::new));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Whether there is a screen of this name, which the command can picture. */
    public static boolean isScreen(String name) {
        return Screen.ALL.stream().anyMatch(screen -> screen.name().equals(name));
    }

    private static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
