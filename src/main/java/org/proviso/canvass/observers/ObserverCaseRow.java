package org.proviso.canvass.observers;

import java.util.Optional;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.review.CaseState;

/** One envelope in the observers' list: by its number, where it was cast, where its case stands, how it was decided. */
public record ObserverCaseRow(
        EnvelopeNumber envelopeNo,
        String votingLocation,
        boolean extendedHours,
        CaseState state,
        Optional<DecisionOutcome> decided) {}
