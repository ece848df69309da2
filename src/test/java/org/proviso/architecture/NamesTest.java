package org.proviso.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.conditions.ArchConditions.be;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A type is named for what it is in the office, never with an ending that says nothing. */
class NamesTest {

    private static final List<String> EMPTY_ENDINGS =
            List.of("Impl", "Manager", "Helper", "Helpers", "Util", "Utils", "DTO", "Dto");

    private static final ArchRule SPEAKING_NAMES =
            noClasses().should(be(describe("named with an ending that says nothing", NamesTest::saysNothing)));

    private static boolean saysNothing(JavaClass item) {
        return EMPTY_ENDINGS.stream().anyMatch(item.getSimpleName()::endsWith);
    }

    @Test
    void no_type_has_an_ending_that_says_nothing() {
        SPEAKING_NAMES.check(ClassesOf.program());
    }

    @Test
    void an_ending_that_says_nothing_is_found_out_in_a_nested_type_too() {
        assertThat(SPEAKING_NAMES
                        .evaluate(ClassesOf.fixture("names"))
                        .getFailureReport()
                        .getDetails())
                .hasSize(2)
                .anyMatch(line -> line.contains("BallotManager"))
                .anyMatch(line -> line.contains("CountDTO"));
    }
}
