package org.proviso.review.ui.ends;

import java.util.function.Consumer;
import java.util.function.Function;
import org.proviso.core.act.ActResult;
import org.proviso.review.CaseVersion;
import org.proviso.review.EnvelopeCase;

/** How a page does an act from a sheet on the case it shows. */
@FunctionalInterface
public interface EndActs {

    /**
     * Does it, and says {@code done} where it was recorded; {@code refusing} is told why not. Returns whether the sheet may
     * close.
     */
    boolean run(Consumer<String> refusing, String done, Function<CaseVersion, ActResult<EnvelopeCase>> act);
}
