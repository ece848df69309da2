package org.proviso.roll;

import org.proviso.core.VotedElsewhere;
import org.proviso.core.adjudication.finding.DateWords;

/** A line of the state's list that only the newer of two lists has ({@code added}), or only the older. */
public record StateListChange(VotedElsewhere line, boolean added) {

    /** As a case's page gives it for a reason; it names no one, because the page says why the line is shown. */
    public String words() {
        String how = line.how().isBlank() ? "" : " (" + DateWords.code(line.how()) + ")";
        String on = line.on() == null ? "" : " on " + DateWords.date(line.on());
        return "entry " + (added ? "added to" : "removed from") + " the state's list" + ": voted in " + line.county()
                + how + on;
    }
}
