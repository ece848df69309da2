package org.proviso.review.assess;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.WaitingForRuling;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.UnsourcedValues;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The work list of county rulings: which values of the pack in force are open, and which envelopes wait for each. */
@Service
public class RulingWorkService {

    private final CurrentCaseReports reports;
    private final AssessmentService assessments;
    private final AccessService access;

    RulingWorkService(CurrentCaseReports reports, AssessmentService assessments, AccessService access) {
        this.reports = reports;
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
        ResolvedPack pack = reports.book(electionId).pack();
        LocalDateTime asOf = reports.now(electionId);
        Map<Rule, List<EnvelopeNumber>> waiting = new LinkedHashMap<>();
        reports.unsettled(electionId, reports.book(electionId), asOf)
                .forEach((key, report) -> WaitingForRuling.rulesToRuleOn(report, pack)
                        .forEach(rule -> waiting.computeIfAbsent(rule, any -> new ArrayList<>())
                                .add(key.envelopeNo())));
        Stream<Rule> rules = Stream.concat(
                        waiting.keySet().stream(),
                        UnsourcedValues.of(pack).stream().map(given -> given.rule()))
                .distinct();
        return rules.map(rule -> new RulingTask(
                        pack.of(rule),
                        UnsourcedValues.question(pack.of(rule), pack.electionDate()),
                        waiting.getOrDefault(rule, List.of())))
                .sorted(Comparator.comparingInt(task -> -task.envelopeNos().size()))
                .toList();
    }
}
