package org.proviso.access;

import java.util.Set;
import org.proviso.core.UserName;
import org.proviso.ledger.Actor;
import org.springframework.context.ApplicationContext;

/** Accounts of a running server with which a test can sign in through the form. */
public final class WebStaff {

    public static final String PASSWORD = "a password of tests";

    private WebStaff() {}

    /** Opens the account unless it is there. */
    public static void hire(ApplicationContext server, String name, Role... roles) {
        open(server, name, false, roles);
    }

    /** As {@link #hire}; the password holds for one sign-in. */
    public static void hireWithOneTimePassword(ApplicationContext server, String name, Role... roles) {
        open(server, name, true, roles);
    }

    private static void open(ApplicationContext server, String name, boolean oneTime, Role... roles) {
        UserStore users = server.getBean(UserStore.class);
        if (users.find(new UserName(name)).isEmpty()) {
            Actor actor = new Actor("staff-" + server.getBean(Passwords.class).pseudonymCode());
            users.insert(
                    new OfficeUser(new UserName(name), name, "", actor, Set.of(roles), oneTime, true, false, 0),
                    server.getBean(Passwords.class).hash(PASSWORD));
        }
    }
}
