package org.proviso.review.ui;

import java.util.Optional;
import org.proviso.roll.LookupService;
import org.proviso.ui.frame.WorkUnderWay;
import org.springframework.stereotype.Component;

/** After a start the roll is read into its index: until it is, matches and look-ups wait. */
@Component
class RollUnderWay implements WorkUnderWay {

    private final LookupService lookup;

    RollUnderWay(LookupService lookup) {
        this.lookup = lookup;
    }

    @Override
    public Optional<Message> words() {
        return lookup.isReading()
                ? Optional.of(new Message("The roll is being indexed; candidates follow.", ""))
                : Optional.empty();
    }
}
