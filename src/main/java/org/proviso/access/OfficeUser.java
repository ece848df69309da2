package org.proviso.access;

import java.util.Set;
import org.proviso.core.UserName;
import org.proviso.ledger.Actor;

/**
 * A person who may sign in: the name they sign in with, the name and party they have, the pseudonym under which the
 * ledger knows them, and their roles. Until a one-time password is changed they may do nothing else.
 */
public record OfficeUser(
        UserName userName,
        String fullName,
        String party,
        Actor actor,
        Set<Role> roles,
        boolean passwordIsOneTime,
        boolean enabled,
        boolean demo,
        int version) {

    /** Whoever has not signed in. */
    public static final OfficeUser VISITOR = new OfficeUser(
            new UserName("(visitor)"), "", "", Actor.VISITOR, Set.of(Role.PUBLIC), false, true, false, 0);

    public boolean isVisitor() {
        return this.equals(VISITOR);
    }

    boolean has(Role role) {
        return roles.contains(role);
    }
}
