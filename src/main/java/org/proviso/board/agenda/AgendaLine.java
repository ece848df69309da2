package org.proviso.board.agenda;

import org.jspecify.annotations.Nullable;
import org.proviso.board.AgendaItem;
import org.proviso.board.ProposalForDecision;
import org.proviso.review.EnvelopeCase;

/** A line of the agenda as a member reads it: the item, the case as it is now, and what is proposed now (or null). */
public record AgendaLine(
        AgendaItem item, EnvelopeCase now, @Nullable ProposalForDecision proposed) {}
