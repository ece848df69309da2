package org.proviso.notices;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.review.Decision;

/** Adds up notices that were not withdrawn, by voting location and group. */
final class NoticeSums {

    private final Map<EnvelopeNumber, Decision> decisions;

    /** Decisions that stand, by envelope number. */
    NoticeSums(Map<EnvelopeNumber, Decision> decisions) {
        this.decisions = decisions;
    }

    /** The location of each envelope by its number. */
    NoticeCounts of(List<Notice> standing, Map<EnvelopeNumber, String> locations) {
        Map<String, Map<Boolean, List<Notice>>> groups = new TreeMap<>();
        for (Notice notice : standing) {
            groups.computeIfAbsent(locations.getOrDefault(notice.key().envelopeNo(), ""), any -> new TreeMap<>())
                    .computeIfAbsent(notice.heldApart(), any -> new ArrayList<>())
                    .add(notice);
        }
        List<NoticeCounts.Line> lines = new ArrayList<>();
        groups.forEach(
                (location, parts) -> parts.forEach((apart, notices) -> lines.add(line(location, apart, notices))));
        return new NoticeCounts(List.copyOf(lines));
    }

    private NoticeCounts.Line line(String location, boolean apart, List<Notice> notices) {
        Map<EnvelopeNumber, List<Notice>> asks = notices.stream()
                .filter(notice -> notice.kind() == NoticeKind.ASK)
                .collect(Collectors.groupingBy(
                        notice -> notice.key().envelopeNo(), LinkedHashMap::new, Collectors.toList()));
        return new NoticeCounts.Line(
                location,
                apart,
                asks.size(),
                (int) asks.values().stream()
                        .filter(of -> of.stream().allMatch(Notice::isSent))
                        .count(),
                count(notices, this::losesSomething),
                count(notices, notice -> losesSomething(notice) && notice.isSent()),
                count(notices, notice -> standing(notice, DecisionOutcome.COUNT)));
    }

    private boolean losesSomething(Notice notice) {
        return standing(notice, DecisionOutcome.REJECT) || standing(notice, DecisionOutcome.COUNT_IN_PART);
    }

    /** Whether it tells of the decision that stands; one sent of a decision set aside is history. */
    private boolean standing(Notice notice, DecisionOutcome as) {
        Decision decision = decisions.get(notice.key().envelopeNo());
        return decision != null && notice.isOf(decision) && decision.as() == as;
    }

    private static int count(List<Notice> notices, Predicate<Notice> which) {
        return (int) notices.stream().filter(which).count();
    }
}
