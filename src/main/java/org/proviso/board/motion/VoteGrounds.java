package org.proviso.board.motion;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.proviso.board.BoardMotion;
import org.proviso.board.ProposalForDecision;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.deciding.Grounds;
import org.proviso.core.deciding.MotionResult;
import org.proviso.core.deciding.VoteResult;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.Rules;

/**
 * On what grounds a vote settles an envelope. As moved: those of the motion. Otherwise: the rule of the pack on ties or
 * failed motions, named in words; a rejection that nobody moved takes the reasons of the proposal to reject.
 */
record VoteGrounds(BoardMotion motion, Optional<BoardMotion> other, VoteResult.Stands result) {

    private static final Set<Rule> ENDINGS = Set.of(Rules.TIE_MEANS, Rules.FAILED_MOTION_MEANS);

    Grounds groundsFor(@Nullable ProposalForDecision proposed) {
        if (result.decided() == motion.kind().asks().orElse(null)) {
            String reference = joined(BoardMotion::legalReference, "; ");
            return new Grounds(motion.reasons(), reference, join(" ", because(), byRule()));
        }
        return result.decided() == DecisionOutcome.REJECT
                        && proposed != null
                        && proposed.outcome() == DecisionOutcome.REJECT
                ? new Grounds(proposed.reasons(), proposed.legalReference(), byRule())
                : new Grounds(List.of(), ruleReference(), byRule());
    }

    /** What the pack makes of a tie or a failed motion is the place in the law that a count which nobody moved rests on. */
    private String ruleReference() {
        return ending().map(given -> given.reference().words()).orElse("");
    }

    private Optional<ResolvedRule> ending() {
        return result.restsOn().stream()
                .filter(given -> ENDINGS.contains(given.rule()))
                .findFirst();
    }

    private String because() {
        return joined(BoardMotion::because, " ");
    }

    private String joined(Function<BoardMotion, String> text, String between) {
        return join(between, text.apply(motion), other.map(text).orElse(""));
    }

    private static String join(String between, String... texts) {
        return Stream.of(texts).filter(text -> !text.isBlank()).distinct().collect(Collectors.joining(between));
    }

    /** Empty where the motion carried. */
    private String byRule() {
        return result.end() == MotionResult.CARRIED
                ? ""
                : result.words() + ending().map(VoteGrounds::words).orElse("");
    }

    private static String words(ResolvedRule given) {
        return " By the rule on " + given.rule().meaning() + " (" + given.rule().key() + "): "
                + given.reference().words() + ".";
    }
}
