package org.proviso.core.chain;

import java.util.List;
import java.util.Map;

/** A chain of assessments of the envelopes E-1, E-2 and so on. */
public final class SmallChain {

    private SmallChain() {}

    public static Chain of(int entries) {
        Chain chain = new Chain();
        for (int i = 1; i <= entries; i++) {
            chain.record(
                    "2026-11-04T12:00:00-06:00",
                    "clerk-1",
                    "assessed",
                    "E-" + i,
                    Map.of("recommendation", "reject", "asks", List.of("signature")));
        }
        return chain;
    }
}
