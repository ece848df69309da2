package org.proviso.canvass.outcomes;

import java.util.EnumMap;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.canvass.outcomes.EnvelopeOutcomes.End;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.intake.CastEnvelope;
import org.proviso.intake.IntakeService;
import org.proviso.review.CaseService;
import org.proviso.review.CaseState;
import org.proviso.review.Decision;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.decide.DecisionService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Tells where the envelopes of an election went, for whoever may read figures. */
@Service
public class EnvelopeOutcomesService {

    private final IntakeService intake;
    private final CaseService cases;
    private final DecisionService decisions;
    private final AccessService access;

    EnvelopeOutcomesService(IntakeService intake, CaseService cases, DecisionService decisions, AccessService access) {
        this.intake = intake;
        this.cases = cases;
        this.decisions = decisions;
        this.access = access;
    }

    @Transactional(readOnly = true)
    public EnvelopeOutcomes outcomes(ElectionId electionId) {
        access.demand(Permission.READ_FIGURES);
        Map<EnvelopeNumber, Decision> standing = decisions.standing(electionId);
        Map<EnvelopeNumber, End> ends = new TreeMap<>();
        for (EnvelopeCase envelopeCase : cases.all(electionId)) {
            ends.put(
                    envelopeCase.key().envelopeNo(),
                    end(envelopeCase.state(), standing.get(envelopeCase.key().envelopeNo())));
        }
        Map<String, Map<End, Integer>> rows = new TreeMap<>();
        for (CastEnvelope envelope : intake.castEnvelopes(electionId)) {
            rows.computeIfAbsent(issued(envelope), any -> new EnumMap<>(End.class))
                    .merge(ends.getOrDefault(envelope.envelopeNo(), End.NOT_YET), 1, Integer::sum);
        }
        return new EnvelopeOutcomes(rows, rejections(standing));
    }

    private static Map<Reason, Integer> rejections(Map<EnvelopeNumber, Decision> standing) {
        Map<Reason, Integer> rejections = new EnumMap<>(Reason.class);
        standing.values().stream()
                .filter(decision -> decision.as() == DecisionOutcome.REJECT)
                .map(decision -> decision.reasons())
                .filter(reasons -> !reasons.isEmpty())
                .forEach(reasons -> rejections.merge(reasons.get(0), 1, Integer::sum));
        return rejections;
    }

    private static End end(CaseState state, @Nullable Decision decision) {
        if (state == CaseState.SENT_ON) {
            return End.SENT_ON;
        }
        if (state == CaseState.ENDED) {
            return End.ENDED;
        }
        if (decision == null) {
            return End.NOT_YET;
        }
        return switch (decision.as()) {
            case COUNT -> End.COUNTED;
            case COUNT_IN_PART -> End.IN_PART;
            case REJECT -> End.REJECTED;
        };
    }

    /** The first one given, as the survey counts each envelope once. */
    private static String issued(CastEnvelope envelope) {
        return envelope.issueReasons().stream().findFirst().map(DateWords::code).orElse("no reason given");
    }
}
