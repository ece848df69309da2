package org.proviso.setup.people;

import org.proviso.access.ChangePerson;
import org.proviso.access.OfficeUser;
import org.proviso.access.UserService;
import org.proviso.core.act.ActResult;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActDialog;
import org.proviso.ui.field.TypedField;

/** Asks for the name and party that a person has now. */
final class PersonSheet {

    private final UserService users;
    private final OfficeUser user;
    private final TypedField name = new TypedField("new-name", "Name");
    private final TypedField party = new TypedField("new-party", "Party");
    private final ActDialog sheet;

    PersonSheet(UserService users, OfficeUser user, Runnable after) {
        this.users = users;
        this.user = user;
        name.text(user.fullName());
        party.text(user.party());
        sheet = new ActDialog("Name and party of " + user.fullName(), "Save name and party", () -> change(after));
    }

    void ask() {
        sheet.with("The new name stands wherever this person is named, also beside what they did before.")
                .with(name, party)
                .open();
        name.focus();
    }

    private boolean change(Runnable after) {
        name.problem(name.text().isBlank() ? "Required." : "");
        if (name.hasProblem()) {
            return false;
        }
        if (users.changePerson(new ChangePerson(user.userName().value(), user.version(), name.text(), party.text()))
                instanceof ActResult.Refused<OfficeUser> refused) {
            return sheet.refuse(refused.words());
        }
        MessageLine.done("Name and party of " + name.text() + " saved.");
        after.run();
        return true;
    }
}
