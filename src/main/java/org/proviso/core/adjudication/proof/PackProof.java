package org.proviso.core.adjudication.proof;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.calendar.Holiday;
import org.proviso.core.rules.Consequence.Effect;
import org.proviso.core.rules.PackResolver;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RulePack;
import org.proviso.core.rules.RuleType;
import org.proviso.core.rules.UnsourcedValues;

/**
 * Proves a rule pack: goes through every combination of facts and every set of answers, for every stretch of election
 * dates in which its values differ. A pack that breaks a promise is shown with the smallest counterexample.
 */
public final class PackProof {

    private static final int FIRST_YEAR = 2016;
    private static final int LAST_YEAR = 2030;

    private final RulePack pack;
    private final Set<Violation> violations = new LinkedHashSet<>();
    private final Set<String> warnings = new LinkedHashSet<>();

    private PackProof(RulePack pack) {
        this.pack = pack;
    }

    /** The proof of the pack as it stands for elections on that date and on every date at which a value changes. */
    public static ProofReport proveForElection(RulePack pack, LocalDate electionDate) {
        return new PackProof(pack).prove(electionDate);
    }

    private ProofReport prove(LocalDate electionDate) {
        ResolvedPack today = resolved(electionDate);
        Set<AnswerClass> classes = new LinkedHashSet<>();
        long combinations = 0;
        Set<List<String>> seen = new HashSet<>();
        for (LocalDate date : datesOfChange(electionDate)) {
            ResolvedPack then = resolved(date);
            if (!seen.add(whatQuestionsSee(then))) {
                continue;
            }
            AllAnswers answers = AllAnswers.under(then);
            violations.addAll(TupleChecks.violations(answers));
            Set<AnswerClass> here = answers.classes();
            FoldChecks folds = FoldChecks.of(here);
            violations.addAll(folds.violations());
            combinations += folds.combinations();
            classes.addAll(here);
            reasons(then, answers);
        }
        for (int year = FIRST_YEAR; year <= LAST_YEAR; year++) {
            deadlines(resolved(Holiday.GENERAL_ELECTION_DAY.date(year)));
        }
        return new ProofReport(
                pack.id(),
                today.hash(),
                TupleSpace.all().stream().mapToInt(TupleSpace::size).sum(),
                classes.size(),
                combinations,
                List.copyOf(violations),
                List.copyOf(warnings),
                UnsourcedValues.of(today));
    }

    /**
     * All that an answer can turn on: a deadline by whether it is known and firm, since the clocks are set by hand; any
     * other rule by its value. Where two dates agree in it they agree in every answer.
     */
    private static List<String> whatQuestionsSee(ResolvedPack pack) {
        List<String> seen = new ArrayList<>();
        for (ResolvedRule given : pack.all()) {
            if (given.rule().use() != Rule.Use.TOLD) {
                boolean dated = given.rule().type() == RuleType.DEADLINE && given.isKnown();
                seen.add((dated ? "a deadline" : given.value().spelled()) + given.isFirm() + given.isAbsent());
            }
        }
        return seen;
    }

    private void deadlines(ResolvedPack then) {
        DeadlineChecks checks = DeadlineChecks.of(then);
        violations.addAll(checks.violations());
        warnings.addAll(checks.warnings());
    }

    private ResolvedPack resolved(LocalDate date) {
        return PackResolver.resolve(pack, date, List.of());
    }

    /** The election's own date and the first date of every value, so that each state of the pack is seen once. */
    private Set<LocalDate> datesOfChange(LocalDate electionDate) {
        Set<LocalDate> dates = new TreeSet<>(Set.of(electionDate));
        pack.values().values().forEach(values -> values.forEach(value -> dates.add(value.from())));
        pack.orders().forEach(order -> dates.addAll(List.of(order.value().from(), order.to())));
        return dates;
    }

    /** Every reason with a consequence can come about, and has words for the voter and a survey heading. */
    private void reasons(ResolvedPack resolved, AllAnswers answers) {
        Set<Reason> reached = EnumSet.noneOf(Reason.class);
        answers.each(asked -> defect(asked.answer()).ifPresent(defect -> {
            reached.add(defect.reason());
            if (defect.consequence().does() == Effect.IN_PART) {
                reached.add(Reason.NO_CONTEST_IN_COMMON);
            }
        }));
        for (Reason reason : Reason.values()) {
            if (resolved.consequence(reason).isEmpty()) {
                continue;
            }
            if (!reached.contains(reason)) {
                violations.add(new Violation(
                        "Every reason in the pack can occur.",
                        "no combination of facts leads to " + reason.code() + " for an election on "
                                + resolved.electionDate()));
            }
            if (resolved.text(reason).isEmpty()) {
                violations.add(new Violation(
                        "Every reason in the pack has a notice text and a survey heading.",
                        reason.code() + " has none"));
            }
        }
    }

    /** The defect itself, or the one that an open answer would become once the office has ruled. */
    private static Optional<Answer.Defect> defect(Answer answer) {
        if (answer instanceof Answer.Open open && open.expected() != null) {
            return defect(open.expected());
        }
        return answer instanceof Answer.Defect defect ? Optional.of(defect) : Optional.empty();
    }
}
