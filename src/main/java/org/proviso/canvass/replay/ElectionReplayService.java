package org.proviso.canvass.replay;

import java.util.ArrayList;
import java.util.List;
import org.proviso.board.record.BoardReplay;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.election.ElectionService;
import org.proviso.intake.correction.CorrectionReplay;
import org.proviso.intake.cure.CureReplay;
import org.proviso.intake.numbers.NumberCheckReplay;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.ledger.LedgerVerdict;
import org.proviso.ledger.TableComparison;
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
@BetweenRooms
public class ElectionReplayService {

    private final ElectionService elections;
    private final LedgerService ledger;
    private final CureReplay cures;
    private final NumberCheckReplay numbers;
    private final CorrectionReplay corrections;
    private final CaseReplay cases;
    private final AssessmentReplay assessments;
    private final BoardReplay board;
    private final ReleaseReplay release;

    ElectionReplayService(
            ElectionService elections,
            LedgerService ledger,
            CureReplay cures,
            NumberCheckReplay numbers,
            CorrectionReplay corrections,
            CaseReplay cases,
            AssessmentReplay assessments,
            BoardReplay board,
            ReleaseReplay release) {
        this.elections = elections;
        this.ledger = ledger;
        this.cures = cures;
        this.numbers = numbers;
        this.corrections = corrections;
        this.cases = cases;
        this.assessments = assessments;
        this.board = board;
        this.release = release;
    }

    /** The verdict on one election; {@link IllegalArgumentException} where the office has none of that name. */
    public ElectionReplayVerdict replay(ElectionId electionId) {
        elections.zone(electionId);
        LedgerVerdict chain = ledger.verify(LedgerChain.of(electionId));
        List<TableComparison> compared = new ArrayList<>();
        if (chain.isWhole()) {
            compared.add(cures.replay(electionId));
            compared.add(numbers.replay(electionId));
            compared.add(corrections.replay(electionId));
            compared.add(cases.replay(electionId));
            compared.add(board.replay(electionId));
            compared.add(release.replay(electionId));
        }
        compared.add(again(assessments.replay(electionId)));
        return new ElectionReplayVerdict(electionId, chain, compared);
    }

    private static TableComparison again(ReplayVerdict verdict) {
        List<String> first = verdict.first().stream()
                .map(difference -> "Envelope " + difference.envelopeNo() + ": assessment " + difference.number() + " ("
                        + difference.way().code() + ") does not come out again: " + difference.why() + ".")
                .toList();
        long all = verdict.agreeing() + verdict.differing() + verdict.ofAnotherEngine();
        return new TableComparison("assessments made again", all, verdict.differing(), first);
    }
}
