package org.proviso.intake;

import java.util.List;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.Act;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Pictures of signatures, for those who compare them: reviewers, and the deciding body with the whole case before it. */
@Service
public class ImageService {

    private final ImageStore images;
    private final AccessService access;

    ImageService(ImageStore images, AccessService access) {
        this.images = images;
        this.access = access;
    }

    /** The signature on an envelope's affirmation, where there is a picture of it. */
    @Transactional(readOnly = true)
    public Optional<StoredImage> signature(String electionId, String envelopeNo) {
        demand();
        return images.signature(electionId, envelopeNo);
    }

    /** The same picture for whoever keys the envelope, who has its paper in hand. */
    @Transactional(readOnly = true)
    public Optional<StoredImage> whileKeying(String electionId, String envelopeNo) {
        access.demand(Act.KEY_ENVELOPES);
        return images.signature(electionId, envelopeNo);
    }

    /** The signatures on file with a voter's registration, in the order of their numbers. */
    @Transactional(readOnly = true)
    public List<StoredImage> exemplars(String electionId, String voterId) {
        demand();
        return images.exemplars(electionId, voterId);
    }

    private void demand() {
        if (!access.may(Act.PROPOSE) && !access.may(Act.SECOND_REVIEW)) {
            access.demand(Act.SEE_WHOLE_CASE);
        }
    }
}
