package org.proviso.election;

import org.proviso.core.ElectionId;

/** The rules in force for an election are others than before; heard in the transaction that changes them. */
public record RulesChanged(ElectionId electionId, String because) {}
