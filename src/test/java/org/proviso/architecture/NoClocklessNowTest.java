package org.proviso.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitAccessTarget;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.time.Clock;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Nobody asks the machine for the time or for chance: both are handed in, so that a run can be repeated. */
class NoClocklessNowTest {

    private static final String STOPWATCH = "java.lang.System.nanoTime";

    /** The one class that hands the machine's clock to all others. */
    private static final String CLOCKMAKER = ".election.clock.ServerClock";

    private static final Set<String> NEVER = Set.of(
            "java.lang.System.currentTimeMillis",
            "java.util.Calendar.getInstance",
            "java.lang.Math.random",
            "java.util.concurrent.ThreadLocalRandom.current");

    private static final Set<String> NEVER_BARE = Set.of(
            "java.util.Date.<init>",
            "java.util.GregorianCalendar.<init>",
            "java.util.Random.<init>",
            "java.util.SplittableRandom.<init>");

    private static ArchRule noHiddenTimeOrChance(String root) {
        return classes().should(new ArchCondition<>("take time and chance from what is handed in") {
            @Override
            public void check(JavaClass item, ConditionEvents events) {
                for (JavaAccess<?> access : item.getAccessesFromSelf()) {
                    if (access.getTarget() instanceof CodeUnitAccessTarget target && isHidden(root, item, target)) {
                        events.add(SimpleConditionEvent.violated(access, access.getDescription()));
                    }
                }
            }
        });
    }

    private static boolean isHidden(String root, JavaClass caller, CodeUnitAccessTarget target) {
        String name = target.getOwner().getName() + "." + target.getName();
        if (name.equals("java.time.Clock.systemUTC") && caller.getName().equals(root + CLOCKMAKER)) {
            return false;
        }
        if (name.equals(STOPWATCH)) {
            return !caller.getPackageName().startsWith(root + ".cli");
        }
        boolean bare = target.getRawParameterTypes().isEmpty();
        return NEVER.contains(name) || bare && NEVER_BARE.contains(name) || readsTheWallClock(target);
    }

    private static boolean readsTheWallClock(CodeUnitAccessTarget target) {
        boolean time = target.getOwner().getPackageName().startsWith("java.time");
        boolean clockGiven = target.getRawParameterTypes().stream().anyMatch(type -> type.isEquivalentTo(Clock.class));
        boolean ownClock = target.getOwner().isEquivalentTo(Clock.class)
                && (target.getName().startsWith("system") || target.getName().startsWith("tick"));
        return time && !clockGiven && (target.getName().equals("now") || ownClock);
    }

    @Test
    void no_class_reads_the_machines_clock_or_rolls_unseeded_dice() {
        noHiddenTimeOrChance(ClassesOf.PROVISO).check(ClassesOf.program());
    }

    @Test
    void each_way_to_the_clock_and_to_chance_is_found_out() {
        List<String> found = noHiddenTimeOrChance(ClassesOf.fixtureRoot("clock"))
                .evaluate(ClassesOf.fixture("clock"))
                .getFailureReport()
                .getDetails();
        for (String call : List.of(
                "LocalDate.now()",
                "LocalDateTime.now()",
                "Instant.now()",
                "ZonedDateTime.now(java.time.ZoneId)",
                "System.currentTimeMillis()",
                "System.nanoTime()",
                "Date.<init>()",
                "Clock.systemUTC()",
                "Clock.system(java.time.ZoneId)",
                "Random.<init>()",
                "Math.random()")) {
            assertThat(found).as(call).anyMatch(line -> line.contains(call));
        }
        assertThat(found).hasSize(11);
    }

    @Test
    void a_clock_or_a_seed_handed_in_and_the_shells_stopwatch_pass() {
        assertThat(noHiddenTimeOrChance(ClassesOf.fixtureRoot("clock"))
                        .evaluate(ClassesOf.fixture("clock"))
                        .getFailureReport()
                        .getDetails())
                .noneMatch(line -> line.contains("HandedIn") || line.contains("Stopwatch"));
    }
}
