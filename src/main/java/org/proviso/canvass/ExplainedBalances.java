package org.proviso.canvass;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Turns what does not agree into what is explained, where two people signed why. What the county's total is off by is
 * explained where it is the sum of what is explained in its voting locations.
 */
final class ExplainedBalances {

    private final Collection<BalanceExplanation> signed;

    ExplainedBalances(Collection<BalanceExplanation> explanations) {
        this.signed = explanations.stream().filter(BalanceExplanation::isSigned).toList();
    }

    /** The same totals in the same order. */
    List<BalanceResult> of(List<BalanceResult> balances) {
        List<BalanceResult> own = balances.stream().map(this::explained).toList();
        List<BalanceResult> all = new ArrayList<>();
        own.forEach(balance -> all.add(balance.where().isCounty() ? bySum(balance, own) : balance));
        return List.copyOf(all);
    }

    private BalanceResult explained(BalanceResult balance) {
        Optional<BalanceExplanation> found = signed.stream()
                .filter(explanation -> explanation.isAbout(balance))
                .findFirst();
        return found.<BalanceResult>map(explanation -> explained(balance, List.of(explanation)))
                .orElse(balance);
    }

    private static BalanceResult explained(BalanceResult balance, List<BalanceExplanation> explanations) {
        Integer by = balance instanceof BalanceResult.Differs differs ? differs.by() : null;
        return new BalanceResult.Explained(balance.where(), balance.identity(), by, balance.words(), explanations);
    }

    /** Where the county's total does not agree because those of its voting locations do not. */
    private static BalanceResult bySum(BalanceResult county, List<BalanceResult> own) {
        List<BalanceResult> locations = own.stream()
                .filter(other -> !other.where().isCounty())
                .filter(other -> other.identity() == county.identity())
                .filter(other -> other.where().hours() == county.where().hours())
                .filter(other -> !(other instanceof BalanceResult.Holds))
                .toList();
        boolean allExplained =
                !locations.isEmpty() && locations.stream().allMatch(other -> other instanceof BalanceResult.Explained);
        if (!allExplained) {
            return county;
        }
        List<BalanceResult.Explained> explained =
                locations.stream().map(other -> (BalanceResult.Explained) other).toList();
        return isSum(county, explained)
                ? explained(
                        county,
                        explained.stream()
                                .flatMap(each -> each.explanations().stream())
                                .toList())
                : county;
    }

    private static boolean isSum(BalanceResult county, List<BalanceResult.Explained> explained) {
        Stream<Integer> known =
                explained.stream().map(BalanceResult.Explained::by).flatMap(Stream::ofNullable);
        if (county instanceof BalanceResult.Differs differs) {
            return explained.stream().allMatch(each -> each.by() != null)
                    && known.mapToInt(Integer::intValue).sum() == differs.by();
        }
        return county instanceof BalanceResult.CannotBeChecked
                && explained.stream().anyMatch(each -> each.by() == null);
    }
}
