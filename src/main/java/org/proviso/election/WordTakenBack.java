package org.proviso.election;

import org.proviso.core.UserName;

/** The word that all other ballots are counted was taken back: for which time, by whom and why. */
public record WordTakenBack(int number, UserName by, String because) {}
