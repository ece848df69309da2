package org.proviso.intake;

import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;

/** Envelopes came into the office as a file, after the election was loaded. Heard in the transaction that records it. */
public record EnvelopesFiled(ElectionId electionId, List<Envelope> envelopes) {}
