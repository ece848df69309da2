package org.proviso.canvass.outcomes;

import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.canvass.outcomes.EnvelopeOutcomes.End;
import org.proviso.core.ElectionId;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.election.ElectionService;
import org.proviso.review.CaseState;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Tells where the envelopes of an election went, for whoever may read figures. */
@Service
public class EnvelopeOutcomesService {

    private final EnvelopeGroups groups;
    private final ElectionService elections;
    private final AccessService access;

    EnvelopeOutcomesService(EnvelopeGroups groups, ElectionService elections, AccessService access) {
        this.groups = groups;
        this.elections = elections;
        this.access = access;
    }

    @Transactional(readOnly = true)
    public EnvelopeOutcomes outcomes(ElectionId electionId) {
        access.demand(Permission.READ_FIGURES);
        Map<String, Map<End, Integer>> rows = new TreeMap<>();
        Map<Reason, Integer> rejections = new EnumMap<>(Reason.class);
        for (EnvelopeGroup group : groups.of(elections.find(electionId).orElseThrow())) {
            rows.computeIfAbsent(issued(group), any -> new EnumMap<>(End.class))
                    .merge(end(group.state(), group.outcome()), group.number(), Integer::sum);
            if (group.isRejectedForAReason()) {
                rejections.merge(group.reasons().get(0), group.number(), Integer::sum);
            }
        }
        return new EnvelopeOutcomes(rows, rejections);
    }

    private static End end(@Nullable CaseState state, @Nullable DecisionOutcome outcome) {
        if (state == CaseState.SENT_ON) {
            return End.SENT_ON;
        }
        if (state == CaseState.ENDED) {
            return End.ENDED;
        }
        if (state == null || outcome == null) {
            return End.NOT_YET;
        }
        return switch (outcome) {
            case COUNT -> End.COUNTED;
            case COUNT_IN_PART -> End.IN_PART;
            case REJECT -> End.REJECTED;
        };
    }

    /** The first one given, as the survey counts each envelope once. */
    private static String issued(EnvelopeGroup group) {
        return group.issueReasons().stream().findFirst().map(DateWords::code).orElse("no reason given");
    }
}
