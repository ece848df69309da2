package org.proviso.bench;

import java.util.Locale;

/** Links against the truth. */
record Quality(long links, long right, long onRoll) {

    double f1() {
        return 2.0 * right / (links + onRoll);
    }

    Share precision() {
        return new Share(right, links);
    }

    Share wrong() {
        return new Share(links - right, links);
    }

    Share recall() {
        return new Share(right, onRoll);
    }

    @Override
    public String toString() {
        return String.format(
                Locale.ROOT, "F1 %.5f, wrong links %s, precision %s, recall %s", f1(), wrong(), precision(), recall());
    }
}
