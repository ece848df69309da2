package org.proviso.setup.people;

import org.proviso.access.OfficeUser;
import org.proviso.access.UserService;
import org.proviso.core.act.ActResult;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActDialog;

/** Asks for a person's new roles. */
final class RolesSheet {

    private final UserService users;
    private final OfficeUser user;
    private final RoleCheckboxes roles;
    private final ActDialog sheet;

    RolesSheet(UserService users, OfficeUser user, Runnable after) {
        this.users = users;
        this.user = user;
        roles = new RoleCheckboxes(user.roles());
        sheet = new ActDialog("Roles of " + user.fullName(), "Save roles", () -> change(after));
    }

    void ask() {
        sheet.with("A role you remove ends at once, even if the person is signed in.")
                .with(roles)
                .open();
    }

    private boolean change(Runnable after) {
        if (roles.getValue().isEmpty()) {
            return ActDialog.refuse(roles, "Select at least one role, or close the account.");
        }
        if (users.changeRoles(user.userName(), user.version(), roles.getValue())
                instanceof ActResult.Refused<OfficeUser> refused) {
            return sheet.refuse(refused.words());
        }
        MessageLine.done("Roles changed for " + user.fullName() + ".");
        after.run();
        return true;
    }
}
