package org.proviso.bench;

import java.util.Locale;

/** A counted share with its 95 % interval (E. Wilson, Journal of the American Statistical Association 22, 1927). */
record Share(long hits, long of) {

    private static final double Z = 1.959964;

    double value() {
        return of == 0 ? 0 : (double) hits / of;
    }

    double low() {
        return of == 0 ? 0 : Math.max(0, center() - half());
    }

    double high() {
        return of == 0 ? 1 : center() + half();
    }

    private double center() {
        return (value() + Z * Z / (2 * of)) / (1 + Z * Z / of);
    }

    private double half() {
        return Z * Math.sqrt(value() * (1 - value()) / of + Z * Z / (4.0 * of * of)) / (1 + Z * Z / of);
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.5f (%.5f to %.5f)", value(), low(), high());
    }
}
