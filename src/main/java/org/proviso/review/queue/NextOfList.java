package org.proviso.review.queue;

import java.util.Optional;
import org.proviso.core.act.ActResult;
import org.proviso.review.EnvelopeCase;

/** The next case of a list, taken or why not, and where in the list it stood before it was taken. */
public record NextOfList(ActResult<EnvelopeCase> taken, Optional<QueuePosition> at) {}
