package org.proviso.setup.people;

import com.vaadin.flow.component.checkbox.CheckboxGroup;
import java.util.Set;
import org.proviso.access.Role;

/** Check boxes for a person's roles. */
final class RoleCheckboxes extends CheckboxGroup<Role> {

    RoleCheckboxes(Set<Role> held) {
        super("Roles");
        setItems(
                Role.INTAKE,
                Role.REVIEWER,
                Role.DECIDER,
                Role.SECRETARY,
                Role.RELEASE_TEAM,
                Role.SUPERVISOR,
                Role.OBSERVER,
                Role.ADMINISTRATOR);
        setItemLabelGenerator(UsersView::words);
        setValue(held);
    }
}
