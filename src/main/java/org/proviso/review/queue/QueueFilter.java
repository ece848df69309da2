package org.proviso.review.queue;

import java.time.Duration;
import java.time.Instant;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.ElectionId;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.review.CaseState;

/**
 * Which cases of an election a list shows, and in which order. A column that is not named leaves its matter open; codes,
 * names of places and user names stand as the tables have them, an age as whole days. What no column can hold is dropped.
 */
public record QueueFilter(ElectionId electionId, Map<QueueColumn, String> wanted, QueueSort sort, boolean descending) {

    private static final int LONGEST_AGE = 4;

    public QueueFilter {
        Map<QueueColumn, String> kept = new EnumMap<>(QueueColumn.class);
        wanted.forEach((column, value) -> {
            if (isPossible(column, value)) {
                kept.put(column, value);
            }
        });
        wanted = Collections.unmodifiableMap(kept);
    }

    /** Every case that waits for a reviewer, is with one, or waits for a second review, the most urgent first. */
    public static QueueFilter all(ElectionId electionId) {
        return new QueueFilter(electionId, Map.of(), QueueSort.PRIORITY, false);
    }

    /** The same narrowed by one more column; null or nothing opens that column again. */
    public QueueFilter with(QueueColumn column, @Nullable String value) {
        Map<QueueColumn, String> changed = new EnumMap<>(QueueColumn.class);
        changed.putAll(wanted);
        if (value == null) {
            changed.remove(column);
        } else {
            changed.put(column, value);
        }
        return new QueueFilter(electionId, changed, sort, descending);
    }

    public QueueFilter sortedBy(QueueSort by, boolean last) {
        return new QueueFilter(electionId, wanted, by, last);
    }

    public Optional<String> value(QueueColumn column) {
        return Optional.ofNullable(wanted.get(column));
    }

    /** Only cases on which nobody acted since; null where an age is no matter. */
    @Nullable
    Instant before(Instant now) {
        return value(QueueColumn.AGE)
                .map(days -> now.minus(Duration.ofDays(Integer.parseInt(days))))
                .orElse(null);
    }

    /** Whether it is a pile of cases on which somebody has to answer before work goes on. */
    boolean isOfWaiting() {
        return value(QueueColumn.PILE)
                .filter(pile -> !pile.equals(QueuePile.TO_DO.code()))
                .isPresent();
    }

    /** Whether it narrows nothing. */
    public boolean isOpen() {
        return wanted.isEmpty();
    }

    private static boolean isPossible(QueueColumn column, String value) {
        return switch (column) {
            case PILE -> Code.find(QueuePile.class, value).isPresent();
            case STATE -> Code.find(CaseState.class, value).isPresent();
            case OUTLOOK -> Code.find(Recommendation.class, value).isPresent();
            case AGE -> value.length() < LONGEST_AGE && value.matches("[1-9][0-9]*");
            case REASON, LOCATION, PRECINCT, HOLDER, LANGUAGE -> !value.isBlank();
        };
    }
}
