package org.proviso.review;

import java.time.Instant;
import org.proviso.core.UserName;
import org.proviso.core.VoterId;

/** Who settled whose envelope it is, when, and on what ground; empty where the voter is the one the match named. */
public record VoterChoice(VoterId voterId, UserName by, Instant at, String ground) {}
