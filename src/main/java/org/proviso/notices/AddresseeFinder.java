package org.proviso.notices;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.matching.Candidate;
import org.proviso.review.acts.VoterLinks;
import org.proviso.roll.RollService;
import org.springframework.stereotype.Component;

/** Finds whom to write to about an envelope. */
@Component
class AddresseeFinder {

    private final VoterLinks links;
    private final RollService roll;

    AddresseeFinder(VoterLinks links, RollService roll) {
        this.links = links;
        this.roll = roll;
    }

    Addressee of(ElectionId electionId, Envelope envelope) {
        return Objects.requireNonNull(
                of(electionId, List.of(envelope)).get(envelope.envelopeNo()),
                "every envelope has somebody to write to");
    }

    /** The same of several envelopes, by envelope number. */
    Map<EnvelopeNumber, Addressee> of(ElectionId electionId, Collection<Envelope> envelopes) {
        Map<EnvelopeNumber, Link> newest = links.newest(
                electionId, envelopes.stream().map(Envelope::envelopeNo).toList());
        Map<VoterId, Voter> voters = roll.voters(
                electionId,
                newest.values().stream().flatMap(AddresseeFinder::perhaps).collect(Collectors.toSet()));
        Map<EnvelopeNumber, Addressee> addressees = new HashMap<>();
        for (Envelope envelope : envelopes) {
            Link link = Optional.ofNullable(newest.get(envelope.envelopeNo())).orElseThrow();
            Optional<Voter> settled = Optional.ofNullable(link.voterId())
                    .filter(id -> link.isSettled())
                    .map(voters::get);
            boolean isProtected = perhaps(link)
                    .flatMap(id -> Stream.ofNullable(voters.get(id)))
                    .anyMatch(Voter::confidential);
            addressees.put(envelope.envelopeNo(), new Addressee(envelope.affirmation(), settled, isProtected));
        }
        return addressees;
    }

    /** Everybody who may be the voter, by voter id. */
    private static Stream<VoterId> perhaps(Link link) {
        return Stream.concat(
                Stream.ofNullable(link.voterId()), link.candidates().stream().map(Candidate::voterId));
    }
}
