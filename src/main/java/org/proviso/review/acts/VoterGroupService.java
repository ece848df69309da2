package org.proviso.review.acts;

import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedSet;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.review.CaseActResult;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseStore;
import org.proviso.review.EnvelopeCase;
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

    private final CaseActSteps desk;
    private final CaseStore cases;
    private final VoterGroupStore choices;
    private final VoterGroups groups;
    private final CaseReassessment closing;
    private final AccessService access;

    VoterGroupService(
            CaseActSteps desk,
            CaseStore cases,
            VoterGroupStore choices,
            VoterGroups groups,
            CaseReassessment closing,
            AccessService access) {
        this.desk = desk;
        this.cases = cases;
        this.choices = choices;
        this.groups = groups;
        this.closing = closing;
        this.access = access;
    }

    /** The other envelopes of the voter of a case. */
    @Transactional(readOnly = true)
    public SortedSet<EnvelopeKey> others(EnvelopeKey key) {
        return groups.others(key);
    }

    /** Puts this envelope forward as the one of its voter's that is to count, with the reason. */
    @Transactional
    public CaseActResult chooseToCount(EnvelopeKey key, int version, String reason) {
        OfficeUser user = access.demand(Permission.ANSWER_QUESTIONS);
        SortedSet<EnvelopeKey> others = groups.others(key);
        EnvelopeCase one = desk.lockWith(key, version, others);
        Optional<Refusal> refusal =
                desk.closed(key).or(() -> desk.notWith(one, user)).or(() -> notPossible(one, others, reason));
        if (refusal.isPresent()) {
            return CaseActResult.Refused.because(refusal.get());
        }
        String person = Objects.requireNonNull(one.personId(), "only an envelope of a known voter is put forward");
        choices.choose(key, person, reason, user.userName());
        return closing.done(cases.save(one), others, user, "put_forward", Map.of("reason", desk.hidden(key, reason)));
    }

    private static Optional<Refusal> notPossible(EnvelopeCase one, SortedSet<EnvelopeKey> others, String reason) {
        if (one.personId() == null) {
            return Optional.of(Refusal.of(Why.LINK_NOT_SETTLED, "Settle first who the voter is."));
        }
        if (others.isEmpty()) {
            return Optional.of(Refusal.of(Why.ANOTHER_ENVELOPE, "The voter has no other envelope."));
        }
        return reason.isBlank()
                ? Optional.of(Refusal.of(Why.NO_REASON, "Putting one envelope forward needs a reason."))
                : Optional.empty();
    }
}
