package org.proviso.review.decide;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStore;
import org.proviso.review.DecidedCase;
import org.proviso.review.Decision;
import org.proviso.review.DecisionStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.Proposal;
import org.proviso.review.ProposalStore;
import org.proviso.review.door.CaseDoor;
import org.proviso.review.door.LockedCase;
import org.proviso.review.ends.EndProposalStore;
import org.proviso.review.ends.SentOnEnvelopes;
import org.proviso.review.facts.CaseReturn;
import org.proviso.review.facts.CaseReturnStore;
import org.proviso.review.facts.VoterGroups;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** Cases after the decider settled them, and proposed ones sent back undecided. */
@Service
public class DecidedCaseService {

    private final CaseReturnStore returns;
    private final CaseDoor door;
    private final CaseActSteps steps;
    private final CaseStore cases;
    private final DecisionStore decisions;
    private final ProposalStore proposals;
    private final DecisionService settled;
    private final VoterGroups groups;
    private final AccessService access;
    private final EnvelopesInBatches batches;
    private final EndProposalStore ends;
    private final SentOnEnvelopes sentOn;

    DecidedCaseService(
            CaseDoor door,
            CaseActSteps steps,
            CaseStore cases,
            DecisionStore decisions,
            ProposalStore proposals,
            DecisionService settled,
            VoterGroups groups,
            AccessService access,
            EnvelopesInBatches batches,
            EndProposalStore ends,
            SentOnEnvelopes sentOn,
            CaseReturnStore returns) {
        this.returns = returns;
        this.door = door;
        this.steps = steps;
        this.cases = cases;
        this.decisions = decisions;
        this.proposals = proposals;
        this.settled = settled;
        this.groups = groups;
        this.access = access;
        this.batches = batches;
        this.ends = ends;
        this.sentOn = sentOn;
    }

    /** The decision that stands on a case, for whoever may see whole cases. */
    @Transactional(readOnly = true)
    public Optional<Decision> standing(EnvelopeKey key) {
        access.demand(Permission.SEE_WHOLE_CASE);
        return decisions.standing(key);
    }

    /** Decisions that stand, the newest first, a page of them; for whoever may see whole cases. */
    @Transactional(readOnly = true)
    public List<DecidedCase> standing(ElectionId electionId, int offset, int limit) {
        access.demand(Permission.SEE_WHOLE_CASE);
        return decisions.standing(electionId, offset, limit);
    }

    /** How many decisions of each kind stand. */
    @Transactional(readOnly = true)
    public Map<DecisionOutcome, Integer> counts(ElectionId electionId) {
        access.demand(Permission.READ_FIGURES);
        return decisions.counts(electionId);
    }

    /** Opens a settled case again, with the reason, until the election is closed; the decision is set aside. */
    @Transactional
    public ActResult<EnvelopeCase> reopen(EnvelopeKey key, int version, String because) {
        LockedCase locked = door.demand(Permission.DECIDE).lock(key, version, groups.others(key));
        Map<String, Object> entry = sentOn.entry(key, because);
        return locked.refuse(() -> settled.ordered(key))
                .refuse(() -> reasonMissing(because, "Give a reason to reopen this case."))
                .allows(CaseAct.REOPEN)
                .refuse(() -> batches.beingOpened(key))
                .save(seen -> {
                    decisions.setAside(key, because);
                    sentOn.back(key);
                    batches.reopened(key, locked.user(), because);
                    returns.note(
                            key,
                            CaseReturn.Kind.REOPENED,
                            because,
                            locked.user().userName());
                    return cases.save(seen.to(CaseState.OPEN).counted(false));
                })
                .assessAnew()
                .record("reopened", () -> entry);
    }

    /** Sends a proposed case back to the reviewers with a note, undecided. */
    @Transactional
    public ActResult<EnvelopeCase> sendBack(EnvelopeKey key, int version, String note) {
        LockedCase locked = door.demand(Permission.PULL_OUT).lock(key, version);
        return locked.refuse(() -> reasonMissing(note, "Write a note to send this case back."))
                .allows(CaseAct.RETURN)
                .save(seen -> {
                    if (!ends.endStanding(key, Proposal.State.RETURNED)) {
                        proposals
                                .newest(key)
                                .filter(Proposal::stands)
                                .ifPresent(standing -> proposals.end(standing, Proposal.State.RETURNED));
                    }
                    returns.note(
                            key, CaseReturn.Kind.SENT_BACK, note, locked.user().userName());
                    return cases.save(seen.to(CaseState.OPEN));
                })
                .record("sent_back", () -> Map.of("note", steps.hidden(key, note)));
    }

    private static Optional<Refusal> reasonMissing(String text, String words) {
        return Refusal.when(text.isBlank(), Why.NO_REASON, words);
    }
}
