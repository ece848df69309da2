package org.proviso.setup.first;

import java.util.Arrays;
import java.util.Optional;

/** A file of an election: what it is, who usually has it (common practice), and what happens without it. */
public enum NeededFile {
    CONTESTS(
            "contests.csv",
            "The contests and measures, each with its district.",
            "Ballot preparation",
            "The election cannot be loaded."),
    BALLOT_STYLES(
            "ballot-styles.csv",
            "Which contests are on each ballot style.",
            "Ballot preparation",
            "The election cannot be loaded."),
    PRECINCTS(
            "precincts.csv",
            "Each precinct with its ballot style and voting location.",
            "Ballot preparation",
            "The election cannot be loaded."),
    STREETS(
            "streets.csv",
            "Which precinct each range of house numbers is in.",
            "Voter registration",
            "The election cannot be loaded."),
    ROLL(
            "roll.csv",
            "The registration list: every voter, pending and cancelled too.",
            "Voter registration",
            "The election cannot be loaded."),
    MAIL_BALLOTS(
            "mail-ballots.csv",
            "Every mail ballot sent, and where it stands.",
            "The mail-ballot office",
            "The election cannot be loaded: a second ballot would not be seen."),
    CHECK_INS(
            "check-ins.csv",
            "Who checked in, where and when.",
            "Poll books",
            "The election cannot be loaded: a second ballot would not be seen."),
    VOTED_ELSEWHERE(
            "voted-elsewhere.csv",
            "Who voted in another county.",
            "The state",
            "The list is empty until it is loaded as a newer list."),
    TRANSMITTALS(
            "transmittals.csv",
            "Each voting location's return: seals and counts.",
            "Voting locations",
            "No return yet. Record or load returns later.") {
        @Override
        public boolean mayComeLater() {
            return true;
        }
    },
    ENVELOPES(
            "envelopes.csv",
            "The provisional envelopes with their affirmations.",
            "Whoever scans or keys them",
            "No envelope yet. Receive or load envelopes later.") {
        @Override
        public boolean mayComeLater() {
            return true;
        }
    };

    private final String file;
    private final String what;
    private final String whoHasIt;
    private final String without;

    NeededFile(String file, String what, String whoHasIt, String without) {
        this.file = file;
        this.what = what;
        this.whoHasIt = whoHasIt;
        this.without = without;
    }

    public static Optional<NeededFile> find(String file) {
        return Arrays.stream(values())
                .filter(needed -> needed.file.equals(file))
                .findFirst();
    }

    public String file() {
        return file;
    }

    public String what() {
        return what;
    }

    public String whoHasIt() {
        return whoHasIt;
    }

    public String without() {
        return without;
    }

    /** Whether the election is loaded with none of them where the file was not chosen. */
    public boolean mayComeLater() {
        return false;
    }

    /** Whether the election can be loaded without this file. */
    public boolean isNeeded() {
        return !mayComeLater() && this != VOTED_ELSEWHERE;
    }
}
