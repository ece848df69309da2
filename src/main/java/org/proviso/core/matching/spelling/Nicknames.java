package org.proviso.core.matching.spelling;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Which given names one person may go by. The table is the project's own. Two names are kin when one is a nickname of
 * the other, or both are nicknames of one formal name (Kate and Katie); kin is evidence, never identity.
 */
public final class Nicknames {

    private static final Nicknames TABLE = new Nicknames(WordList.lines("nicknames.txt"));

    private static final List<String> ENDEARING = List.of("IE", "EY", "Y", "I");
    private static final int LEAST_STEM = 3;

    private final Map<String, Set<String>> kin = new HashMap<>();

    private Nicknames(List<String[]> lines) {
        for (String[] line : lines) {
            for (String name : line) {
                kin.computeIfAbsent(name, absent -> new TreeSet<>()).addAll(List.of(line));
            }
        }
    }

    /** Whether two folded given names may be one person's; a name is not its own nickname. */
    public static boolean kin(String a, String b) {
        return !a.equals(b) && of(a).contains(b);
    }

    /**
     * Whether a name looks cut from the longer one, as Mal from Malcolm or Willy from Willis are: three letters or more
     * of its beginning, less an endearing ending.
     */
    public static boolean shortens(String cut, String whole) {
        if (cut.charAt(0) != whole.charAt(0)) {
            return false;
        }
        String stem = stem(cut);
        int last = stem.length() - 1;
        boolean doubled = last > LEAST_STEM - 1 && stem.charAt(last) == stem.charAt(last - 1);
        String bare = doubled ? stem.substring(0, last) : stem;
        return bare.length() >= LEAST_STEM && whole.length() > bare.length() + 1 && whole.startsWith(bare);
    }

    private static String stem(String cut) {
        for (String ending : ENDEARING) {
            if (cut.endsWith(ending)) {
                return cut.substring(0, cut.length() - ending.length());
            }
        }
        return cut;
    }

    /** All names of the table that a bearer of this one may go by, itself included, in alphabetical order. */
    public static Set<String> of(String name) {
        return TABLE.kin.getOrDefault(name, Set.of(name));
    }
}
