package org.proviso.core.matching;

import java.util.List;

/**
 * The verdict from the probabilities and from what must not be overlooked. The thresholds follow from what the words
 * promise (sure: wrong less than once in a thousand; likely: four to one against everything else, a relative and nobody
 * on the roll included) and are never picked on a file with known answers.
 */
final class VerdictRule {

    private static final double SURE = 0.999;
    private static final double LIKELY = 0.8;
    private static final double PLAUSIBLE = 0.5;
    private static final double RIVAL = 0.2;

    private VerdictRule() {}

    static Verdict of(List<Standing> ranked) {
        double first = ranked.isEmpty() ? 0 : ranked.get(0).probability();
        double second = ranked.size() < 2 ? 0 : ranked.get(1).probability();
        if (first >= LIKELY) {
            return first >= SURE && speaksForOnly(ranked.get(0).pair()) ? Verdict.SURE : Verdict.LIKELY;
        }
        if (first + second >= PLAUSIBLE && second >= RIVAL * first) {
            return Verdict.AMBIGUOUS;
        }
        return Verdict.NONE;
    }

    /** Whether nothing about the pair is what a twin, a parent, a child or a namesake would show. */
    static boolean speaksForOnly(Comparison pair) {
        return pair.suffix() != SuffixGrade.CONFLICT
                && dateAllows(pair)
                && givenAllows(pair)
                && surnameAllows(pair)
                && numberAllows(pair);
    }

    /** A child has the parent's name and address, a namesake the name: without the date, a number must agree. */
    private static boolean dateAllows(Comparison pair) {
        boolean whole = pair.namesAgree() && pair.address() == AddressGrade.SAME;
        return switch (pair.date()) {
            case SAME -> true;
            case CONFLICT -> false;
            case UNKNOWN, ONE_PART -> pair.sameNumber();
            default -> pair.sameNumber() || whole && pair.suffix() != SuffixGrade.ONE_MISSING;
        };
    }

    /** A twin has the surname, the date and the address. */
    private static boolean givenAllows(Comparison pair) {
        return switch (pair.given()) {
            case DIFFERENT, UNKNOWN -> false;
            case SHORT, RESEMBLES, SOUNDS, INITIAL -> pair.sameNumber();
            default -> true;
        };
    }

    private static boolean surnameAllows(Comparison pair) {
        return switch (pair.surname()) {
            case DIFFERENT, RESEMBLES, SOUNDS, UNKNOWN ->
                pair.date() == DateGrade.SAME && (pair.sameNumber() || pair.address() == AddressGrade.SAME);
            default -> true;
        };
    }

    /** Another number stands against all but a pair that agrees in everything else. */
    private static boolean numberAllows(Comparison pair) {
        boolean otherNumber = pair.last4() == NumberGrade.DIFFERENT
                || pair.license() == LicenseGrade.DIFFERENT && pair.last4() != NumberGrade.SAME;
        boolean restAgrees = pair.namesAgree() && pair.date() == DateGrade.SAME && pair.address() == AddressGrade.SAME;
        return !otherNumber || restAgrees;
    }
}
