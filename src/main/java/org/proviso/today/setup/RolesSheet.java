package org.proviso.today.setup;

import org.proviso.access.OfficeUser;
import org.proviso.access.UserRuleException;
import org.proviso.access.UserService;
import org.proviso.ui.Asking;
import org.proviso.ui.Said;

/** Asks for a person's new roles. */
final class RolesSheet {

    private final UserService users;
    private final OfficeUser user;
    private final RoleTicks roles;
    private final Asking sheet;

    RolesSheet(UserService users, OfficeUser user, Runnable after) {
        this.users = users;
        this.user = user;
        roles = new RoleTicks(user.roles());
        sheet = new Asking("Roles of " + user.fullName(), "Save roles", () -> change(after));
    }

    void ask() {
        sheet.with("A role you remove ends at once, even if the person is signed in.")
                .with(roles)
                .open();
    }

    private boolean change(Runnable after) {
        if (roles.getValue().isEmpty()) {
            return sheet.refuse("Select at least one role, or close the account.");
        }
        try {
            users.changeRoles(user.userName(), user.version(), roles.getValue());
        } catch (UserRuleException e) {
            return sheet.refuse(String.valueOf(e.getMessage()));
        }
        Said.done("Roles changed for " + user.fullName() + ".");
        after.run();
        return true;
    }
}
