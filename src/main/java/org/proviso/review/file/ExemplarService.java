package org.proviso.review.file;

import java.util.List;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.intake.ImageService;
import org.proviso.intake.StoredImage;
import org.proviso.review.facts.LinkStore;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** The signatures on file that the one on an envelope is compared with. */
@Service
public class ExemplarService {

    private final LinkStore links;
    private final PossibleVoters voters;
    private final ImageService images;
    private final AccessService access;

    ExemplarService(LinkStore links, PossibleVoters voters, ImageService images, AccessService access) {
        this.links = links;
        this.voters = voters;
        this.images = images;
        this.access = access;
    }

    /** Those of the voter that the envelope is linked or presumed linked to, in the order of their numbers. */
    @Transactional(readOnly = true)
    public List<StoredImage> ofPresumedVoter(EnvelopeKey key) {
        demand();
        return links.newest(key)
                .flatMap(link -> Optional.ofNullable(link.voterId()))
                .map(voter -> images.exemplars(key.electionId(), voter))
                .orElse(List.of());
    }

    /** Those of one voter whom the envelope may belong to, in the order of their numbers; none of anybody else's. */
    @Transactional(readOnly = true)
    public List<StoredImage> ofPossibleVoter(EnvelopeKey key, VoterId voterId) {
        demand();
        return voters.idsOf(key).contains(voterId) ? images.exemplars(key.electionId(), voterId) : List.of();
    }

    /** What is looked at on a page of its own: the envelope's signature and those of everybody who may be the voter. */
    @Transactional(readOnly = true)
    public SignaturesToCompare toCompare(EnvelopeKey key) {
        demand();
        VoterId named = links.newest(key).map(Link::voterId).orElse(null);
        List<SignaturesToCompare.OnFile> onFile = voters.idsOf(key).stream()
                .map(voterId -> new SignaturesToCompare.OnFile(
                        voterId,
                        voterId.equals(named),
                        images.exemplars(key.electionId(), voterId).stream()
                                .map(SignaturePicture::of)
                                .toList()))
                .toList();
        return new SignaturesToCompare(
                images.signature(key.electionId(), key.envelopeNo()).map(SignaturePicture::of), onFile);
    }

    private void demand() {
        if (!access.isPermitted(Permission.PROPOSE) && !access.isPermitted(Permission.SECOND_REVIEW)) {
            access.demand(Permission.SEE_WHOLE_CASE);
        }
    }
}
