package org.proviso.roll;

import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.VoterId;
import org.springframework.stereotype.Component;

/** How two lists differ about one voter. */
@Component
class DifferenceWords {

    private final VoterStore voters;
    private final VotingRecordStore records;

    DifferenceWords(VoterStore voters, VotingRecordStore records) {
        this.voters = voters;
        this.records = records;
    }

    List<String> of(ElectionId id, SnapshotKind kind, VoterId voterId, int from, int to) {
        return switch (kind) {
            case ROLL ->
                RollDifferences.between(
                        voters.find(id, from, voterId).orElse(null),
                        voters.find(id, to, voterId).orElse(null));
            case MAIL_BALLOTS ->
                BallotDifferences.between(records.mailBallots(id, from, voterId), records.mailBallots(id, to, voterId));
            case CHECK_INS ->
                CheckInDifferences.between(records.checkIns(id, from, voterId), records.checkIns(id, to, voterId));
            case VOTED_ELSEWHERE -> throw new IllegalArgumentException("the state's list names no voter");
        };
    }
}
