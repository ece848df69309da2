package org.proviso.setup.people;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.List;
import java.util.stream.Collectors;
import org.proviso.access.OfficeUser;
import org.proviso.access.Role;
import org.proviso.access.UserService;
import org.proviso.core.act.ActResult;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.MessageLine;
import org.proviso.ui.PageHead;
import org.proviso.ui.PlainTable;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ActDialog;
import org.proviso.ui.frame.OfficeFrame;

/** Accounts and their roles, an administrator's work. */
@Route(value = "set-up/users", layout = OfficeFrame.class)
@PageTitle("Accounts and roles · Proviso")
@PermitAll
public final class UsersView extends Composite<Div> {

    private final transient UserService users;
    private final Div list = new Div();

    UsersView(UserService users) {
        this.users = users;
        getContent().addClassName("sheet");
        getContent()
                .add(
                        new PageHead(
                                        "Accounts and roles",
                                        "Administrators take no part in any case. Closing an account does not change"
                                                + " what its user did.")
                                .beside(
                                        Links.link("Back to Setup", "set-up"),
                                        new ActButton("Create account", "N")
                                                .first()
                                                .does(() -> new AccountSheet(users, this::show).ask())),
                        list);
        show();
    }

    private void show() {
        list.removeAll();
        list.add(table(), DownloadLinks.of("Accounts", null, this::table));
    }

    private PlainTable table() {
        PlainTable table = new PlainTable("Accounts", "Name", "User name", "Party", "Roles", "State", "");
        users.all().forEach(user -> table.row(row(user)));
        return table;
    }

    private List<Component> row(OfficeUser user) {
        Div acts = new Div(
                act("Change name or party", user, () -> new PersonSheet(users, user, this::show).ask()),
                act("Change roles", user, () -> new RolesSheet(users, user, this::show).ask()),
                act(user.enabled() ? "Close account" : "Reopen account", user, () -> enable(user)),
                act("Reset password", user, () -> reset(user)));
        acts.addClassName("acts");
        return List.of(
                new Span(user.fullName()),
                new Span(user.userName().value()),
                new Span(user.party()),
                new Span(roles(user)),
                new Span(state(user)),
                acts);
    }

    private static ActButton act(String words, OfficeUser user, Runnable act) {
        ActButton button = new ActButton(words).quiet().does(act);
        button.setAriaLabel(words + ": " + user.fullName());
        return button;
    }

    static String words(Role role) {
        return role.code().replace('_', ' ');
    }

    private static String roles(OfficeUser user) {
        return user.roles().stream().sorted().map(UsersView::words).collect(Collectors.joining(", "));
    }

    private static String state(OfficeUser user) {
        if (!user.enabled()) {
            return "closed";
        }
        return user.passwordIsOneTime() ? "open, one-time password" : "open";
    }

    private void enable(OfficeUser user) {
        if (users.enable(user.userName(), user.version(), !user.enabled())
                instanceof ActResult.Refused<OfficeUser> refused) {
            MessageLine.refused(refused.words());
        } else {
            MessageLine.done(user.fullName() + "'s account was " + (user.enabled() ? "closed." : "reopened."));
        }
        show();
    }

    private void reset(OfficeUser user) {
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog("Reset password for " + user.fullName(), "Reset password", () -> {
            users.resetPassword(user.userName()).ifAccepted().ifPresent(password -> tell(user.fullName(), password));
            show();
            return true;
        });
        sheet[0].with("The old password stops working at once.").open();
    }

    /** Shows a one-time password once. */
    static void tell(String name, String password) {
        Span shown = new Span(password);
        shown.addClassName("num");
        new ActDialog("One-time password for " + name, "Done", () -> true)
                .with(
                        new Paragraph(
                                "It is shown only once and is not stored. The user must change it at first sign-in."),
                        shown)
                .open();
    }
}
