package org.proviso.core.matching;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which given names one person may go by. The table is the project's own. Two names are kin when one is a nickname of
 * the other, or both are nicknames of one formal name (Kate and Katie); kin is evidence, never identity.
 */
final class Nicknames {

    private static final Nicknames TABLE = new Nicknames(Resource.lines("nicknames.txt"));

    private final Map<String, Set<String>> kin = new HashMap<>();

    private Nicknames(List<String[]> lines) {
        for (String[] line : lines) {
            for (String name : line) {
                kin.computeIfAbsent(name, absent -> new TreeSet<>()).addAll(List.of(line));
            }
        }
    }

    /** Whether two folded given names may be one person's; a name is no nickname of itself. */
    static boolean kin(String a, String b) {
        return !a.equals(b) && of(a).contains(b);
    }

    /** All names of the table that a bearer of this one may go by, itself included, in alphabetical order. */
    static Set<String> of(String name) {
        return TABLE.kin.getOrDefault(name, Set.of(name));
    }
}
