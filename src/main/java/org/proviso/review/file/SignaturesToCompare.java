package org.proviso.review.file;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.proviso.core.VoterId;

/** The signature on an envelope and those on file of everybody who may be its voter, the linked or presumed one first. */
public record SignaturesToCompare(Optional<SignaturePicture> onEnvelope, List<OnFile> voters) {

    /** The signatures on file of one voter; {@code named}: the envelope is linked or presumed linked to this one. */
    public record OnFile(VoterId voterId, boolean named, List<SignaturePicture> pictures) {}

    /** The width of the widest picture: at one scale it fills its frame. */
    public int widest() {
        return Stream.concat(onEnvelope.stream(), voters.stream().flatMap(voter -> voter.pictures().stream()))
                .mapToInt(SignaturePicture::width)
                .max()
                .orElse(0);
    }
}
