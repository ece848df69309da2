package org.proviso.core.deciding;

import org.proviso.core.adjudication.judging.Assessment;

/** One case as it comes to the decider: what the rules say as it stands, the grounds offered, and who did what. */
public record CaseToDecide(Assessment settled, Grounds grounds, DecisionParticipants acts) {}
