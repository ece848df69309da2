package org.proviso.review;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.access.Role;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * Cases: where each stands, and who has it. Every act carries the version in which the case was seen; an act on an
 * older one throws {@link org.springframework.dao.OptimisticLockingFailureException} and changes nothing.
 */
@Service
public class CaseService {

    private final CaseStore cases;
    private final CaseActSteps desk;
    private final AccessService access;

    CaseService(CaseStore cases, CaseActSteps desk, AccessService access) {
        this.cases = cases;
        this.desk = desk;
        this.access = access;
    }

    @Transactional(readOnly = true)
    public Optional<EnvelopeCase> find(EnvelopeKey key) {
        return cases.find(key);
    }

    /** Those of these cases that there are, by envelope number. */
    @Transactional(readOnly = true)
    public Map<EnvelopeNumber, EnvelopeCase> find(ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        return cases.find(electionId, envelopeNos);
    }

    /** Every case of an election, by envelope number. */
    @Transactional(readOnly = true)
    public List<EnvelopeCase> all(ElectionId electionId) {
        return cases.all(electionId);
    }

    /** A page of the cases of an election by envelope number. */
    @Transactional(readOnly = true)
    public List<EnvelopeCase> page(ElectionId electionId, int offset, int limit) {
        return cases.page(electionId, offset, limit);
    }

    @Transactional(readOnly = true)
    public int count(ElectionId electionId) {
        return cases.count(electionId);
    }

    @Transactional(readOnly = true)
    public List<EnvelopeCase> inState(ElectionId electionId, CaseState state) {
        return cases.inState(electionId, state);
    }

    /** Takes a case to review it; nobody else works on it until it is given back or proposed. */
    @Transactional
    public CaseActResult take(EnvelopeKey key, int version) {
        OfficeUser user = access.demand(Permission.PROPOSE);
        EnvelopeCase one = desk.lock(key, version);
        Optional<Refusal> refusal = desk.closed(key).or(() -> desk.reviewGate(key));
        return refusal.isPresent()
                ? CaseActResult.Refused.because(refusal.get())
                : move(one, CaseAct.TAKE, user, user.userName(), "taken");
    }

    /** Gives a case back, by whoever has it or by a supervisor for one who is away. */
    @Transactional
    public CaseActResult giveBack(EnvelopeKey key, int version) {
        OfficeUser user = access.demand(Permission.PROPOSE);
        EnvelopeCase one = desk.lock(key, version);
        boolean may = one.isWith(user.userName()) || user.roles().contains(Role.SUPERVISOR);
        Optional<Refusal> refusal = Stream.of(desk.closed(key), refuseUnless(may))
                .flatMap(Optional::stream)
                .findFirst();
        return refusal.isPresent()
                ? CaseActResult.Refused.because(refusal.get())
                : move(one, CaseAct.GIVE_BACK, user, null, "given_back");
    }

    private CaseActResult move(
            EnvelopeCase one, CaseAct act, OfficeUser user, @Nullable UserName with, String recorded) {
        CaseTransition step = CaseGraph.step(one.state(), act);
        if (step instanceof CaseTransition.Refused refused) {
            return CaseActResult.Refused.because(refused.refusal());
        }
        EnvelopeCase now = cases.save(one.to(((CaseTransition.To) step).state(), with));
        desk.record(one.key(), user.actor(), recorded, Map.of());
        return new CaseActResult.Accepted(now);
    }

    private static Optional<Refusal> refuseUnless(boolean may) {
        return may
                ? Optional.empty()
                : Optional.of(
                        Refusal.of(Why.NOT_WITH_YOU, "Only whoever has the case, or a supervisor, gives it back."));
    }
}
