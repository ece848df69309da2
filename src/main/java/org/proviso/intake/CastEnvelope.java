package org.proviso.intake;

import java.util.Set;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;

/** What the figures count of an envelope: its number, where and in which hours it was cast, and why it was provisional. */
public record CastEnvelope(
        EnvelopeNumber envelopeNo,
        Envelope.Source source,
        String votingLocation,
        boolean inExtendedHours,
        Set<String> issueReasons) {}
