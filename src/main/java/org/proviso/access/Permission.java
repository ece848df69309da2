package org.proviso.access;

import static org.proviso.access.Role.ADMINISTRATOR;
import static org.proviso.access.Role.DECIDER;
import static org.proviso.access.Role.INTAKE;
import static org.proviso.access.Role.OBSERVER;
import static org.proviso.access.Role.PUBLIC;
import static org.proviso.access.Role.RELEASE_TEAM;
import static org.proviso.access.Role.REVIEWER;
import static org.proviso.access.Role.SECRETARY;
import static org.proviso.access.Role.SUPERVISOR;

import java.util.Set;

/** Something that only some may do, with the roles that may. Every service asks before it acts. */
public enum Permission {
    RECEIVE_BAGS("receiving envelopes", INTAKE, REVIEWER, SUPERVISOR),
    KEY_ENVELOPES("keying envelopes", INTAKE, REVIEWER, SUPERVISOR),
    RECORD_CURE_EVIDENCE("recording cure evidence", INTAKE, REVIEWER, SUPERVISOR),
    PRINT_CURE_LETTERS("sending cure letters", INTAKE, REVIEWER, SUPERVISOR),

    CONFIRM_LINK("confirming links", REVIEWER, SUPERVISOR),
    ANSWER_QUESTIONS("answering questions", REVIEWER, SUPERVISOR),
    SEARCH("searching for voters", REVIEWER, SUPERVISOR),
    PROPOSE("proposing outcomes", REVIEWER, SUPERVISOR),
    TELL_MAIL_DESK("the list for the mail desk", REVIEWER, SUPERVISOR),
    /** Never of one's own act: {@link AccessService#demandSomebodyElse}. */
    SECOND_REVIEW("second review", REVIEWER, SUPERVISOR),

    /** For everybody who has a case before them. */
    WRITE_NOTES("writing notes on cases", REVIEWER, DECIDER, SUPERVISOR),

    /** The case as laid before the deciding body; a reviewer sees a case by working on it. */
    SEE_WHOLE_CASE("viewing full cases", DECIDER),
    PULL_OUT("pulling envelopes out of a group", DECIDER),
    VOTE("voting on the board", DECIDER),
    DECIDE("deciding cases", DECIDER),
    /** Attendance, motions, seconds and votes as members say them aloud. */
    KEEP_RECORD("keeping the record of a session", DECIDER, SECRETARY),
    REOPEN_ENDED("reopening cases that were sent on or closed without a decision", DECIDER, SUPERVISOR),
    FOLLOW_UP("following up decisions that a newer record contradicts", DECIDER, SUPERVISOR),

    SEE_RELEASE("viewing envelopes to open and batches", RELEASE_TEAM, SUPERVISOR),
    OPEN_ENVELOPES("opening envelopes", RELEASE_TEAM),
    REMAKE_BALLOTS("remaking ballots", RELEASE_TEAM),
    HAND_OFF("handing off ballots", RELEASE_TEAM),

    LOAD_FILES("loading files", SUPERVISOR),
    SET_GATES("recording when steps may begin", SUPERVISOR),
    RECORD_ORDERS("recording court orders", SUPERVISOR),
    RELEASE_CASES("releasing cases that others have", SUPERVISOR),
    SIGN_RULINGS("recording county rulings", SUPERVISOR),
    PUT_RULES_IN_FORCE("putting rule packs in force", SUPERVISOR),
    PRINT_OUTCOME_LETTERS("sending outcome letters", SUPERVISOR),
    CLOSE_ELECTION("closing the election", SUPERVISOR),

    MANAGE_USERS("managing accounts", ADMINISTRATOR),

    READ_FIGURES(
            "viewing figures", INTAKE, REVIEWER, DECIDER, SECRETARY, RELEASE_TEAM, SUPERVISOR, ADMINISTRATOR, OBSERVER),
    READ_LEDGER(
            "viewing the ledger",
            INTAKE,
            REVIEWER,
            DECIDER,
            SECRETARY,
            RELEASE_TEAM,
            SUPERVISOR,
            ADMINISTRATOR,
            OBSERVER),
    READ_REDACTED_CASES(
            "viewing redacted cases",
            INTAKE,
            REVIEWER,
            DECIDER,
            SECRETARY,
            RELEASE_TEAM,
            SUPERVISOR,
            ADMINISTRATOR,
            OBSERVER),

    LOOK_UP_OWN_ENVELOPE("looking up one's own envelope", PUBLIC);

    private final String words;
    private final Set<Role> roles;

    Permission(String words, Role... roles) {
        this.words = words;
        this.roles = Set.of(roles);
    }

    /** Whether one of these roles is enough. */
    public boolean isOpenTo(Set<Role> held) {
        return roles.stream().anyMatch(held::contains);
    }

    /** As it reads after "your role does not include": {@code recording cure evidence}. */
    public String words() {
        return words;
    }
}
