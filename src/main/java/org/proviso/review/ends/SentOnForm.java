package org.proviso.review.ends;

import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Election;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.rules.Reason;

/**
 * The form that goes with an envelope to another county: from which office, which envelope, to which county (empty where
 * nobody wrote it down), what was found and where the law says so, and who proposed and confirmed it and when (county
 * time). It has nothing of the voter, whose name is on the envelope, and nothing of any other one.
 */
public record SentOnForm(
        Election election,
        EnvelopeNumber envelopeNo,
        String toCounty,
        List<Reason> found,
        String legalReference,
        String proposedBy,
        String confirmedBy,
        @Nullable LocalDateTime confirmedAt) {}
