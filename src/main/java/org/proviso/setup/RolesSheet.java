package org.proviso.setup;

import org.proviso.access.OfficeUser;
import org.proviso.access.UserRuleException;
import org.proviso.access.UserService;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActDialog;

/** Asks which roles somebody has from now on. */
final class RolesSheet {

    private final UserService users;
    private final OfficeUser user;
    private final RoleCheckboxes roles;
    private final ActDialog sheet;

    RolesSheet(UserService users, OfficeUser user, Runnable after) {
        this.users = users;
        this.user = user;
        roles = new RoleCheckboxes(user.roles());
        sheet = new ActDialog("Roles of " + user.fullName(), "Give these roles", () -> change(after));
    }

    void ask() {
        sheet.with("A role that is taken away is gone at once, also for whoever is signed in.")
                .with(roles)
                .open();
    }

    private boolean change(Runnable after) {
        if (roles.getValue().isEmpty()) {
            return sheet.refuse("Tick at least one role, or close the account.");
        }
        try {
            users.changeRoles(user.userName(), user.version(), roles.getValue());
        } catch (UserRuleException e) {
            return sheet.refuse(String.valueOf(e.getMessage()));
        }
        MessageLine.done(user.fullName() + " has other roles now.");
        after.run();
        return true;
    }
}
