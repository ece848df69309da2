package org.proviso.access;

import static org.proviso.access.Role.ADMINISTRATOR;
import static org.proviso.access.Role.DECIDER;
import static org.proviso.access.Role.INTAKE;
import static org.proviso.access.Role.OBSERVER;
import static org.proviso.access.Role.PUBLIC;
import static org.proviso.access.Role.RELEASE_TEAM;
import static org.proviso.access.Role.REVIEWER;
import static org.proviso.access.Role.SUPERVISOR;

import java.util.Locale;
import java.util.Set;

/** Something that only some may do, with the roles that may. Every service asks before it acts. */
public enum Permission {
    RECEIVE_BAGS(INTAKE, REVIEWER, SUPERVISOR),
    KEY_ENVELOPES(INTAKE, REVIEWER, SUPERVISOR),
    RECORD_CURE_EVIDENCE(INTAKE, REVIEWER, SUPERVISOR),
    PRINT_CURE_LETTERS(INTAKE, REVIEWER, SUPERVISOR),

    CONFIRM_LINK(REVIEWER, SUPERVISOR),
    ANSWER_QUESTIONS(REVIEWER, SUPERVISOR),
    SEARCH(REVIEWER, SUPERVISOR),
    PROPOSE(REVIEWER, SUPERVISOR),
    /** Never of one's own act: {@link AccessService#demandSomebodyElse}. */
    SECOND_REVIEW(REVIEWER, SUPERVISOR),

    /** The case as laid before the deciding body; a reviewer sees a case by working on it. */
    SEE_WHOLE_CASE(DECIDER),
    PULL_OUT(DECIDER),
    VOTE(DECIDER),
    DECIDE(DECIDER),

    OPEN_ENVELOPES(RELEASE_TEAM),
    REMAKE_BALLOTS(RELEASE_TEAM),
    HAND_OFF(RELEASE_TEAM),

    LOAD_FILES(SUPERVISOR),
    SET_GATES(SUPERVISOR),
    RECORD_ORDERS(SUPERVISOR),
    SIGN_RULINGS(SUPERVISOR),
    PUT_RULES_IN_FORCE(SUPERVISOR),
    PRINT_OUTCOME_LETTERS(SUPERVISOR),
    CLOSE_ELECTION(SUPERVISOR),

    MANAGE_USERS(ADMINISTRATOR),

    READ_FIGURES(INTAKE, REVIEWER, DECIDER, RELEASE_TEAM, SUPERVISOR, ADMINISTRATOR, OBSERVER),
    READ_LEDGER(INTAKE, REVIEWER, DECIDER, RELEASE_TEAM, SUPERVISOR, ADMINISTRATOR, OBSERVER),
    READ_REDACTED_CASES(INTAKE, REVIEWER, DECIDER, RELEASE_TEAM, SUPERVISOR, ADMINISTRATOR, OBSERVER),

    LOOK_UP_OWN_ENVELOPE(PUBLIC);

    private final Set<Role> roles;

    Permission(Role... roles) {
        this.roles = Set.of(roles);
    }

    /** Whether one of these roles is enough. */
    public boolean isOpenTo(Set<Role> held) {
        return roles.stream().anyMatch(held::contains);
    }

    /** As it reads after "may not": {@code record cure evidence}. */
    public String words() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
