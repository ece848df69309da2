package org.proviso.access;

import java.util.Set;

/** Which roles one person may hold together. */
final class RoleRules {

    private RoleRules() {}

    /** An administrator has no part in any case, and nobody is given the public's role. */
    static void check(Set<Role> roles) {
        if (roles.contains(Role.PUBLIC)) {
            throw new UserRuleException("The public's role is not given to anybody.");
        }
        if (roles.contains(Role.ADMINISTRATOR) && roles.stream().anyMatch(Role::isCasework)) {
            throw new UserRuleException("An administrator has no part in any case: give casework to another account.");
        }
    }
}
