package org.proviso.core.adjudication;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.Envelope;
import org.proviso.core.Voter;

/**
 * One case seen three ways: as it stands (what the records say counts only over a settled link), over the presumed
 * link with what is open left open, and the outlook, where everything open comes out as the records suggest.
 */
public record CaseReport(
        Envelope envelope,
        Link link,
        Optional<Voter> voter,
        Assessment settled,
        Assessment presumed,
        Assessment outlook) {

    public Recommendation recommendation() {
        return settled.outcome().recommendation();
    }

    /** What is still to be done before anybody decides, the link first. */
    public List<String> stillOpen() {
        Set<String> open = new LinkedHashSet<>(presumed.stillOpen());
        if (link.isSettled()) {
            return settled.stillOpen();
        }
        return List.copyOf(open);
    }

    /** What the voter may still bring; due to be told at once, whatever the recommendation says. */
    public List<DueAsk> asks() {
        return outlook.asks();
    }
}
