package org.proviso.review.news;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.access.ActDoor;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.Rules;
import org.proviso.election.ElectionService;
import org.proviso.ledger.Actor;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.facts.DeadlineStore;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Deadlines that pass. That one passed is itself an act, recorded once, whichever node sees it first; the cases that
 * waited for it are assessed again in the same transaction. One that was moved passes again at its new moment.
 */
@Service
@BetweenRooms
public class DeadlineService {

    private static final Set<CaseState> UNDECIDED =
            EnumSet.of(CaseState.OPEN, CaseState.IN_REVIEW, CaseState.PROPOSED, CaseState.READY);

    private final DeadlineStore deadlines;
    private final CaseStore cases;
    private final CaseRecheck watch;
    private final CaseActSteps desk;
    private final ElectionService elections;
    private final ActDoor door;

    DeadlineService(
            DeadlineStore deadlines,
            CaseStore cases,
            CaseRecheck watch,
            CaseActSteps desk,
            ElectionService elections,
            ActDoor door) {
        this.deadlines = deadlines;
        this.cases = cases;
        this.watch = watch;
        this.desk = desk;
        this.elections = elections;
        this.door = door;
    }

    /** Records the deadlines of an election that passed since the last look; the cases of which this changes what is said. */
    @Transactional
    public List<CaseDifference> recordPassedDeadlines(ElectionId electionId) {
        if (elections.isClosed(electionId)) {
            return List.of();
        }
        LocalDateTime now = desk.now(electionId);
        Map<Rule, Deadline> passed = newlyPassed(desk.book(electionId), deadlines.passed(electionId), now);
        if (passed.isEmpty()) {
            return List.of();
        }
        passed.forEach((rule, deadline) -> deadlines.insert(electionId, rule.key(), deadline.lastMoment()));
        List<String> because = passed.keySet().stream()
                .map(rule -> "Passed: " + rule.meaning() + ".")
                .toList();
        List<EnvelopeKey> waiting = cases.all(electionId).stream()
                .filter(envelopeCase -> UNDECIDED.contains(envelopeCase.state()))
                .map(EnvelopeCase::key)
                .toList();
        Map<EnvelopeKey, List<String>> reasons = new LinkedHashMap<>();
        waiting.forEach(key -> reasons.put(key, because));
        List<CaseDifference> differences = watch.lookAgain(waiting, Actor.SYSTEM, reasons);
        passed.forEach((rule, deadline) -> door.record(
                Actor.SYSTEM,
                LedgerLine.of(
                        LedgerChain.of(electionId),
                        "deadline_passed",
                        rule.key(),
                        Map.of("last_moment", deadline.lastMoment().toString()))));
        return differences;
    }

    private static Map<Rule, Deadline> newlyPassed(
            DeadlineBook book, Set<DeadlineStore.Passed> known, LocalDateTime now) {
        Map<Rule, Deadline> passed = new LinkedHashMap<>();
        for (Rule rule : watched()) {
            book.of(rule)
                    .filter(deadline -> deadline.hasPassed(now)
                            && !known.contains(new DeadlineStore.Passed(rule.key(), deadline.lastMoment())))
                    .ifPresent(deadline -> passed.put(rule, deadline));
        }
        return passed;
    }

    private static List<Rule> watched() {
        List<Rule> watched = new ArrayList<>(List.of(Rules.MAIL_RECEIPT, Rules.DECISION, Rules.CERTIFICATION));
        for (Ask ask : Ask.values()) {
            watched.add(Rule.cure(ask));
            watched.add(Rule.notice(ask));
        }
        return watched;
    }
}
