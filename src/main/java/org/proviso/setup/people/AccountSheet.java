package org.proviso.setup.people;

import java.util.Set;
import org.proviso.access.CreateUser;
import org.proviso.access.UserService;
import org.proviso.core.act.ActResult;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActDialog;
import org.proviso.ui.field.TypedField;

/** Asks for a new account, and shows its one-time password once. */
final class AccountSheet {

    private final UserService users;
    private final TypedField name = new TypedField("full-name", "Name");
    private final TypedField userName = new TypedField("user-name", "User name").like("h.mercer");
    private final TypedField party = new TypedField("party", "Party");
    private final RoleCheckboxes roles = new RoleCheckboxes(Set.of());
    private final ActDialog sheet;

    AccountSheet(UserService users, Runnable after) {
        this.users = users;
        sheet = new ActDialog("Create account", "Create account", () -> open(after));
    }

    void ask() {
        sheet.with(name, userName, party, roles).open();
        name.focus();
    }

    private boolean open(Runnable after) {
        name.problem(name.text().isEmpty() ? "Required." : "");
        boolean fits = userName.text().matches("[a-z][a-z0-9.-]{1,59}");
        userName.problem(fits ? "" : "Use lowercase letters, digits, dots and hyphens, starting with a letter.");
        if (name.hasProblem() || userName.hasProblem()) {
            return false;
        }
        if (roles.getValue().isEmpty()) {
            return ActDialog.refuse(roles, "Select at least one role.");
        }
        ActResult<String> made =
                users.create(new CreateUser(userName.text(), name.text(), party.text(), roles.getValue()));
        if (made instanceof ActResult.Refused<String> refused) {
            return sheet.refuse(refused.words());
        }
        after.run();
        MessageLine.done("Account created for " + name.text() + ".");
        made.ifAccepted().ifPresent(password -> UsersView.tell(name.text(), password));
        return true;
    }
}
