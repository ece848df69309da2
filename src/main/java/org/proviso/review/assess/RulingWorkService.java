package org.proviso.review.assess;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.WaitingForRuling;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.UnsourcedValues;
import org.proviso.review.CaseState;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The work list of county rulings: which values of the pack in force are open, and which envelopes wait for each. */
@Service
public class RulingWorkService {

    /** Cases that nobody has settled and whose envelope is keyed. */
    private static final Set<CaseState> UNSETTLED =
            EnumSet.of(CaseState.OPEN, CaseState.IN_REVIEW, CaseState.PROPOSED, CaseState.READY);

    /** So many envelopes of a value are named; the others are counted. */
    private static final int NAMED = 8;

    private final CurrentCaseReports reports;
    private final RulingWaitStore waits;
    private final AssessmentService assessments;
    private final AccessService access;

    RulingWorkService(
            CurrentCaseReports reports, RulingWaitStore waits, AssessmentService assessments, AccessService access) {
        this.reports = reports;
        this.waits = waits;
        this.assessments = assessments;
        this.access = access;
    }

    /** Settled cases that were assessed under other rules than those in force; they keep the rules they had. */
    @Transactional(readOnly = true)
    public List<StaleCase> staleCases(ElectionId electionId) {
        access.demand(Permission.READ_FIGURES);
        return assessments.stale(electionId);
    }

    /** Those for which most envelopes wait first; then the others, in the order of the vocabulary. */
    @Transactional(readOnly = true)
    public List<RulingTask> tasks(ElectionId electionId) {
        access.demand(Permission.SIGN_RULINGS);
        DeadlineBook book = reports.book(electionId);
        ResolvedPack pack = book.pack();
        Map<Rule, Waiting> waiting = new LinkedHashMap<>();
        foundAnew(electionId, book)
                .forEach((number, rules) -> rules.forEach(rule ->
                        waiting.computeIfAbsent(rule, any -> new Waiting()).add(number)));
        waits.waiting(electionId, pack.hash(), UNSETTLED, NAMED)
                .forEach(wait -> wait.waitingRules()
                        .forEach(key -> waiting.computeIfAbsent(rule(key), any -> new Waiting())
                                .add(wait)));
        List<Rule> byFirst = waiting.entrySet().stream()
                .sorted(Comparator.comparing(entry -> entry.getValue().numbers.first()))
                .map(Map.Entry::getKey)
                .toList();
        return Stream.concat(byFirst.stream(), UnsourcedValues.of(pack).stream().map(given -> given.rule()))
                .distinct()
                .map(rule -> task(rule, pack, waiting.getOrDefault(rule, new Waiting())))
                .sorted(Comparator.comparingInt(task -> -task.waiting()))
                .toList();
    }

    private static Rule rule(String key) {
        return Rule.find(key).orElseThrow();
    }

    private static RulingTask task(Rule rule, ResolvedPack pack, Waiting waiting) {
        return new RulingTask(
                pack.of(rule),
                UnsourcedValues.question(pack.of(rule), pack.electionDate()),
                waiting.number,
                waiting.numbers.stream().limit(NAMED).toList());
    }

    /** What nobody noted under the rules in force: cases from before it was noted, or of rules changed meanwhile. */
    private SortedMap<EnvelopeNumber, Set<Rule>> foundAnew(ElectionId electionId, DeadlineBook book) {
        List<EnvelopeKey> wanted = waits.ofOtherRules(electionId, book.pack().hash(), UNSETTLED).stream()
                .map(number -> new EnvelopeKey(electionId, number))
                .toList();
        SortedMap<EnvelopeNumber, Set<Rule>> found = new TreeMap<>();
        reports.reports(electionId, wanted, book, reports.now(electionId))
                .forEach((key, report) ->
                        found.put(key.envelopeNo(), WaitingForRuling.rulesToRuleOn(report, book.pack())));
        return found;
    }

    /** How many envelopes wait for a rule, and those of them that are known by their numbers. */
    private static final class Waiting {

        private final SortedSet<EnvelopeNumber> numbers = new TreeSet<>();
        private final Set<List<String>> counted = new HashSet<>();
        private int number;

        void add(EnvelopeNumber envelopeNo) {
            number++;
            numbers.add(envelopeNo);
        }

        /** Each row of a list of rules has the number of all its cases. */
        void add(RulingWaitStore.Wait wait) {
            number += counted.add(wait.waitingRules()) ? wait.number() : 0;
            numbers.add(wait.envelopeNo());
        }
    }
}
