package org.proviso.canvass;

import java.util.EnumSet;
import java.util.Set;
import org.proviso.core.Code;

/**
 * A number that a voting location, or the county as a whole, has of its provisional envelopes. Each reads as what was
 * done with how many: {@code sent back 11 envelopes}.
 */
public enum Figure implements Code {
    SUPPLIED("was given", "envelope"),
    ISSUED("issued", "envelope"),
    SPOILED("spoiled", "envelope"),
    UNUSED("brought back unused", "envelope"),
    MISSING("reported missing", "envelope"),
    SCANNED_IN_ERROR("scanned in error", "ballot"),
    CHANGED_SEALS("had", "changed bag seal"),
    LOOSE_BALLOTS("sent", "loose ballot"),
    SENT_BACK("sent back", "envelope"),
    RECEIVED("logged", "envelope"),
    UNACCOUNTED("explained the absence of", "envelope"),
    COUNTED("counted", "envelope"),
    COUNTED_IN_PART("counted in part", "envelope"),
    REJECTED("rejected", "envelope"),
    SENT_ON("sent on", "envelope"),
    ENDED("ended without a decision", "envelope"),
    PENDING("left undecided", "envelope"),
    HELD_BY_LAW("must hold for a late identification or a court", "envelope"),
    BY_ISSUE_REASON("listed by why it was issued", "envelope"),
    BY_STATE("listed by the state of its case", "envelope"),
    BY_LOCATION("listed by voting location", "envelope"),
    BY_REJECTION_REASON("listed by the main reason of rejection", "envelope"),
    EMPTY("found empty", "envelope"),
    HANDED_OFF("handed off", "ballot"),
    TABULATED("tabulated", "ballot"),
    REMADE("remade", "ballot"),
    CREDITED("gave credit for voting to", "voter"),
    CURE_DEFECTS("found a defect the voter may cure in", "envelope"),
    ASK_NOTICES("has a notice to cure for", "envelope"),
    OUTCOME_NOTICES("has a notice of the outcome for", "envelope");

    private static final Set<Figure> NOTED = EnumSet.of(
            SUPPLIED,
            ISSUED,
            SPOILED,
            UNUSED,
            MISSING,
            SCANNED_IN_ERROR,
            SENT_BACK,
            UNACCOUNTED,
            HELD_BY_LAW,
            TABULATED,
            CREDITED);

    private final String done;
    private final String noun;

    Figure(String done, String noun) {
        this.done = done;
        this.noun = noun;
    }

    /** Whether only a person can supply it; all others are counted. */
    public boolean isNoted() {
        return NOTED.contains(this);
    }

    /** {@code sent back 11 envelopes}, {@code issued 1 envelope}. */
    public String words(int number) {
        return done + " " + number + " " + noun + (number == 1 ? "" : "s");
    }

    /** {@code logged 10}. */
    String shortWords(int number) {
        return done + " " + number;
    }

    /** What the office or a voting location did with them: {@code sent back}. */
    public String done() {
        return done;
    }

    /** How a number that nobody has noted is asked for. */
    public String asked() {
        return "how many " + noun + "s it " + done;
    }
}
