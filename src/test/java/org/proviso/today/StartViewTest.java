package org.proviso.today;

import static org.assertj.core.api.Assertions.assertThat;

import com.vaadin.flow.dom.Element;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.proviso.cli.CommandLineApp;

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
    void every_line_for_the_shell_names_a_verb_that_there_is() {
        List<String> lines =
                tagged("code").stream().map(Element::getTextRecursively).toList();
        assertThat(lines).hasSize(6).allSatisfy(line -> {
            assertThat(line).startsWith("java -jar target/proviso.jar ");
            assertThat(CommandLineApp.isVerb(new String[] {line.split(" ")[3]}))
                    .as(line)
                    .isTrue();
        });
    }
}
