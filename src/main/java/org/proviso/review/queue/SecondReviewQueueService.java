package org.proviso.review.queue;

import java.util.List;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.review.assess.SecondLooks;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What waits for the signed-in person's second look: never their own act. */
@Service
public class SecondReviewQueueService {

    private final SecondReviewQueueStore waiting;
    private final AccessService access;
    private final SecondLooks looks;

    SecondReviewQueueService(SecondReviewQueueStore waiting, AccessService access, SecondLooks looks) {
        this.waiting = waiting;
        this.access = access;
        this.looks = looks;
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
        return waiting.sureLinks(electionId, limit);
    }
}
