package org.proviso.core.matching;

import java.util.List;
import org.proviso.core.matching.grades.AddressGrade;
import org.proviso.core.matching.grades.BirthPartGrade;
import org.proviso.core.matching.grades.DateGrade;
import org.proviso.core.matching.grades.LicenseGrade;
import org.proviso.core.matching.grades.NumberGrade;
import org.proviso.core.matching.grades.SuffixGrade;
import org.proviso.core.matching.grades.SurnameGrade;

/**
 * The verdict from the probabilities and from what must not be overlooked. The thresholds follow from what the words
 * promise (sure: wrong less than once in a thousand; likely: four to one against everything else, a relative and nobody
 * on the roll included) and are never picked on a file with known answers.
 */
final class MatchVerdictRule {

    private static final double SURE = 0.999;
    private static final double LIKELY = 0.8;
    private static final double PLAUSIBLE = 0.2;
    private static final double SEVERAL = 0.5;
    private static final double RIVAL = 0.2;

    private static final String DATES_DIFFER =
            "the dates of birth differ, as those of a parent, a child or a namesake would.";

    private MatchVerdictRule() {}

    /** A partial match is shown as ambiguous, so that a person sees it: it may be a relative or no one on the roll. */
    static MatchVerdict decide(List<WeighedCandidate> ranked) {
        double first = ranked.isEmpty() ? 0 : ranked.get(0).probability();
        double second = ranked.size() < 2 ? 0 : ranked.get(1).probability();
        if (first >= LIKELY) {
            return first >= SURE && speaksForOnly(ranked.get(0).pair()) ? MatchVerdict.SURE : MatchVerdict.LIKELY;
        }
        return first >= PLAUSIBLE || first + second >= SEVERAL ? MatchVerdict.AMBIGUOUS : MatchVerdict.NONE;
    }

    /** Why the verdict is not sure, in words. */
    static String reason(MatchVerdict verdict, List<WeighedCandidate> ranked) {
        return switch (verdict) {
            case SURE -> "";
            case NONE -> "No voter on the roll matches.";
            case LIKELY -> "One voter is a likely match; " + doubt(ranked.get(0).pair());
            case AMBIGUOUS -> ambiguity(ranked);
        };
    }

    private static String ambiguity(List<WeighedCandidate> ranked) {
        double first = ranked.get(0).probability();
        double second = ranked.size() < 2 ? 0 : ranked.get(1).probability();
        return second >= RIVAL * first
                ? "Two or more voters match about equally; the papers do not tell them apart."
                : "One voter may match, but " + doubt(ranked.get(0).pair());
    }

    /** Why a pair is not sure. */
    private static String doubt(VoterComparison pair) {
        if (pair.suffix() == SuffixGrade.CONFLICT) {
            return "the suffixes differ, as a parent's and a child's would.";
        }
        if (!dateAllows(pair)) {
            return pair.date() == DateGrade.UNKNOWN ? undated(pair.birthPart()) : DATES_DIFFER;
        }
        if (!givenAllows(pair)) {
            return "a twin or another relative at the address would look the same.";
        }
        if (!surnameAllows(pair)) {
            return "the last names differ, and nothing else points to this person alone.";
        }
        return numberAllows(pair)
                ? "what matches is not enough to rule out everyone else."
                : "the number given is wrong or belongs to another person.";
    }

    private static String undated(BirthPartGrade part) {
        return switch (part) {
            case DIFFERENT -> DATES_DIFFER;
            case UNKNOWN -> "without a date of birth, a parent, a child or a namesake would look the same.";
            default -> "without a whole date of birth, a parent, a child or a namesake would look the same.";
        };
    }

    /** Whether nothing about the pair is what a twin, a parent, a child or a namesake would show. */
    static boolean speaksForOnly(VoterComparison pair) {
        return pair.suffix() != SuffixGrade.CONFLICT
                && dateAllows(pair)
                && givenAllows(pair)
                && surnameAllows(pair)
                && numberAllows(pair);
    }

    /** A child has the parent's name and address, a namesake the name: without the date, a number must agree. */
    private static boolean dateAllows(VoterComparison pair) {
        boolean whole = pair.namesAgree() && pair.address() == AddressGrade.SAME;
        return switch (pair.date()) {
            case SAME -> true;
            case CONFLICT -> false;
            case UNKNOWN -> pair.sameNumber() && pair.birthPart() != BirthPartGrade.DIFFERENT;
            case ONE_PART -> pair.sameNumber();
            default -> pair.sameNumber() || (whole && pair.suffix() != SuffixGrade.ONE_MISSING);
        };
    }

    /** A twin has the surname, the date and the address, but not the last four: with all of these it is one who goes by another name. */
    private static boolean givenAllows(VoterComparison pair) {
        return switch (pair.given()) {
            case UNKNOWN -> false;
            case DIFFERENT ->
                pair.sameNumber()
                        && pair.surname() == SurnameGrade.EXACT
                        && pair.date() == DateGrade.SAME
                        && pair.address() == AddressGrade.SAME;
            case SHORT, RESEMBLES, SOUNDS, INITIAL -> pair.sameNumber();
            default -> true;
        };
    }

    private static boolean surnameAllows(VoterComparison pair) {
        return switch (pair.surname()) {
            case DIFFERENT, RESEMBLES, SOUNDS, UNKNOWN ->
                pair.date() == DateGrade.SAME && (pair.sameNumber() || pair.address() == AddressGrade.SAME);
            default -> true;
        };
    }

    /** Another number stands against all but a pair that agrees in everything else. */
    private static boolean numberAllows(VoterComparison pair) {
        boolean otherNumber = pair.last4() == NumberGrade.DIFFERENT
                || (pair.license() == LicenseGrade.DIFFERENT && pair.last4() != NumberGrade.SAME);
        boolean restAgrees = pair.namesAgree() && pair.date() == DateGrade.SAME && pair.address() == AddressGrade.SAME;
        return !otherNumber || restAgrees;
    }
}
