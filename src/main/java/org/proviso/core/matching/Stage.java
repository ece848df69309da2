package org.proviso.core.matching;

/**
 * The order in which an envelope's blocks are looked at. Whoever shares the date or the last four with it, and a name or
 * its first letter, lives at its address or has its license is found in the first stage; so what the voters of a later one
 * can weigh at most is known, and they need no look where one of the first weighs far more.
 */
enum Stage {
    NEAR,
    /** The surname's sound, the initial, and two parts of the date. */
    OTHER_DATE,
    /** Both names, no two parts of the date. */
    NAME_ONLY,
    /** Both names, and the roll has no date. */
    UNDATED
}
