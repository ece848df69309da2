package org.proviso.status;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.board.BodyKind;
import org.proviso.core.Election;
import org.proviso.core.deciding.DeciderKind;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.ReasonText;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RulePack;
import org.proviso.core.rules.Rules;

/** What a look-up needs to know about an election and its rules. Reasons are in the words of its rule pack. */
record LookupElection(
        Election election,
        Optional<DeciderKind> decider,
        Optional<LocalDateTime> decisionBy,
        LaterIdentification papers,
        Set<Ask> untilTheMeeting,
        Map<Ask, List<String>> ways,
        Map<Reason, OwnReason> reasons,
        List<StatusSession> sessions) {

    static LookupElection of(Election election, DeadlineBook book, RulePack floor, List<StatusSession> sessions) {
        ResolvedPack pack = book.pack();
        return new LookupElection(
                election,
                pack.code(Rules.DECIDER, DeciderKind.class),
                book.of(Rules.DECISION).map(deadline -> deadline.lastMoment()),
                LaterIdentification.of(pack),
                Arrays.stream(Ask.values()).filter(book::waitsForTheMeeting).collect(Collectors.toUnmodifiableSet()),
                Arrays.stream(Ask.values())
                        .collect(Collectors.toMap(ask -> ask, ask -> pack.words(Rule.cureWays(ask)))),
                reasons(pack, floor),
                sessions);
    }

    private static Map<Reason, OwnReason> reasons(ResolvedPack pack, RulePack floor) {
        Map<Reason, OwnReason> reasons = new EnumMap<>(Reason.class);
        for (Reason reason : Reason.values()) {
            Optional<ReasonText> text = pack.text(reason);
            Optional<ReasonText> ofFloor = Optional.ofNullable(floor.reasons().get(reason));
            String words = text.map(ReasonText::notice).orElse("The reason: " + reason.words() + ".");
            reasons.put(reason, new OwnReason(reason, words, text.equals(ofFloor)));
        }
        return reasons;
    }

    /**
     * When what is open now, and may be cured until the last of these deadlines, is to be decided: the day of the first
     * session after that (of two bodies, of the later one), or else the day by which the rules want it.
     */
    Optional<PlannedDecision> planned(List<VoterAsk> asks, LocalDateTime now) {
        if (decider.isEmpty()) {
            return Optional.empty();
        }
        LocalDateTime cured = asks.stream()
                .flatMap(ask -> Optional.ofNullable(ask.until()).stream())
                .max(Comparator.naturalOrder())
                .orElse(now.toLocalDate().atStartOfDay());
        List<BodyKind> bodies = BodyKind.forDecider(decider.get());
        List<LocalDate> days = bodies.stream()
                .flatMap(body -> first(body, cured, now).stream())
                .toList();
        if (days.size() == bodies.size()) {
            return days.stream()
                    .max(Comparator.naturalOrder())
                    .map(day -> new PlannedDecision(decider.get(), day, true));
        }
        return decisionBy
                .filter(until -> !now.isAfter(until))
                .map(until -> new PlannedDecision(decider.get(), until.toLocalDate(), false));
    }

    private Optional<LocalDate> first(BodyKind body, LocalDateTime cured, LocalDateTime now) {
        return sessions.stream()
                .filter(session -> session.body() == body && session.isAhead(now))
                .map(StatusSession::calledFor)
                .filter(calledFor -> !calledFor.isBefore(cured))
                .min(Comparator.naturalOrder())
                .map(LocalDateTime::toLocalDate);
    }
}
