package org.proviso.ledger;

import java.util.ArrayList;
import java.util.List;

/** Counts the differences between tables and ledger and keeps the first. Not thread-safe. */
public final class Differences {

    /** So many are named. */
    public static final int NAMED = 20;

    private final List<String> first = new ArrayList<>();
    private long differing;

    /** One more, in a sentence without personal data. */
    public void add(String sentence) {
        differing++;
        if (first.size() < NAMED) {
            first.add(sentence);
        }
    }

    /** What there is, among so many things of that kind. */
    public Compared among(long things, String what) {
        return new Compared(what, things, differing, List.copyOf(first));
    }
}
