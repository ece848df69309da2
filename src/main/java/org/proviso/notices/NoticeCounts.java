package org.proviso.notices;

import java.util.List;
import java.util.function.ToIntFunction;

/**
 * Notices in figures, a line for each voting location and, apart from the rest, for its ballots of court-extended hours.
 * Withdrawn ones are not counted: those left are due or sent.
 */
public record NoticeCounts(List<Line> lines) {

    /**
     * Envelopes with an ask notice and with every one of theirs sent; outcome notices of ballots not counted or counted
     * in part, and those sent; corrections tell a voter who was told otherwise before that the ballot counts in full.
     */
    public record Line(
            String votingLocation,
            boolean heldApart,
            int askEnvelopes,
            int askEnvelopesSent,
            int outcomes,
            int outcomesSent,
            int corrections) {}

    /** Envelopes whose voters were or are to be told what they may bring. */
    public int askEnvelopes() {
        return sum(Line::askEnvelopes);
    }

    /** Those of them whose voters were not told everything yet. */
    public int askEnvelopesNotSent() {
        return sum(line -> line.askEnvelopes() - line.askEnvelopesSent());
    }

    /** Notices of ballots not counted or counted in part: as many as there are such decisions. */
    public int outcomes() {
        return sum(Line::outcomes);
    }

    /** Those of them that did not go out yet. */
    public int outcomesNotSent() {
        return sum(line -> line.outcomes() - line.outcomesSent());
    }

    /** The same for one group: kept apart for court-extended hours, or all others. */
    public NoticeCounts ofGroup(boolean heldApart) {
        return new NoticeCounts(
                lines.stream().filter(line -> line.heldApart() == heldApart).toList());
    }

    private int sum(ToIntFunction<Line> figure) {
        return lines.stream().mapToInt(figure).sum();
    }
}
