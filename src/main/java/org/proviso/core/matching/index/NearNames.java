package org.proviso.core.matching.index;

import org.proviso.core.matching.spelling.IntColumn;

/**
 * Finds names of a dictionary that lie one slip of the pen from another name: a letter left out, put in or changed, or two
 * neighbors exchanged. Two such names are one and the same once the right letter is left out of each, so every name stands
 * on a list for each of its letters left out. Read only once made.
 */
public final class NearNames {

    /** One error in a shorter name just as easily makes another name. */
    private static final int SHORTEST = 4;

    private static final int SPREAD = 0x9e3779b9;

    private final TextDictionary names;
    private final int[] starts;
    private final int[] codes;

    NearNames(TextDictionary names) {
        this.names = names;
        IntColumn lists = new IntColumn(1024);
        int[] begins = new int[slots(names) + 1];
        for (int code = 1; code < names.size(); code++) {
            lists.empty();
            lists(names.text(code), begins.length - 1, lists);
            for (int i = 0; i < lists.size(); i++) {
                begins[lists.get(i)]++;
            }
        }
        for (int list = 1; list < begins.length; list++) {
            begins[list] += begins[list - 1];
        }
        codes = new int[begins[begins.length - 1]];
        for (int code = names.size() - 1; code > 0; code--) {
            lists.empty();
            lists(names.text(code), begins.length - 1, lists);
            for (int i = 0; i < lists.size(); i++) {
                codes[--begins[lists.get(i)]] = code;
            }
        }
        starts = begins;
    }

    private static int slots(TextDictionary names) {
        return Integer.highestOneBit(Math.max(1, names.size())) << 3;
    }

    /** The lists of a name: by its letters, and by its letters without each of them. */
    private static void lists(String name, int slots, IntColumn sink) {
        if (name.length() < SHORTEST) {
            return;
        }
        for (int without = -1; without < name.length(); without++) {
            int hash = 0;
            for (int i = 0; i < name.length(); i++) {
                hash = i == without ? hash : 31 * hash + name.charAt(i);
            }
            sink.add(((hash * SPREAD) >>> 3) & slots - 1);
        }
    }

    /** Adds the numbers of the names one error away, some perhaps more than once. */
    public void find(String name, IntColumn sink) {
        IntColumn lists = new IntColumn(32);
        lists(name, starts.length - 1, lists);
        for (int i = 0; i < lists.size(); i++) {
            int list = lists.get(i);
            for (int place = starts[list]; place < starts[list + 1]; place++) {
                if (isOneSlip(name, names.text(codes[place]))) {
                    sink.add(codes[place]);
                }
            }
        }
    }

    /** Replaces the surname's sound with those of the names one error away; false when there are none. */
    public boolean anyNear(String name, KeyFields fields) {
        IntColumn near = new IntColumn(16);
        find(name, near);
        fields.surnameSounds.clear();
        for (int i = 0; i < near.size(); i++) {
            fields.surnameSounds.add(names.sound(near.get(i)));
        }
        return near.size() > 0;
    }

    /** Whether optimal string alignment is one, without its table. */
    private static boolean isOneSlip(String a, String b) {
        String shorter = a.length() <= b.length() ? a : b;
        String longer = shorter.equals(a) ? b : a;
        int at = 0;
        while (at < shorter.length() && shorter.charAt(at) == longer.charAt(at)) {
            at++;
        }
        if (shorter.length() + 1 == longer.length()) {
            return shorter.regionMatches(at, longer, at + 1, shorter.length() - at);
        }
        return shorter.length() == longer.length() && at < shorter.length() && isOneSlip(shorter, longer, at);
    }

    /** Two of one length that first differ at a place. */
    private static boolean isOneSlip(String a, String b, int at) {
        int next = at + 1;
        int rest = a.length() - next;
        boolean exchanged = rest > 0 && a.charAt(at) == b.charAt(next) && a.charAt(next) == b.charAt(at);
        return a.regionMatches(next, b, next, rest) || (exchanged && a.regionMatches(next + 1, b, next + 1, rest - 1));
    }
}
