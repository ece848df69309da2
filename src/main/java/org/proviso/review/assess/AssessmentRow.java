package org.proviso.review.assess;

import java.time.LocalDateTime;
import java.util.List;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.rules.Reason;

/** What was assessed last of a case, as lists show it: as it stands, its outlook, and as of when (county's clock). */
public record AssessmentRow(
        EnvelopeKey key,
        int number,
        LocalDateTime asOf,
        Recommendation recommendation,
        List<Reason> reasons,
        boolean heldApart,
        Recommendation outlook,
        List<Reason> outlookReasons) {}
