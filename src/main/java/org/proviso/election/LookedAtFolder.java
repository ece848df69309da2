package org.proviso.election;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proviso.files.SetAsideRow;

/**
 * An election folder with bad rows in its outside lists, before anybody decides: how many of which file, the first of
 * them, their hash, whether two people decide, and the reason of the one who agreed already, if somebody else did.
 */
public record LookedAtFolder(
        Map<String, Integer> counts,
        List<SetAsideRow> first,
        String rowsHash,
        boolean byTwo,
        Optional<String> agreedBecause) {

    public LookedAtFolder {
        counts = Map.copyOf(counts);
        first = List.copyOf(first);
    }
}
