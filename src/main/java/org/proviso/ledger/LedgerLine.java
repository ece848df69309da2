package org.proviso.ledger;

import java.util.Map;

/**
 * What the ledger is to say of an act: in which chain, the act's name, and of each subject what observers may read of
 * it. Each subject has an entry of its own, in the order of the map.
 */
public record LedgerLine(LedgerChain chain, String act, Map<String, Map<String, Object>> payloads) {

    public static LedgerLine of(LedgerChain chain, String act, String subject, Map<String, Object> payload) {
        return new LedgerLine(chain, act, Map.of(subject, payload));
    }
}
