package org.proviso.core.matching.index;

/**
 * The order in which an envelope's blocks are looked at. Whoever has its surname's sound and its date or last four, its date
 * and last four, its address or its license is found in the first stage. So what the voters of a later one can weigh at most
 * is known, and they need no look where one of the first weighs far more.
 */
public enum SearchStage {
    SAME,
    /** A date, last four or house number, and of the names one or its first letter. */
    NEAR,
    /** The surname's sound, the initial, and two parts of the date. */
    OTHER_DATE,
    /** Both names, no two parts of the date. */
    NAME_ONLY,
    /** Both names, and the roll has no date. */
    UNDATED,
    /** What an earlier stage would find if the surname had one spelling error, for envelopes without a good candidate yet. */
    RESPELLED
}
