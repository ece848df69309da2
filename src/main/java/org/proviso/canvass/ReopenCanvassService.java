package org.proviso.canvass;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeSet;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.Sha256;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.election.ElectionService;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.proviso.review.decide.DecisionService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The closings of an election, and reopening its canvass: two people, with a reason, where a court or the law asks for it
 * after the certificate. Whether it may be done at all is local law's to say.
 */
@Service
public class ReopenCanvassService {

    private final ClosingStore closings;
    private final DecisionService decisions;
    private final ElectionService elections;
    private final AccessService access;
    private final ActDoor door;

    ReopenCanvassService(
            ClosingStore closings,
            DecisionService decisions,
            ElectionService elections,
            AccessService access,
            ActDoor door) {
        this.closings = closings;
        this.decisions = decisions;
        this.elections = elections;
        this.access = access;
        this.door = door;
    }

    /** Every closing of an election, in their order. */
    @Transactional(readOnly = true)
    public List<CanvassClosing> closings(ElectionId electionId) {
        access.demand(Permission.READ_FIGURES);
        return closings.all(electionId);
    }

    /** What an amended closing settles another way than the one before it, by envelope number; nothing of a first one. */
    @Transactional(readOnly = true)
    public List<AmendedOutcome> amended(ElectionId electionId, int closingNo) {
        access.demand(Permission.READ_FIGURES);
        List<CanvassClosing> all = closings.all(electionId);
        if (closingNo < 2 || closingNo > all.size()) {
            return List.of();
        }
        return differences(
                electionId,
                all.get(closingNo - 2).closedAt(),
                all.get(closingNo - 1).closedAt());
    }

    private List<AmendedOutcome> differences(ElectionId electionId, Instant first, Instant second) {
        Map<EnvelopeNumber, DecisionOutcome> before = decisions.standingAt(electionId, first);
        Map<EnvelopeNumber, DecisionOutcome> after = decisions.standingAt(electionId, second);
        TreeSet<EnvelopeNumber> all = new TreeSet<>(before.keySet());
        all.addAll(after.keySet());
        List<AmendedOutcome> differences = new ArrayList<>();
        for (EnvelopeNumber number : all) {
            if (before.get(number) != after.get(number)) {
                differences.add(new AmendedOutcome(number, before.get(number), after.get(number)));
            }
        }
        return differences;
    }

    /** The first of two asks to reopen the canvass, with the reason. */
    @Transactional
    public ActResult<CanvassClosing> askToReopen(ElectionId electionId, String because) {
        ActDoor.Permitted first = door.demand(Permission.CLOSE_ELECTION);
        return first.lock(() -> closings.standing(electionId))
                .refuse(ReopenCanvassService::notClosed)
                .refuse(
                        closing -> Refusal.when(
                                closing.orElseThrow().isAskedToReopen(),
                                Why.NOTHING_NEW,
                                "Someone has asked to reopen the canvass already. Another supervisor reopens it or keeps it closed."))
                .refuse(closing -> because.isBlank()
                        ? Optional.of(Refusal.at("because", Why.NO_REASON, "Required. Enter the reason."))
                        : Optional.empty())
                .save(closing -> {
                    closings.ask(closing.orElseThrow(), first.user().userName(), because);
                    return now(electionId);
                })
                .record(asked -> line(asked, "reopening_asked", Map.of("because", Sha256.of(because))));
    }

    /** Nobody asks any more: the canvass stays closed. */
    @Transactional
    public ActResult<CanvassClosing> keepClosed(ElectionId electionId) {
        return door.demand(Permission.CLOSE_ELECTION)
                .lock(() -> closings.standing(electionId))
                .refuse(ReopenCanvassService::notClosed)
                .refuse(ReopenCanvassService::notAsked)
                .save(closing -> {
                    closings.ask(closing.orElseThrow(), null, "");
                    return now(electionId);
                })
                .record(kept -> line(kept, "kept_closed", Map.of()));
    }

    /** The second of two reopens the canvass: from now on the election can be worked on and has to be closed again. */
    @Transactional
    public ActResult<CanvassClosing> reopen(ElectionId electionId) {
        ActDoor.Permitted second = door.demand(Permission.CLOSE_ELECTION);
        return second.lock(() -> closings.standing(electionId))
                .refuse(ReopenCanvassService::notClosed)
                .refuse(ReopenCanvassService::notAsked)
                .notBy(closing ->
                        List.of(Objects.requireNonNull(closing.orElseThrow().reopenAskedBy(), "somebody has asked")))
                .save(closing -> {
                    closings.reopened(closing.orElseThrow(), second.user().userName());
                    elections.reopen(electionId);
                    return closings.all(electionId).get(closing.orElseThrow().number() - 1);
                })
                .record(reopened -> line(reopened, "canvass_reopened", Map.of()));
    }

    private CanvassClosing now(ElectionId electionId) {
        return closings.standing(electionId).orElseThrow();
    }

    private static Optional<Refusal> notClosed(Optional<CanvassClosing> closing) {
        return Refusal.when(
                closing.isEmpty(), Why.NOT_IN_THIS_STATE, "The election is not closed: there is nothing to reopen.");
    }

    private static Optional<Refusal> notAsked(Optional<CanvassClosing> closing) {
        return Refusal.when(
                !closing.orElseThrow().isAskedToReopen(),
                Why.NOT_IN_THIS_STATE,
                "Nobody has asked to reopen the canvass. Enter a reason and ask first.");
    }

    private static LedgerLine line(CanvassClosing closing, String act, Map<String, Object> payload) {
        Map<String, Object> said = new LinkedHashMap<>(payload);
        said.put("closing", closing.number());
        return LedgerLine.of(
                LedgerChain.of(closing.electionId()), act, closing.electionId().value(), said);
    }
}
