package org.proviso.today;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.proviso.canvass.BalanceResult;
import org.proviso.canvass.BalanceRule;
import org.proviso.canvass.CanvassService;
import org.proviso.core.ElectionId;
import org.springframework.stereotype.Component;

/** Returns that are out of balance: differences to resolve before the canvass. */
@Component
class OutOfBalance {

    private static final Set<BalanceRule> ARRIVALS = EnumSet.of(
            BalanceRule.STOCK,
            BalanceRule.ISSUED_ARRIVED,
            BalanceRule.SENT_BACK_ARRIVED,
            BalanceRule.SEALS,
            BalanceRule.NOTHING_LOOSE);

    private final CanvassService canvass;

    OutOfBalance(CanvassService canvass) {
        this.canvass = canvass;
    }

    /** A sentence for each difference of a voting location, and the locations whose return is not here. */
    record Found(List<String> differences, List<String> withoutReturn) {}

    Found of(ElectionId electionId) {
        List<BalanceResult> balances = canvass.balances(electionId, ARRIVALS);
        return new Found(
                balances.stream()
                        .filter(balance -> balance instanceof BalanceResult.Differs)
                        .filter(balance -> !balance.where().isCounty())
                        .map(BalanceResult::words)
                        .distinct()
                        .toList(),
                canvass.withoutReturn(electionId, balances));
    }
}
