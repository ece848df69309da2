package org.proviso.election;

/** The rules in force for an election are others than before; heard in the transaction that changes them. */
public record RulesChanged(String electionId, String because) {}
