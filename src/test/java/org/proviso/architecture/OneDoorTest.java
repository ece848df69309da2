package org.proviso.architecture;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaCodeUnitReference;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.proviso.core.BetweenRooms;

/**
 * Acts go through one door, which alone writes to the ledger; cases are assessed anew by their door alone; and what is
 * internal to the house is out of every page's reach.
 */
class OneDoorTest {

    /** What belongs to an act that goes on already, or is done by the program itself, is handed to the door as an entry. */
    private static final Set<String> HAND_ENTRIES_TO_THE_DOOR = Set.of(
            "org.proviso.release.ReopenedInBatches",
            "org.proviso.access.FirstAccounts",
            "org.proviso.review.door.CaseDoor",
            "org.proviso.review.acts.HeldCaseService",
            "org.proviso.review.assess.SeenFindingLog",
            "org.proviso.review.file.ProtectedAddressLog",
            "org.proviso.review.news.CaseRecheck",
            "org.proviso.review.news.CorrectionListener",
            "org.proviso.review.news.DeadlineService",
            "org.proviso.review.news.NewerFileService",
            "org.proviso.review.news.ProgramRulesUpdate");

    /** The door of acts on cases, and the two ways in which news from outside reach a case. */
    private static final Set<String> ASSESS_ANEW = Set.of(
            "org.proviso.review.assess.AssessmentService",
            "org.proviso.review.door.CaseDoor",
            "org.proviso.review.news.CaseOpening",
            "org.proviso.review.news.CaseRecheck");

    private static final ArchRule PAGES_STAY_OUTSIDE = noClasses()
            .that(describe("are pages", Pages::isPage))
            .should()
            .dependOnClassesThat(describe("are internal to the house", OneDoorTest::isInternal));

    private static boolean isInternal(JavaClass item) {
        return item.isAnnotatedWith(BetweenRooms.class)
                || (item.getSimpleName().endsWith("Store") && item.getName().startsWith(ClassesOf.PROVISO));
    }

    /** The outermost classes that call or refer to a method of that name, in a class of that simple name. */
    private static Set<String> callers(JavaClasses classes, String owner, Set<String> names) {
        Set<String> callers = new TreeSet<>();
        for (JavaClass item : classes) {
            Stream<String> calls = item.getMethodCallsFromSelf().stream()
                    .filter(call -> isOf(call, owner, names))
                    .map(call -> outermost(call.getOriginOwner()));
            Stream<String> references = item.getCodeUnitReferencesFromSelf().stream()
                    .filter(reference -> isOf(reference, owner, names))
                    .map(reference -> outermost(reference.getOriginOwner()));
            Stream.concat(calls, references).forEach(callers::add);
        }
        callers.removeIf(caller -> caller.endsWith("." + owner));
        return callers;
    }

    private static boolean isOf(JavaCall<?> call, String owner, Set<String> names) {
        return call.getTargetOwner().getSimpleName().equals(owner) && names.contains(call.getName());
    }

    private static boolean isOf(JavaCodeUnitReference<?> reference, String owner, Set<String> names) {
        return reference.getTargetOwner().getSimpleName().equals(owner) && names.contains(reference.getName());
    }

    private static String outermost(JavaClass item) {
        return item.getName().split("\\$")[0];
    }

    @Test
    void only_the_door_writes_to_the_ledger() {
        assertThat(callers(ClassesOf.program(), "LedgerService", Set.of("record")))
                .containsExactly("org.proviso.access.ActDoor");
    }

    @Test
    void only_what_belongs_to_an_act_that_goes_on_is_handed_to_the_door_as_an_entry() {
        assertThat(callers(ClassesOf.program(), "ActDoor", Set.of("record")))
                .containsExactlyInAnyOrderElementsOf(HAND_ENTRIES_TO_THE_DOOR);
    }

    @Test
    void only_the_door_of_the_cases_assesses_anew_and_announces() {
        assertThat(ASSESS_ANEW)
                .containsAll(callers(ClassesOf.program(), "AssessmentService", Set.of("renew", "announce")));
        assertThat(callers(ClassesOf.program(), "AssessmentService", Set.of("renew", "announce")))
                .contains("org.proviso.review.door.CaseDoor");
    }

    @Test
    void a_service_that_writes_to_the_ledger_itself_is_found_out() {
        assertThat(callers(ClassesOf.fixture("door"), "LedgerService", Set.of("record")))
                .containsExactly(ClassesOf.fixtureRoot("door") + ".desk.SideDoorService");
    }

    @Test
    void no_page_reaches_what_is_internal_to_the_house() {
        PAGES_STAY_OUTSIDE.check(ClassesOf.program());
    }

    @Test
    void a_page_that_reads_between_the_rooms_is_found_out() {
        assertThat(PAGES_STAY_OUTSIDE
                        .evaluate(ClassesOf.fixture("door"))
                        .getFailureReport()
                        .getDetails())
                .anyMatch(line -> line.contains("CuriousView") && line.contains("SideDoorService"))
                .noneMatch(line -> line.contains("PoliteView"));
    }
}
