package org.proviso.election;

import org.proviso.core.ElectionId;

/**
 * The board's meeting, from which deadlines of this election count, was called or is at another time now; heard in the
 * transaction that moves it.
 */
public record BoardMeetingMoved(ElectionId electionId, String because) {}
