package org.proviso.review.replay;

import java.util.HashMap;
import java.util.Map;
import java.util.function.Function;
import org.proviso.core.rules.ResolvedPack;

/** The rules that assessments name by hash, each read once; those that cannot be read are remembered too. */
final class StoredRulesCache {

    private final Function<String, ResolvedPack> reads;
    private final Map<String, ResolvedPack> read = new HashMap<>();
    private final Map<String, String> broken = new HashMap<>();

    StoredRulesCache(Function<String, ResolvedPack> reads) {
        this.reads = reads;
    }

    /** Throws {@link IllegalStateException} where they are not what their hash says. */
    ResolvedPack of(String hash) {
        if (broken.containsKey(hash)) {
            throw new IllegalStateException(broken.get(hash));
        }
        try {
            return read.computeIfAbsent(hash, reads);
        } catch (IllegalStateException | IllegalArgumentException e) {
            broken.put(hash, e.getMessage());
            throw e;
        }
    }
}
