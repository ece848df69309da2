package org.proviso.architecture;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.Dependency;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rooms depend in one direction: each may use those before it in the order, never one after it. */
class RoomsTest {

    private static ArchRule oneDirection(Rooms rooms) {
        return classes().should(new ArchCondition<>("use only the rooms before their own") {
            @Override
            public void check(JavaClass item, ConditionEvents events) {
                if (rooms.place(item) == Rooms.NOWHERE) {
                    events.add(SimpleConditionEvent.violated(item, item.getName() + " lies in no known room"));
                }
                for (Dependency dependency : item.getDirectDependenciesFromSelf()) {
                    JavaClass target = dependency.getTargetClass().getBaseComponentType();
                    if (rooms.owns(target) && rooms.place(target) > rooms.place(item)) {
                        events.add(SimpleConditionEvent.violated(dependency, dependency.getDescription()));
                    }
                }
            }
        });
    }

    private static List<String> broken() {
        return oneDirection(new Rooms(ClassesOf.fixtureRoot("rooms")))
                .evaluate(ClassesOf.fixture("rooms"))
                .getFailureReport()
                .getDetails();
    }

    @Test
    void every_class_uses_only_the_rooms_before_its_own() {
        oneDirection(new Rooms(ClassesOf.PROVISO)).check(ClassesOf.program());
    }

    @Test
    void a_room_that_uses_a_later_one_is_found_out() {
        assertThat(broken()).anyMatch(line -> line.contains("files.LooksAhead") && line.contains("cli.Verb"));
    }

    @Test
    void a_part_of_the_core_that_uses_a_later_part_is_found_out() {
        assertThat(broken()).anyMatch(line -> line.contains("calendar.LooksAhead") && line.contains("facts.Fact"));
    }

    @Test
    void a_room_that_uses_the_programs_entry_is_found_out() {
        assertThat(broken()).anyMatch(line -> line.contains("cli.Verb") && line.contains("rooms.Entry"));
    }

    @Test
    void a_package_outside_the_order_is_found_out() {
        assertThat(broken()).anyMatch(line -> line.contains("attic.Forgotten lies in no known room"));
    }

    @Test
    void the_parts_of_adjudication_are_one_room_and_earlier_rooms_may_be_used() {
        assertThat(broken()).noneMatch(line -> line.contains("questions.Question"));
    }
}
