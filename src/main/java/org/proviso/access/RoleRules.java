package org.proviso.access;

import java.util.Optional;
import java.util.Set;
import org.proviso.core.act.Refusal;

/** Which roles one person may hold together. */
final class RoleRules {

    private RoleRules() {}

    /** An administrator has no part in any case, a secretary no vote, and nobody is given the public's role. */
    static Optional<Refusal> broken(Set<Role> roles) {
        if (roles.contains(Role.PUBLIC)) {
            return Optional.of(wrong("The public's role is not given to anybody."));
        }
        if (roles.contains(Role.SECRETARY) && roles.contains(Role.DECIDER)) {
            return Optional.of(
                    wrong(
                            "A secretary keeps the record of a session and has no vote. Give one of the two to another account."));
        }
        return roles.contains(Role.ADMINISTRATOR) && roles.stream().anyMatch(Role::isCasework)
                ? Optional.of(wrong("An administrator has no part in any case. Give casework to another account."))
                : Optional.empty();
    }

    private static Refusal wrong(String words) {
        return Refusal.at("roles", Refusal.Why.ROLES_NOT_TOGETHER, words);
    }
}
