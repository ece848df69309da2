package org.proviso.review.ui;

import java.util.Optional;
import org.proviso.roll.LookupService;
import org.proviso.ui.frame.WorkUnderWay;
import org.springframework.stereotype.Component;

/** After startup the roll is indexed; matches and look-ups wait until that is done. */
@Component
class RollUnderWay implements WorkUnderWay {

    private final LookupService lookup;

    RollUnderWay(LookupService lookup) {
        this.lookup = lookup;
    }

    @Override
    public Optional<Message> words() {
        return lookup.isReading()
                ? Optional.of(new Message("Indexing the roll. Possible voters will appear when it is done.", ""))
                : Optional.empty();
    }
}
