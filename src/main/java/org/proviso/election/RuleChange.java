package org.proviso.election;

import java.time.Instant;

/**
 * A rule pack put in force: from which hash to which, whether it was proved or counsel overrode the proof (then with
 * the counterexample), by which account and when.
 */
public record RuleChange(
        int changeNo,
        String packId,
        String packHash,
        String hashBefore,
        String acceptedBecause,
        String counterexample,
        String counsel,
        String ground,
        String putBy,
        Instant putAt) {

    public boolean isOverride() {
        return acceptedBecause.equals("overridden");
    }
}
