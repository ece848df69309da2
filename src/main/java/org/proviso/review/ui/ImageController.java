package org.proviso.review.ui;

import java.util.List;
import java.util.Optional;
import org.proviso.access.NotPermittedException;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.VoterId;
import org.proviso.intake.ImageService;
import org.proviso.intake.StoredImage;
import org.proviso.intake.cure.CureScanService;
import org.proviso.review.file.ExemplarService;
import org.springframework.http.CacheControl;
import org.springframework.http.HttpStatus;
import org.springframework.http.MediaType;
import org.springframework.http.ResponseEntity;
import org.springframework.stereotype.Controller;
import org.springframework.web.bind.annotation.ExceptionHandler;
import org.springframework.web.bind.annotation.GetMapping;
import org.springframework.web.bind.annotation.PathVariable;

/** Pictures of signatures and of what voters brought, for people who may see the case. They are never cached. */
@Controller
class ImageController {

    private final ImageService images;
    private final ExemplarService exemplars;
    private final CureScanService scans;

    ImageController(ImageService images, ExemplarService exemplars, CureScanService scans) {
        this.scans = scans;
        this.images = images;
        this.exemplars = exemplars;
    }

    @GetMapping("/images/{election}/{envelope}/signature")
    ResponseEntity<byte[]> signature(@PathVariable String election, @PathVariable String envelope) {
        return answer(images.signature(new ElectionId(election), new EnvelopeNumber(envelope)));
    }

    /** The signature on file of the voter that the envelope is linked or presumed linked to, by its place from 0. */
    @GetMapping("/images/{election}/{envelope}/on-file/{place}")
    ResponseEntity<byte[]> onFile(
            @PathVariable String election, @PathVariable String envelope, @PathVariable int place) {
        List<StoredImage> all =
                exemplars.ofPresumedVoter(new EnvelopeKey(new ElectionId(election), new EnvelopeNumber(envelope)));
        return answer(at(place, all));
    }

    /** A signature on file of one voter whom the envelope may belong to, by the record's id and its place from 0. */
    @GetMapping("/images/{election}/{envelope}/of/{voter}/{place}")
    ResponseEntity<byte[]> ofPossibleVoter(
            @PathVariable String election,
            @PathVariable String envelope,
            @PathVariable String voter,
            @PathVariable int place) {
        EnvelopeKey key = new EnvelopeKey(new ElectionId(election), new EnvelopeNumber(envelope));
        return answer(at(place, exemplars.ofPossibleVoter(key, new VoterId(voter))));
    }

    private static Optional<StoredImage> at(int place, List<StoredImage> all) {
        return place < 0 || place >= all.size() ? Optional.empty() : Optional.of(all.get(place));
    }

    /** A scan or photo of what the voter brought. */
    @GetMapping("/images/{election}/{envelope}/evidence/{cure}/{scan}")
    ResponseEntity<byte[]> evidence(
            @PathVariable String election,
            @PathVariable String envelope,
            @PathVariable int cure,
            @PathVariable int scan) {
        return answer(scans.scan(new ElectionId(election), new EnvelopeNumber(envelope), cure, scan));
    }

    @ExceptionHandler(NotPermittedException.class)
    ResponseEntity<Void> refused() {
        return ResponseEntity.status(HttpStatus.FORBIDDEN)
                .cacheControl(CacheControl.noStore())
                .build();
    }

    private static ResponseEntity<byte[]> answer(Optional<StoredImage> found) {
        return found.map(image -> ResponseEntity.ok()
                        .cacheControl(CacheControl.noStore())
                        .contentType(MediaType.parseMediaType(image.mediaType()))
                        .body(image.content()))
                .orElseGet(() -> ResponseEntity.status(HttpStatus.NOT_FOUND)
                        .cacheControl(CacheControl.noStore())
                        .build());
    }
}
