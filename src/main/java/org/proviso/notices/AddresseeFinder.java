package org.proviso.notices;

import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Envelope;
import org.proviso.core.Voter;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.matching.Candidate;
import org.proviso.review.CaseKey;
import org.proviso.review.acts.LinkService;
import org.proviso.roll.RollService;
import org.springframework.stereotype.Component;

/** Finds whom to write to about an envelope. */
@Component
class AddresseeFinder {

    private final LinkService links;
    private final RollService roll;

    AddresseeFinder(LinkService links, RollService roll) {
        this.links = links;
        this.roll = roll;
    }

    Addressee of(String electionId, Envelope envelope) {
        Link link = links.link(new CaseKey(electionId, envelope.envelopeNo())).orElseThrow();
        Optional<Voter> voter = voter(electionId, link.voterId());
        boolean isProtected = Stream.concat(
                        voter.stream(),
                        link.candidates().stream()
                                .map(Candidate::voterId)
                                .flatMap(candidate -> voter(electionId, candidate).stream()))
                .anyMatch(Voter::confidential);
        return new Addressee(envelope.affirmation(), voter.filter(known -> link.isSettled()), isProtected);
    }

    private Optional<Voter> voter(String electionId, @Nullable String voterId) {
        return Optional.ofNullable(voterId).flatMap(id -> roll.voter(electionId, id));
    }
}
