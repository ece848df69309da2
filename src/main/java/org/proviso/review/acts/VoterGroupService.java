package org.proviso.review.acts;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedSet;
import org.proviso.access.Permission;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.door.CaseDoor;
import org.proviso.review.door.LockedCase;
import org.proviso.review.facts.VoterGroupStore;
import org.proviso.review.facts.VoterGroups;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The envelopes of one voter: at most one counts. A person puts one forward; the others wait until it is decided, and
 * are then judged by what became of it.
 */
@Service
public class VoterGroupService {

    private final CaseDoor door;
    private final CaseActSteps steps;
    private final CaseStore cases;
    private final VoterGroupStore choices;
    private final VoterGroups groups;

    VoterGroupService(CaseDoor door, CaseActSteps steps, CaseStore cases, VoterGroupStore choices, VoterGroups groups) {
        this.door = door;
        this.steps = steps;
        this.cases = cases;
        this.choices = choices;
        this.groups = groups;
    }

    /** Puts this envelope forward as the one of its voter's that is to count, with the reason. */
    @Transactional
    public ActResult<EnvelopeCase> chooseToCount(EnvelopeKey key, int version, String reason) {
        CaseDoor.Permitted permitted = door.demand(Permission.ANSWER_QUESTIONS);
        SortedSet<EnvelopeKey> others = groups.others(key);
        LockedCase act = permitted.lock(key, version, others).withYou();
        return act.refuse(() -> notPossible(act.seen(), others, reason))
                .save(seen -> {
                    String person =
                            Objects.requireNonNull(seen.personId(), "only an envelope of a known voter is put forward");
                    choices.choose(key, person, reason, act.user().userName());
                    return cases.save(seen);
                })
                .assessAnew()
                .record("put_forward", () -> Map.of("reason", steps.hidden(key, reason)));
    }

    private static Optional<Refusal> notPossible(
            EnvelopeCase envelopeCase, SortedSet<EnvelopeKey> others, String reason) {
        if (envelopeCase.personId() == null) {
            return Optional.of(Refusal.of(Why.LINK_NOT_SETTLED, "First settle who the voter is."));
        }
        if (others.isEmpty()) {
            return Optional.of(Refusal.of(Why.ANOTHER_ENVELOPE, "The voter has no other envelope."));
        }
        return reason.isBlank()
                ? Optional.of(Refusal.of(Why.NO_REASON, "Give a reason for choosing this envelope to count."))
                : Optional.empty();
    }
}
