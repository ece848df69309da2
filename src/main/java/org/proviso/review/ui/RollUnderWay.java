package org.proviso.review.ui;

import java.util.Optional;
import org.proviso.review.LookupService;
import org.proviso.ui.WorkUnderWay;
import org.springframework.stereotype.Component;

/** After startup the roll is indexed; matches and look-ups wait until that is done. */
@Component
class RollUnderWay implements WorkUnderWay {

    private final LookupService lookup;

    RollUnderWay(LookupService lookup) {
        this.lookup = lookup;
    }

    @Override
    public Optional<Words> words() {
        return lookup.isReading()
                ? Optional.of(new Words("Indexing the roll. Possible voters will appear when it is done.", ""))
                : Optional.empty();
    }
}
