package org.proviso.architecture;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.vaadin.flow.component.Component;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Every form and sheet of a page is named by a test that works with pages. */
class FormsTestedTest {

    private static final Path TESTS = Path.of("src", "test", "java");

    /** A sheet that only others extend is tested through them. */
    private static Set<String> forms() {
        return ClassesOf.program().stream()
                .filter(item -> item.getSimpleName().endsWith("Sheet")
                        || item.getSimpleName().endsWith("Form"))
                .filter(FormsTestedTest::isOnAPage)
                .filter(item -> item.getAllSubclasses().isEmpty())
                .map(JavaClass::getSimpleName)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static boolean isOnAPage(JavaClass item) {
        return Stream.concat(Stream.of(item), item.getAllRawSuperclasses().stream())
                .flatMap(part -> part.getDirectDependenciesFromSelf().stream())
                .anyMatch(dependency -> dependency.getTargetClass().isAssignableTo(Component.class));
    }

    /** Which of the forms no test of pages names. */
    private static Set<String> unnamed(Set<String> forms, String tests) {
        return forms.stream()
                .filter(form ->
                        !Pattern.compile("\\b" + form + "\\b").matcher(tests).find())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** Not this one, which names forms without opening them. */
    private static String testsOfPages() throws IOException {
        try (Stream<Path> files = Files.walk(TESTS)) {
            return files.filter(file -> file.toString().endsWith("Test.java"))
                    .filter(file -> !file.endsWith("FormsTestedTest.java"))
                    .map(FormsTestedTest::read)
                    .filter(text -> text.contains("PageDriver") || text.contains("com.github.mvysny.kaributesting"))
                    .collect(Collectors.joining("\n"));
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void every_form_and_sheet_is_named_by_a_test_of_pages() throws IOException {
        assertThat(unnamed(forms(), testsOfPages())).isEmpty();
    }

    @Test
    void sheets_that_are_no_components_themselves_are_found_too() {
        assertThat(forms())
                .contains("MotionSheet", "ReceiveForm", "ResearchAnswerSheet")
                .doesNotContain("CaseSheet");
    }

    @Test
    void a_form_that_no_test_names_is_found_out() {
        assertThat(unnamed(Set.of("ReceiveForm", "KeyingForm"), "a KeyingForm and a ReceiveFormer"))
                .containsExactly("ReceiveForm");
    }
}
