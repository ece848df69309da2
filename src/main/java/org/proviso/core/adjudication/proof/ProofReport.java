package org.proviso.core.adjudication.proof;

import java.util.List;
import org.proviso.core.rules.ResolvedRule;

/**
 * What the proof of a pack went through and found: how many fact tuples and combinations of answers, the promises
 * broken, warnings (none of them takes a vote), and what still needs a county ruling.
 */
public record ProofReport(
        String pack,
        String hash,
        int tuples,
        int classes,
        long combinations,
        List<Violation> violations,
        List<String> warnings,
        List<ResolvedRule> needRuling) {

    public boolean holds() {
        return violations.isEmpty();
    }
}
