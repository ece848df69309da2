package org.proviso.access;

import java.util.Set;
import org.proviso.core.UserName;
import org.proviso.database.TestOffice;
import org.proviso.ledger.Actor;
import org.proviso.ledger.LedgerService;
import org.springframework.context.ApplicationEventPublisher;
import org.springframework.security.authentication.TestingAuthenticationToken;
import org.springframework.security.core.context.SecurityContextHolder;

/** People for tests of any room: accounts that can be used at once, and who of them is signed in on this thread. */
public final class Staff {

    private static final String PASSWORD_HASH = "none, nobody signs in with it";

    private Staff() {}

    /** Opens an account with these roles; the name is its user name too. */
    public static void hire(TestOffice office, String name, Role... roles) {
        int number = office.the(UserStore.class).all().size();
        Actor actor = new Actor("staff-" + String.format("TEST%02d", number));
        OfficeUser user = new OfficeUser(new UserName(name), name, "", actor, Set.of(roles), false, true, false, 0);
        office.inTransaction(() -> {
            office.the(UserStore.class).insert(user, PASSWORD_HASH);
            return user;
        });
    }

    /** Opens the accounts that a demonstration opens at its first start, for an office that is prepared before it. */
    public static void hireForDemo(TestOffice office) {
        office.the(FirstAccounts.class).letSomebodyIn();
    }

    public static void signIn(String name) {
        SecurityContextHolder.getContext().setAuthentication(new TestingAuthenticationToken(name, "", "ANY"));
    }

    public static void signOut() {
        SecurityContextHolder.clearContext();
    }

    /** The door for acts, with these rooms behind it instead of the office's own. */
    public static ActDoor door(TestOffice office, ApplicationEventPublisher rooms) {
        return new ActDoor(
                office.the(AccessService.class), office.the(LedgerService.class), rooms, office.the(StaffList.class));
    }
}
