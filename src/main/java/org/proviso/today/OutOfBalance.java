package org.proviso.today;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.canvass.BalanceResult;
import org.proviso.canvass.BalanceRule;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.Figure;
import org.proviso.core.ElectionId;
import org.proviso.core.Transmittal;
import org.proviso.intake.IntakeService;
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
    private final IntakeService intake;

    OutOfBalance(CanvassService canvass, IntakeService intake) {
        this.canvass = canvass;
        this.intake = intake;
    }

    /** A sentence for each difference of a voting location, and the locations whose return is not here. */
    record Found(List<String> differences, List<String> withoutReturn) {}

    Found of(ElectionId electionId) {
        List<BalanceResult> ofLocations = canvass.balances(electionId, ARRIVALS).stream()
                .filter(balance -> !balance.where().isCounty())
                .toList();
        Set<String> returned = intake.transmittals(electionId).stream()
                .map(Transmittal::votingLocation)
                .collect(Collectors.toSet());
        return new Found(
                ofLocations.stream()
                        .filter(balance -> balance instanceof BalanceResult.Differs)
                        .map(BalanceResult::words)
                        .distinct()
                        .toList(),
                ofLocations.stream()
                        .filter(OutOfBalance::hasNoReturn)
                        .map(balance -> balance.where().name())
                        .filter(place -> !returned.contains(place))
                        .distinct()
                        .toList());
    }

    /** Nobody knows how many envelopes it sent back. */
    private static boolean hasNoReturn(BalanceResult balance) {
        return balance instanceof BalanceResult.CannotBeChecked unchecked
                && unchecked.missing().contains(Figure.SENT_BACK)
                && !balance.where().isOffice();
    }
}
