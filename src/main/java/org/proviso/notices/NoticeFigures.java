package org.proviso.notices;

import java.util.List;
import java.util.Map;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.review.Decision;
import org.proviso.review.decide.DecisionService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Which envelopes have notices, for the figures of the canvass. */
@Service
@BetweenRooms
public class NoticeFigures {

    private final NoticeStore notices;
    private final DecisionService decisions;

    NoticeFigures(NoticeStore notices, DecisionService decisions) {
        this.notices = notices;
        this.decisions = decisions;
    }

    /**
     * Envelopes of which an ask ever came up: its notice is due, went out, or was withdrawn before it went out, because
     * the voter came first or nothing was to be asked any more.
     */
    @Transactional(readOnly = true)
    public List<EnvelopeNumber> asked(ElectionId electionId) {
        return notices.asked(electionId);
    }

    /** How many envelopes those are. */
    @Transactional(readOnly = true)
    public int askedCount(ElectionId electionId) {
        return notices.askedCount(electionId);
    }

    /** How many notices there are, due or sent, that a ballot does not count or counts in part, as the decision stands. */
    @Transactional(readOnly = true)
    public int outcomeCount(ElectionId electionId) {
        return notices.outcomeCount(electionId);
    }

    /** The envelope of each notice, due or sent, that a ballot does not count or counts in part, as the decision stands. */
    @Transactional(readOnly = true)
    public List<EnvelopeNumber> outcomes(ElectionId electionId) {
        Map<EnvelopeNumber, Decision> standing = decisions.standing(electionId);
        return notices.standing(electionId).stream()
                .filter(notice -> {
                    Decision decision = standing.get(notice.key().envelopeNo());
                    return decision != null && notice.isOf(decision) && decision.as() != DecisionOutcome.COUNT;
                })
                .map(notice -> notice.key().envelopeNo())
                .toList();
    }

    /** Envelopes rejected while an ask was still open, whose voters were never told what they could provide. */
    @Transactional(readOnly = true)
    public List<EnvelopeNumber> rejectedUntold(ElectionId electionId) {
        Map<EnvelopeNumber, Decision> standing = decisions.standing(electionId);
        return notices.withdrawnAsks(electionId).stream()
                .filter(notice -> {
                    Decision decision = standing.get(notice.key().envelopeNo());
                    return decision != null
                            && decision.as() == DecisionOutcome.REJECT
                            && notice.withdrawnSince(decision.decidedAt());
                })
                .map(notice -> notice.key().envelopeNo())
                .distinct()
                .toList();
    }
}
