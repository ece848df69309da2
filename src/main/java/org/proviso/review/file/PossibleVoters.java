package org.proviso.review.file;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.finding.Records;
import org.proviso.core.matching.Candidate;
import org.proviso.intake.ImageService;
import org.proviso.review.facts.LinkStore;
import org.springframework.stereotype.Component;

/** Who the voter of an envelope may be, each record beside what the envelope says. */
@Component
class PossibleVoters {

    /** A candidate below one percent does not help the reviewer choose. */
    private static final double WORTH_A_LOOK = 0.01;

    private final LinkStore links;
    private final ImageService images;

    PossibleVoters(LinkStore links, ImageService images) {
        this.links = links;
        this.images = images;
    }

    /** The linked or presumed voter first, then every candidate worth a look, those not chosen among them. */
    List<PossibleVoter> of(EnvelopeKey key, CaseReport report, Records all) {
        Link link = report.link();
        List<PossibleVoter> voters = new ArrayList<>();
        report.voter().ifPresent(voter -> voters.add(named(key, report.envelope(), link, voter)));
        for (Candidate candidate : candidates(key, link)) {
            if (!candidate.voterId().equals(link.voterId())) {
                all.voter(candidate.voterId())
                        .ifPresent(voter -> voters.add(candidate(key, report.envelope(), candidate, voter)));
            }
        }
        return List.copyOf(voters);
    }

    /** The record ids of all of them: whose signatures may be looked at with this envelope. */
    Set<VoterId> idsOf(EnvelopeKey key) {
        Set<VoterId> ids = new LinkedHashSet<>();
        links.newest(key).ifPresent(link -> {
            if (link.voterId() != null) {
                ids.add(link.voterId());
            }
            candidates(key, link).forEach(candidate -> ids.add(candidate.voterId()));
        });
        return ids;
    }

    /** A person's choice has no candidates of its own: they are those of the match it was made from. */
    private List<Candidate> candidates(EnvelopeKey key, Link link) {
        Link matched = link.isSettled() ? links.presumed(key).orElse(link) : link;
        return matched.candidates().stream()
                .filter(candidate -> candidate.probability() >= WORTH_A_LOOK)
                .toList();
    }

    private PossibleVoter named(EnvelopeKey key, Envelope envelope, Link link, Voter voter) {
        boolean settled = link.isSettled();
        return new PossibleVoter(
                voter,
                link.probability(),
                link.likeness(),
                settled,
                !settled,
                fields(envelope, voter, settled),
                onFile(key, voter));
    }

    private PossibleVoter candidate(EnvelopeKey key, Envelope envelope, Candidate candidate, Voter voter) {
        return new PossibleVoter(
                voter,
                candidate.probability(),
                candidate.evidence(),
                false,
                false,
                fields(envelope, voter, false),
                onFile(key, voter));
    }

    private static List<FieldBeside> fields(Envelope envelope, Voter voter, boolean settled) {
        return FieldBeside.of(envelope.affirmation(), voter, voter.confidential() && !settled);
    }

    private int onFile(EnvelopeKey key, Voter voter) {
        return images.exemplars(key.electionId(), voter.voterId()).size();
    }
}
