package org.proviso.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** The database is spoken to in one kind of class, so that all SQL of a feature can be read in one place. */
class SqlOnlyInStoresTest {

    /** The one client through which the stores speak, and the one manager of their transactions; they know no table. */
    private static final Set<String> OF_ALL_STORES =
            Set.of(ClassesOf.PROVISO + ".ledger.statement", ClassesOf.PROVISO + ".ledger.transaction");

    private static final ArchRule STORES_ONLY = noClasses()
            .that(describe("are not stores", SqlOnlyInStoresTest::isNoStore))
            .should()
            .dependOnClassesThat(resideInAnyPackage("java.sql..", "javax.sql..", "org.springframework.jdbc.."));

    private static boolean isNoStore(JavaClass item) {
        String outermost = item.getName().split("\\$")[0];
        return !outermost.endsWith("Store") && !OF_ALL_STORES.contains(item.getPackageName());
    }

    @Test
    void only_stores_speak_to_the_database() {
        STORES_ONLY.check(ClassesOf.program());
    }

    @Test
    void a_form_that_speaks_to_the_database_is_found_out_and_a_store_is_not() {
        assertThat(STORES_ONLY
                        .evaluate(ClassesOf.fixture("sql"))
                        .getFailureReport()
                        .getDetails())
                .anyMatch(line -> line.contains("BallotForm") && line.contains("java.sql.Connection"))
                .anyMatch(line -> line.contains("BallotForm") && line.contains("org.springframework.jdbc"))
                .noneMatch(line -> line.contains("BallotStore"));
    }
}
