package org.proviso.today;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.proviso.canvass.Balance;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.Identity;
import org.springframework.stereotype.Component;

/** Returns that are out of balance: differences to resolve before the canvass. */
@Component
class NotAddingUp {

    private static final Set<Identity> ARRIVALS =
            EnumSet.of(Identity.STOCK, Identity.ISSUED_ARRIVED, Identity.SENT_BACK_ARRIVED);

    private final CanvassService canvass;

    NotAddingUp(CanvassService canvass) {
        this.canvass = canvass;
    }

    /** A sentence for each difference of a voting location. */
    List<String> of(String electionId) {
        return canvass.balances(electionId, ARRIVALS).stream()
                .filter(balance -> balance instanceof Balance.Differs)
                .filter(balance -> !balance.place().startsWith(CanvassService.COUNTY))
                .map(Balance::words)
                .distinct()
                .toList();
    }
}
