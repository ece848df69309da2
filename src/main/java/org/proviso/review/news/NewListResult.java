package org.proviso.review.news;

import java.util.List;
import org.proviso.core.act.Refusal;

/** What became of a newer list that was brought. */
public sealed interface NewListResult {

    /** In use now; the cases of which the rules now say something else, and why. */
    record InUse(int snapshotNo, List<CaseDifference> changed) implements NewListResult {}

    /** It would change what was decided: somebody else has to confirm it. Nothing has changed yet. */
    record WaitsForSecond(int snapshotNo, List<CaseDifference> wouldChange) implements NewListResult {}

    /** The office has this file already, and it says nothing new. */
    record NothingNew(int snapshotNo) implements NewListResult {}

    /** The office refused the file because of its bad rows: nothing of it is kept. */
    record FileRefused(int snapshotNo) implements NewListResult {}

    /** No list is put in use now, and why. */
    record Refused(Refusal refusal) implements NewListResult {}
}
