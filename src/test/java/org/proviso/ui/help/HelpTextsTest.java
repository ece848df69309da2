package org.proviso.ui.help;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.proviso.browser.Guides;

/** Every page of the office has its own help, and help leads nowhere that is not there. */
class HelpTextsTest {

    private static final Path TEXTS = Path.of("src/main/resources/org/proviso/ui/help");
    private static final Path PAGES = Path.of("src/test/resources/permissions/pages.txt");
    private static final Path GUIDES = Guides.FOLDER;

    private final HelpTexts texts = new HelpTexts();

    /** The addresses of the office's pages: those in its frame, as the table of permissions has them. */
    private static Set<String> addresses() throws IOException {
        return Files.readAllLines(PAGES).stream()
                .filter(line -> !line.startsWith("/") && !line.startsWith("#") && !line.startsWith("help/"))
                .map(line -> line.substring(0, line.indexOf(" = ")).replace("(start)", ""))
                .map(address -> address.contains("/:") ? address.substring(0, address.indexOf("/:")) : address)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void every_page_has_its_own_help() throws IOException {
        assertThat(addresses())
                .hasSizeGreaterThan(30)
                .allSatisfy(address -> assertThat(texts.hasPage(address))
                        .as("help for the page \"%s\"", address)
                        .isTrue());
    }

    @Test
    void every_text_is_of_a_page() throws IOException {
        Set<String> names = addresses().stream()
                .map(address -> address.isEmpty() ? "today" : address.replace('/', '-'))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(names(TEXTS)).isEqualTo(names);
    }

    @Test
    void a_page_below_another_has_that_ones_help() {
        assertThat(texts.page("review/case/G-1058")).isEqualTo(texts.page("review/case"));
        assertThat(texts.page("")).startsWith("<h1>Today</h1>");
        assertThat(texts.page("nowhere")).isEqualTo(texts.page(""));
    }

    @Test
    void every_link_leads_to_a_guide_or_the_words() throws IOException {
        List<String> links = Stream.concat(
                        texts.guides().stream().map(name -> texts.guide(name).orElseThrow()), pages())
                .flatMap(html -> Pattern.compile("href=\"([^\"]*)\"")
                        .matcher(html)
                        .results()
                        .map(link -> link.group(1)))
                .distinct()
                .toList();
        Set<String> allowed =
                names(GUIDES).stream().map(name -> "help/guide/" + name).collect(Collectors.toSet());
        allowed.add("help/words");
        assertThat(links).hasSizeGreaterThan(3).isSubsetOf(allowed);
    }

    @Test
    void the_words_are_those_of_the_glossary_and_pictures_are_left_out() throws IOException {
        assertThat(texts.words()).contains("<td>consent group</td>").doesNotContain("| word |");
        assertThat(Markdown.html("Look:\n\n![A case](pictures/case.png)\n\n<b>x</b>"))
                .doesNotContain("img")
                .contains("&lt;b&gt;");
        assertThat(texts.guides()).isEqualTo(names(GUIDES));
    }

    /** Every picture that a guide shows is there, and none is there that no guide shows. */
    @Test
    void guides_have_their_pictures() throws IOException {
        Set<String> shown = Guides.pictures();
        assertThat(shown).hasSizeGreaterThan(5).allMatch(Guides::isScreen);
        try (Stream<Path> files = Files.list(GUIDES.resolve("pictures"))) {
            Set<String> there = files.map(file -> file.getFileName().toString()).collect(Collectors.toSet());
            assertThat(there)
                    .isEqualTo(shown.stream().map(name -> name + ".png").collect(Collectors.toSet()));
        }
    }

    private static Stream<String> pages() throws IOException {
        return names(TEXTS).stream().map(name -> new HelpTexts().page(name));
    }

    private static Set<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".md"))
                    .map(name -> name.substring(0, name.length() - 3))
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }
}
