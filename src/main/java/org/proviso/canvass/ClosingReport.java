package org.proviso.canvass;

import java.util.List;
import org.proviso.canvass.steps.ClosingLine;

/**
 * What is missing until the election can be closed: the identities that do not hold or cannot be checked, and the work
 * that makes each of them hold, with the decisions to follow up. {@code besides} prevents nothing, but
 * should be known before closing.
 */
public record ClosingReport(List<BalanceResult> open, List<ClosingLine> missing, List<ClosingLine> besides) {

    static final ClosingReport NOTHING = new ClosingReport(List.of(), List.of(), List.of());

    /** Whether the election can be closed. */
    public boolean isEmpty() {
        return open.isEmpty() && missing.isEmpty();
    }
}
