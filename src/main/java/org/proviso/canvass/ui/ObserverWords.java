package org.proviso.canvass.ui;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.canvass.Figure;
import org.proviso.canvass.PlaceFigures;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.ui.UsDates;

/** How the observers' pages say figures, outcomes, acts and moments; these on the county's clock. */
public final class ObserverWords {

    private static final int SHORT = 8;

    private final ZoneId county;

    ObserverWords(ZoneId county) {
        this.county = county;
    }

    /** {@code 11/12/2026, 9:14 am}. */
    public String moment(@Nullable Instant moment) {
        return moment == null ? "" : UsDates.moment(LocalDateTime.ofInstant(moment, county));
    }

    /** When an act was recorded. */
    public String when(LedgerEntry entry) {
        return moment(Instant.parse(entry.at()));
    }

    public String local(LocalDateTime moment) {
        return UsDates.weekday(moment.toLocalDate()) + ", " + UsDates.hour(moment.toLocalTime());
    }

    /** {@code not gathered} is a dash, never zero. */
    public String figure(PlaceFigures counts, Figure figure) {
        return counts.has(figure) ? String.valueOf(counts.figures().get(figure)) : "–";
    }

    public String outcome(Optional<DecisionOutcome> outcome) {
        return outcome.map(DecisionOutcome::words).orElse("");
    }

    /** The class of the mark beside the word; none where nothing is decided. */
    public String mark(Optional<DecisionOutcome> outcome) {
        return outcome.map(as -> switch (as) {
                    case COUNT -> "mark full";
                    case COUNT_IN_PART -> "mark half";
                    case REJECT -> "mark";
                })
                .orElse("");
    }

    public String code(String code) {
        return DateWords.code(code);
    }

    /** The details of an act. A hash is shortened; the whole is in the exported file. */
    public String with(Map<String, Object> payload) {
        return payload.entrySet().stream()
                .map(entry -> DateWords.code(entry.getKey()) + ": "
                        + DateWords.code(shortened(String.valueOf(entry.getValue()))))
                .collect(Collectors.joining("; "));
    }

    public String joined(List<String> words) {
        return String.join("; ", words);
    }

    private static String shortened(String value) {
        return value.matches("[0-9a-f]{64}") ? value.substring(0, SHORT) + "…" : value;
    }
}
