package org.proviso.core.matching;

import java.util.List;
import java.util.Map;

/** Counts how verdicts stand against the truth. */
final class Tally {

    int onRoll;
    int linked;
    int linkedRight;
    int sure;
    int sureRight;

    static Tally of(List<Match> matches, Map<String, String> truth) {
        Tally tally = new Tally();
        for (Match match : matches) {
            tally.count(match, truth.get(match.envelopeNo().value()));
        }
        return tally;
    }

    private void count(Match match, String voterId) {
        onRoll += voterId.isEmpty() ? 0 : 1;
        boolean right =
                match.best().map(best -> best.voterId().value().equals(voterId)).orElse(false);
        if (match.verdict() == MatchVerdict.SURE || match.verdict() == MatchVerdict.LIKELY) {
            linked++;
            linkedRight += right ? 1 : 0;
        }
        if (match.verdict() == MatchVerdict.SURE) {
            sure++;
            sureRight += right ? 1 : 0;
        }
    }

    double f1() {
        return 2.0 * linkedRight / (linked + onRoll);
    }

    double surePrecision() {
        return (double) sureRight / sure;
    }

    double sureRecall() {
        return (double) sureRight / onRoll;
    }

    @Override
    public String toString() {
        return String.format(
                "on roll %d; linked %d, right %d (precision %.5f, recall %.5f, F1 %.5f); sure %d, wrong %d (precision %.5f, recall %.5f)",
                onRoll,
                linked,
                linkedRight,
                (double) linkedRight / linked,
                (double) linkedRight / onRoll,
                f1(),
                sure,
                sure - sureRight,
                surePrecision(),
                sureRecall());
    }
}
