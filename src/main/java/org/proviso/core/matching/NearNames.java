package org.proviso.core.matching;

/**
 * Finds names of a dictionary that lie one slip of the pen from another name: a letter left out, put in or changed, or two
 * neighbors exchanged. Two such names are one and the same once the right letter is left out of each, so every name stands
 * on a list for each of its letters left out. Read only once made.
 */
final class NearNames {

    /** One slip in a shorter name makes another name as easily. */
    private static final int SHORTEST = 4;

    private static final int SPREAD = 0x9e3779b9;

    private final Dictionary names;
    private final int[] starts;
    private final int[] codes;

    NearNames(Dictionary names) {
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

    private static int slots(Dictionary names) {
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
            sink.add((hash * SPREAD >>> 3) & slots - 1);
        }
    }

    /** Adds the numbers of the names one slip away, some perhaps more than once. */
    void find(String name, IntColumn sink) {
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

    private static boolean isOneSlip(String a, String b) {
        return Math.abs(a.length() - b.length()) <= 1 && EditDistance.optimalStringAlignment(a, b) == 1;
    }
}
