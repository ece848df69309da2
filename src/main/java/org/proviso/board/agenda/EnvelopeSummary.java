package org.proviso.board.agenda;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.board.ProposalForDecision;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.review.CaseState;

/**
 * An envelope as a decider reads it in a few lines: whose it is, where and why it was cast, what the rules say now and
 * from what evidence, whether a record says that the voter has voted already, and what is proposed, by whom (null where
 * nothing is). {@code chosen} says on what ground a person chose the voter, where one was needed. {@code contests} are those
 * of the ballot cast, by id, with their titles.
 */
public record EnvelopeSummary(
        EnvelopeNumber envelopeNo,
        int version,
        CaseState state,
        String voter,
        String votingLocation,
        List<String> issueReasons,
        Recommendation now,
        boolean knownToHaveVoted,
        List<String> explanation,
        @Nullable ProposalForDecision proposed,
        String proposedBy,
        String secondReadBy,
        Optional<ChosenVoter> chosen,
        Map<String, String> contests) {

    /** Who chose the voter (full name), when (county time), and on what ground as typed. */
    public record ChosenVoter(String by, LocalDateTime at, String ground) {}
}
