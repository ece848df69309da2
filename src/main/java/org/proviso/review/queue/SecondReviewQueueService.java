package org.proviso.review.queue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.intake.IntakeService;
import org.proviso.review.assess.SecondLooks;
import org.proviso.review.file.FieldBeside;
import org.proviso.roll.RollService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What waits for the signed-in person's second look: never their own act. */
@Service
public class SecondReviewQueueService {

    private final SecondReviewQueueStore waiting;
    private final AccessService access;
    private final SecondLooks looks;
    private final RollService roll;
    private final IntakeService intake;

    SecondReviewQueueService(
            SecondReviewQueueStore waiting,
            AccessService access,
            SecondLooks looks,
            RollService roll,
            IntakeService intake) {
        this.waiting = waiting;
        this.access = access;
        this.looks = looks;
        this.roll = roll;
        this.intake = intake;
    }

    /** A page of other people's proposals waiting for second review, oldest first. */
    @Transactional(readOnly = true)
    public List<ProposalToReview> toRead(ElectionId electionId, int offset, int limit) {
        return waiting.toRead(
                electionId, access.demand(Permission.SECOND_REVIEW).userName(), offset, limit);
    }

    @Transactional(readOnly = true)
    public int toRead(ElectionId electionId) {
        return waiting.toRead(
                electionId, access.demand(Permission.SECOND_REVIEW).userName());
    }

    /** The next signature to look at after that envelope, a first look or somebody's second, without telling which. */
    @Transactional(readOnly = true)
    public Optional<SignatureToCompare> signature(ElectionId electionId, String after) {
        OfficeUser user = access.demand(Permission.ANSWER_QUESTIONS);
        String party = looks.isByTwoParties(electionId) ? user.party() : null;
        return waiting.signature(electionId, new SignatureLooker(user.userName(), party), after);
    }

    /** Up to so many links that the match is sure of, to be looked at in a list and confirmed together. */
    @Transactional(readOnly = true)
    public List<SureLink> sureLinks(ElectionId electionId, int limit) {
        access.demand(Permission.CONFIRM_LINK);
        List<SureLink> sure = waiting.sureLinks(electionId, limit);
        Map<VoterId, Voter> records =
                roll.voters(electionId, sure.stream().map(SureLink::voterId).toList());
        Map<EnvelopeNumber, Envelope> envelopes = intake
                .envelopes(
                        electionId,
                        sure.stream()
                                .map(link -> link.seen().key().envelopeNo())
                                .collect(Collectors.toSet()))
                .stream()
                .collect(Collectors.toMap(Envelope::envelopeNo, Function.identity()));
        return sure.stream()
                .map(link ->
                        link.with(beside(envelopes.get(link.seen().key().envelopeNo()), records.get(link.voterId()))))
                .toList();
    }

    /** Nobody settled these voters yet, so a protected address is shown on neither side. */
    private static List<FieldBeside> beside(@Nullable Envelope envelope, @Nullable Voter voter) {
        return envelope == null || voter == null
                ? List.of()
                : FieldBeside.of(envelope.affirmation(), voter, voter.confidential());
    }
}
