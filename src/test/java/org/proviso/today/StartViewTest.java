package org.proviso.today;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.dom.Element;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.proviso.cli.CommandLineApp;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** The start page is well formed for those who hear it, and promises only what the program can do. */
class StartViewTest {

    private final List<Element> parts = walk(new StartView().getElement()).toList();

    private static Stream<Element> walk(Element element) {
        return Stream.concat(Stream.of(element), element.getChildren().flatMap(StartViewTest::walk));
    }

    private List<Element> tagged(String tag) {
        return parts.stream()
                .filter(part -> !part.isTextNode() && part.getTag().equals(tag))
                .toList();
    }

    @Test
    void there_is_one_first_heading_and_one_of_each_landmark() {
        assertThat(List.of("h1", "header", "main", "footer"))
                .allSatisfy(tag -> assertThat(tagged(tag)).as(tag).hasSize(1));
        assertThat(tagged("section")).hasSize(tagged("h2").size()).isNotEmpty();
    }

    @Test
    void the_page_says_that_people_decide_and_that_the_rules_are_illustrative() {
        assertThat(tagged("main").get(0).getTextRecursively())
                .contains("People decide", "Local law governs", "illustrative", "counsel", "Planned, not here yet");
    }

    @Test
    void each_outcome_has_its_own_mark_beside_its_word() {
        assertThat(tagged("span").stream()
                        .filter(span -> span.getClassList().contains("mark"))
                        .map(mark -> mark.getAttribute("class") + ": "
                                + mark.getParent().getTextRecursively()))
                .containsExactly("mark full: Count", "mark half: Count in part", "mark ring: Reject");
    }

    @Test
    void every_verb_there_is_has_a_line_that_it_understands() {
        Map<String, Class<?>> verbs = Arrays.stream(
                        CommandLineApp.class.getAnnotation(Command.class).subcommands())
                .collect(Collectors.toMap(
                        verb -> verb.getAnnotation(Command.class).name(), Function.identity()));
        List<String> named = tagged("code").stream()
                .map(Element::getTextRecursively)
                .map(line -> understood(line, verbs))
                .toList();
        assertThat(named).containsExactlyInAnyOrderElementsOf(verbs.keySet());
    }

    /** The verb of a line, once its options have been read as the shell reads them. */
    private static String understood(String line, Map<String, Class<?>> verbs) {
        String program = "java -jar target/proviso.jar ";
        assertThat(line).startsWith(program);
        String[] words = line.substring(program.length()).split(" ");
        assertThat(verbs).containsKey(words[0]);
        new CommandLine(verbs.get(words[0])).parseArgs(Arrays.copyOfRange(words, 1, words.length));
        return words[0];
    }
}
