package org.proviso.core.adjudication;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.Ask;

/** Weighs what a voter brought: stamped in time or too late. */
final class Cures {

    private Cures() {}

    /** The finding as cured, or the first one where nothing was brought or no deadline can be told. */
    static Finding weigh(
            List<CureEvidence> cures,
            Ask ask,
            Optional<Deadline> deadline,
            Finding before,
            FactWord inTime,
            FactWord late) {
        Finding after = before;
        for (CureEvidence cure : cures) {
            if (cure.ask() != ask || deadline.isEmpty() || after.words().contains(inTime)) {
                continue;
            }
            List<Evidence> evidence = new ArrayList<>(after.evidence());
            evidence.add(cure.evidence());
            boolean passed = deadline.get().hasPassed(cure.receivedAt());
            after = new Finding(Set.of(passed ? late : inTime), evidence);
        }
        return after;
    }
}
