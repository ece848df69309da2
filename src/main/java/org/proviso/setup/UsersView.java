package org.proviso.setup;

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
import org.proviso.access.UserRuleException;
import org.proviso.access.UserService;
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
                                        "Who keeps accounts has no part in any case. What people did stays theirs when"
                                                + " an account is closed.")
                                .beside(
                                        Links.link("To Set-up", "set-up"),
                                        new ActButton("New account", "N")
                                                .first()
                                                .does(() -> new AccountSheet(users, this::show).ask())),
                        list);
        show();
    }

    private void show() {
        list.removeAll();
        PlainTable table = new PlainTable("Accounts", "Name", "Signs in as", "Party", "Roles", "State", "");
        users.all().forEach(user -> table.row(row(user)));
        list.add(table);
    }

    private List<Component> row(OfficeUser user) {
        Div acts = new Div(
                act("Roles", user, () -> new RolesSheet(users, user, this::show).ask()),
                act(user.enabled() ? "Close" : "Open again", user, () -> enable(user)),
                act("New password", user, () -> reset(user)));
        acts.addClassName("acts");
        return List.of(
                new Span(user.fullName()),
                new Span(user.userName()),
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
        return user.passwordIsOneTime() ? "open; has a one-time password" : "open";
    }

    private void enable(OfficeUser user) {
        try {
            users.enable(user.userName(), user.version(), !user.enabled());
            MessageLine.done(user.fullName() + "'s account is " + (user.enabled() ? "closed." : "open again."));
        } catch (UserRuleException e) {
            MessageLine.refused(String.valueOf(e.getMessage()));
        }
        show();
    }

    private void reset(OfficeUser user) {
        ActDialog[] sheet = new ActDialog[1];
        sheet[0] = new ActDialog("A new password for " + user.fullName(), "Give a new one", () -> {
            tell(user.fullName(), users.resetPassword(user.userName()));
            show();
            return true;
        });
        sheet[0].with("The old password stops working at once.").open();
    }

    /** Shows a one-time password, this once. */
    static void tell(String name, String password) {
        Span shown = new Span(password);
        shown.addClassName("num");
        new ActDialog("The one-time password of " + name, "I have passed it on", () -> true)
                .with(
                        new Paragraph(
                                "It is shown this once and kept nowhere. At the first sign-in it must be changed."),
                        shown)
                .open();
    }
}
