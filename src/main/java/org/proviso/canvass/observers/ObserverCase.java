package org.proviso.canvass.observers;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.review.Decision;

/**
 * A case as an observer reads it: where and on which day the envelope was cast and why it was provisional, what the law
 * asks of it, what the rules recommend now, what the voter may still bring, how it was decided, and every act recorded
 * of it. It holds no name, address, birth date, voter id, signature, receipt number or free text.
 */
public record ObserverCase(
        ObserverCaseRow line,
        @Nullable LocalDate castOn,
        List<String> issuedBecause,
        List<ObserverAnswer> answers,
        String recommendation,
        List<String> asks,
        Optional<Decision> decision,
        List<LedgerEntry> acts) {

    /** What the law asks, in the order of the trade; a heading under which nothing is asked of this one is left out. */
    public List<String> headings() {
        return answers.stream().map(ObserverAnswer::heading).distinct().toList();
    }

    public List<ObserverAnswer> under(String heading) {
        return answers.stream()
                .filter(answer -> answer.heading().equals(heading))
                .toList();
    }
}
