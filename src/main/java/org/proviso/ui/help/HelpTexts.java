package org.proviso.ui.help;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.springframework.core.io.Resource;
import org.springframework.core.io.support.PathMatchingResourcePatternResolver;
import org.springframework.stereotype.Component;

/**
 * The texts of help, read once: one for each page, named by its address ({@code review-case.md} for
 * {@code review/case}), the guides, and the glossary. Thread-safe.
 */
@Component
public final class HelpTexts {

    private static final String FOLDER = "org/proviso/ui/help/";
    private static final String START = "today";

    private final Map<String, String> pages = read("*.md");
    private final Map<String, String> guides = read("docs/guides/*.md");
    private final String words =
            Objects.requireNonNull(read("docs/glossary.md").get("glossary"), "the glossary comes with the program");

    /** The text for a page, as HTML: that of its own address, or of the nearest one above it. */
    String page(String path) {
        String name = path.replace('/', '-');
        while (!pages.containsKey(name) && name.contains("-")) {
            name = name.substring(0, name.lastIndexOf('-'));
        }
        return Objects.requireNonNull(pages.getOrDefault(name, pages.get(START)));
    }

    boolean hasPage(String path) {
        return pages.containsKey(path.isEmpty() ? START : path.replace('/', '-'));
    }

    /** A guide by its name, as HTML. */
    public Optional<String> guide(String name) {
        return Optional.ofNullable(guides.get(name));
    }

    /** The names of the guides. */
    public Set<String> guides() {
        return guides.keySet();
    }

    /** The heading of a guide. */
    public String title(String guide) {
        String html = Objects.requireNonNull(guides.get(guide), guide);
        return html.substring(html.indexOf('>') + 1, html.indexOf("</h1>"));
    }

    /** The glossary, as HTML without its own heading. */
    public String words() {
        return words.substring(words.indexOf("</h1>") + "</h1>".length());
    }

    /** By the name of the file without its ending. */
    private static Map<String, String> read(String pattern) {
        Map<String, String> texts = new TreeMap<>();
        try {
            for (Resource file :
                    new PathMatchingResourcePatternResolver().getResources("classpath*:" + FOLDER + pattern)) {
                String name = Objects.requireNonNull(file.getFilename());
                texts.put(
                        name.substring(0, name.length() - ".md".length()),
                        Markdown.html(file.getContentAsString(StandardCharsets.UTF_8)));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return texts;
    }
}
