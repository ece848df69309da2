package org.proviso.architecture;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import com.tngtech.archunit.library.dependencies.SliceRule;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Every package is of a size one head can hold, and no two packages need each other. */
class PackagesTest {

    private static final int MOST_TYPES = 30;
    private static final int MOST_TYPES_IN_REVIEW = 25;

    private static final SliceRule NO_CIRCLES = slices().assignedFrom(new SliceAssignment() {
                @Override
                public SliceIdentifier getIdentifierOf(JavaClass item) {
                    return SliceIdentifier.of(item.getPackageName());
                }

                @Override
                public String getDescription() {
                    return "packages";
                }
            })
            .should()
            .beFreeOfCycles();

    private static Map<String, Long> typesByPackage(JavaClasses classes) {
        return classes.stream()
                .filter(JavaClass::isTopLevelClass)
                .filter(item -> !item.getSimpleName().equals("package-info"))
                .collect(Collectors.groupingBy(JavaClass::getPackageName, Collectors.counting()));
    }

    private static List<String> tooLarge(JavaClasses classes, long most) {
        return typesByPackage(classes).entrySet().stream()
                .filter(entry -> entry.getValue() > most)
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
    }

    @Test
    void no_package_holds_more_than_thirty_types() {
        assertThat(tooLarge(ClassesOf.program(), MOST_TYPES)).isEmpty();
    }

    @Test
    void the_root_of_review_holds_at_most_twenty_five_types() {
        assertThat(typesByPackage(ClassesOf.program()).get("org.proviso.review"))
                .isBetween(1L, (long) MOST_TYPES_IN_REVIEW);
    }

    @Test
    void a_package_of_one_type_too_many_is_found_out() {
        assertThat(tooLarge(ClassesOf.fixture("circle"), 1)).containsExactly(ClassesOf.fixtureRoot("circle") + ".desk");
        assertThat(tooLarge(ClassesOf.fixture("circle"), 2)).isEmpty();
    }

    @Test
    void no_two_packages_use_each_other() {
        NO_CIRCLES.check(ClassesOf.program());
    }

    @Test
    void a_circle_between_two_packages_is_found_out() {
        assertThat(NO_CIRCLES
                        .evaluate(ClassesOf.fixture("circle"))
                        .getFailureReport()
                        .getDetails())
                .anyMatch(line -> line.contains("Cycle detected"));
    }
}
