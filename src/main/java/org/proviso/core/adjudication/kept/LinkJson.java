package org.proviso.core.adjudication.kept;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.chain.CanonicalJson;
import org.proviso.core.chain.CanonicalJsonReader;
import org.proviso.core.matching.Candidate;

/** The lists of a link as canonical JSON; its other parts are kept as they are. */
public final class LinkJson {

    private LinkJson() {}

    /** The sentences of the match. */
    public static String likeness(Link link) {
        return CanonicalJson.of(link.likeness());
    }

    /** The candidates with their evidence; a probability in the shortest spelling that reads back to the same number. */
    public static String candidates(Link link) {
        return CanonicalJson.of(
                link.candidates().stream().map(LinkJson::candidate).toList());
    }

    /** The link of which these were written; a text of another kind is an {@link IllegalArgumentException}. */
    public static Link read(
            VoterIdentityFact identity,
            @Nullable VoterId voterId,
            double probability,
            String likeness,
            String candidates) {
        List<String> sentences = CanonicalJsonReader.list(likeness).stream()
                .map(KeptFields::asText)
                .toList();
        List<Candidate> found = CanonicalJsonReader.list(candidates).stream()
                .map(KeptFields::of)
                .map(LinkJson::candidate)
                .toList();
        return new Link(identity, voterId, probability, sentences, found);
    }

    private static Map<String, Object> candidate(Candidate candidate) {
        return Map.of(
                "voter_id",
                candidate.voterId().value(),
                "probability",
                Double.toString(candidate.probability()),
                "evidence",
                candidate.evidence());
    }

    private static Candidate candidate(KeptFields fields) {
        return new Candidate(
                new VoterId(fields.text("voter_id")),
                Double.parseDouble(fields.text("probability")),
                fields.texts("evidence"));
    }
}
