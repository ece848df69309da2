package org.proviso.canvass;

import java.util.ArrayList;
import java.util.List;
import org.proviso.board.record.BoardReplay;
import org.proviso.election.ElectionService;
import org.proviso.intake.cure.CureReplay;
import org.proviso.ledger.Compared;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.ledger.LedgerVerdict;
import org.proviso.release.ReleaseReplay;
import org.proviso.review.replay.AssessmentReplay;
import org.proviso.review.replay.CaseReplay;
import org.proviso.review.replay.ReplayVerdict;
import org.springframework.stereotype.Service;

/**
 * Replays an election: follows its chain, compares each room's tables with it, and makes every assessment again. Tables
 * are the truth, the ledger proves them. It reads and changes nothing, and names nobody. Not in one transaction: each
 * part sees one moment, and people may go on working.
 */
@Service
public class ReplayService {

    private final ElectionService elections;
    private final LedgerService ledger;
    private final CureReplay cures;
    private final CaseReplay cases;
    private final AssessmentReplay assessments;
    private final BoardReplay board;
    private final ReleaseReplay release;

    ReplayService(
            ElectionService elections,
            LedgerService ledger,
            CureReplay cures,
            CaseReplay cases,
            AssessmentReplay assessments,
            BoardReplay board,
            ReleaseReplay release) {
        this.elections = elections;
        this.ledger = ledger;
        this.cures = cures;
        this.cases = cases;
        this.assessments = assessments;
        this.board = board;
        this.release = release;
    }

    /** The verdict on one election; {@link IllegalArgumentException} where the office has none of that name. */
    public OfficeReplay of(String electionId) {
        elections.zone(electionId);
        LedgerVerdict chain = ledger.verify(LedgerChain.of(electionId));
        List<Compared> compared = new ArrayList<>();
        if (chain.isWhole()) {
            compared.add(cures.of(electionId));
            compared.add(cases.of(electionId));
            compared.add(board.of(electionId));
            compared.add(release.of(electionId));
        }
        compared.add(again(assessments.of(electionId)));
        return new OfficeReplay(electionId, chain, compared);
    }

    private static Compared again(ReplayVerdict verdict) {
        List<String> first = verdict.first().stream()
                .map(one -> "Envelope " + one.envelopeNo() + ": assessment " + one.number() + " ("
                        + one.way().code() + ") does not come out again: " + one.why() + ".")
                .toList();
        long all = verdict.agreeing() + verdict.differing() + verdict.ofAnotherEngine();
        return new Compared("assessments made again", all, verdict.differing(), first);
    }
}
