package org.proviso.review.acts;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.review.facts.AnswerStore;
import org.proviso.review.facts.LinkStore;
import org.springframework.stereotype.Component;

/**
 * Findings belong to the voter they were made about: a signature compared, a poll book seen, an answer overridden hold no
 * more once the envelope is found to be somebody else's. What the paper itself shows stays.
 */
@Component
class VoterFindings {

    private final LinkStore links;
    private final AnswerStore answers;

    VoterFindings(LinkStore links, AnswerStore answers) {
        this.links = links;
        this.answers = answers;
    }

    /** Takes back what was found about the voter before, if there was one and this is another (null: nobody on the roll). */
    List<Fact<?>> voidedBy(EnvelopeKey key, @Nullable VoterId voterId) {
        boolean another = links.newest(key)
                .filter(link -> link.isSettled() || link.voterId() != null)
                .filter(link -> !Objects.equals(link.voterId(), voterId))
                .isPresent();
        return another ? answers.withdrawOfTheVoter(key) : List.of();
    }

    /** What the ledger has of it: nothing, where nothing was taken back. */
    static void say(Map<String, Object> payload, List<Fact<?>> voided) {
        if (!voided.isEmpty()) {
            payload.put("voided", voided.stream().map(Fact::key).toList());
        }
    }
}
