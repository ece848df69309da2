package org.proviso.board.agenda;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.Permission;
import org.proviso.board.AgendaItem;
import org.proviso.board.AgendaStore;
import org.proviso.board.BoardLedger;
import org.proviso.board.BoardSession;
import org.proviso.board.MotionStore;
import org.proviso.board.ProposalForDecision;
import org.proviso.board.ProposalsForDecision;
import org.proviso.board.SessionChecks;
import org.proviso.board.SessionKey;
import org.proviso.board.SessionStore;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.review.CaseService;
import org.proviso.review.CaseState;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.decide.DecisionService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * What a session has before it: envelopes ready to be decided, in consent groups, and decided ones that may be opened
 * again, each by itself. Thread-safe.
 */
@Service
public class AgendaService {

    private final SessionStore sessions;
    private final AgendaStore agenda;
    private final MotionStore motions;
    private final AgendaOrdering places;
    private final CaseService cases;
    private final DecisionService decisions;
    private final ProposalsForDecision proposals;
    private final AccessService access;
    private final BoardLedger ledger;
    private final ActDoor door;

    AgendaService(
            SessionStore sessions,
            AgendaStore agenda,
            MotionStore motions,
            AgendaOrdering places,
            CaseService cases,
            DecisionService decisions,
            ProposalsForDecision proposals,
            AccessService access,
            BoardLedger ledger,
            ActDoor door) {
        this.sessions = sessions;
        this.agenda = agenda;
        this.motions = motions;
        this.places = places;
        this.cases = cases;
        this.decisions = decisions;
        this.proposals = proposals;
        this.access = access;
        this.ledger = ledger;
        this.door = door;
    }

    /**
     * Puts envelopes on the agenda of a session that is not closed, all of them or none. One that is there already is
     * placed anew where its proposal changed. Refused where an envelope is neither ready nor decided, or is on the
     * agenda of another session of that body that is not closed.
     */
    @Transactional
    public ActResult<List<AgendaItem>> addToAgenda(SessionKey key, Collection<EnvelopeNumber> envelopeNos) {
        return door.demand(Permission.DECIDE)
                .lock(() -> wanted(key, envelopeNos))
                .refuseAll(this::refusals)
                .save(wanted -> placed(key, wanted.cases()))
                .recordIfAny(placed -> placed.isEmpty()
                        ? Optional.empty()
                        : Optional.of(ledger.line("agenda_put", key, Map.of("envelopes", envelopes(placed)))))
                .map(placed -> agenda.all(key));
    }

    /** What is to come before a session, and the other sessions of its body that have an envelope already. */
    private record WantedItems(
            BoardSession session, List<EnvelopeCase> cases, Map<EnvelopeNumber, Integer> elsewhere) {}

    private WantedItems wanted(SessionKey key, Collection<EnvelopeNumber> envelopeNos) {
        List<BoardSession> all = sessions.lockAll(key.electionId());
        BoardSession session = all.stream()
                .filter(boardSession -> boardSession.key().equals(key))
                .findFirst()
                .orElseThrow(() -> SessionStore.unknown(key));
        List<EnvelopeCase> cases =
                List.copyOf(known(key.electionId(), new TreeSet<>(envelopeNos)).values());
        return new WantedItems(session, cases, elsewhere(session, all));
    }

    private List<Refusal> refusals(WantedItems wanted) {
        List<Refusal> refusals = new ArrayList<>(
                SessionChecks.notClosed(wanted.session()).stream().toList());
        wanted.cases()
                .forEach(envelopeCase -> refusal(envelopeCase, wanted.elsewhere())
                        .or(() -> ordered(envelopeCase))
                        .map(refusal -> refusal.about(envelopeCase.key().envelopeNo()))
                        .ifPresent(refusals::add));
        return refusals;
    }

    private List<AgendaItem> placed(SessionKey key, List<EnvelopeCase> cases) {
        List<AgendaItem> placed = places.place(key, cases);
        if (!placed.isEmpty()) {
            agenda.put(key, placed);
        }
        return placed;
    }

    /** Puts every envelope that is ready and on no other agenda of that body. */
    @Transactional
    public ActResult<List<AgendaItem>> addAllReady(SessionKey key) {
        access.demand(Permission.DECIDE);
        List<BoardSession> all = sessions.lockAll(key.electionId());
        BoardSession session = sessions.lock(key);
        Set<EnvelopeNumber> elsewhere = elsewhere(session, all).keySet();
        return addToAgenda(
                key,
                cases.inState(key.electionId(), CaseState.READY).stream()
                        .map(envelopeCase -> envelopeCase.key().envelopeNo())
                        .filter(envelope -> !elsewhere.contains(envelope))
                        .toList());
    }

    /** One member takes an envelope out of its group, so that it is moved and voted on by itself. */
    @Transactional
    public ActResult<AgendaItem> removeFromGroup(SessionKey key, EnvelopeNumber envelopeNo, int version) {
        ActDoor.Permitted member = door.demand(Permission.PULL_OUT);
        return member.lock(() -> sessions.lock(key))
                .refuse(SessionChecks::notClosed)
                .refuse(session -> inAGroup(agenda.find(key, envelopeNo), envelopeNo))
                .save(session -> {
                    agenda.pullOut(key, envelopeNo, version, member.user().userName());
                    motions.pending(key).ifPresent(motion -> motions.pullOut(motion.key(), envelopeNo));
                    return agenda.find(key, envelopeNo).orElseThrow();
                })
                .record(item -> ledger.line(
                        "pulled_out",
                        key,
                        envelopeNo.value(),
                        Map.of("group", Objects.requireNonNull(item.group(), "it was in a group"))));
    }

    private static Optional<Refusal> inAGroup(Optional<AgendaItem> item, EnvelopeNumber envelopeNo) {
        return SessionChecks.onAgenda(item, envelopeNo)
                .or(() -> Refusal.when(
                        item.orElseThrow().standsAlone(),
                        Why.NOT_ONE_GROUP,
                        envelopeNo + " is not in a group. It is voted on by itself already."));
    }

    /** The agenda in its order, with each case as it is now. */
    @Transactional(readOnly = true)
    public List<AgendaLine> agenda(SessionKey key) {
        access.demand(Permission.SEE_WHOLE_CASE);
        List<AgendaItem> items = agenda.all(key);
        Map<EnvelopeNumber, EnvelopeCase> cases = known(key.electionId(), envelopes(items));
        Map<EnvelopeNumber, ProposalForDecision> proposed = proposals.find(key.electionId(), cases.keySet());
        return items.stream()
                .map(item -> new AgendaLine(
                        item,
                        Objects.requireNonNull(
                                cases.get(item.envelopeNo()), "every envelope on the agenda has its case"),
                        proposed.get(item.envelopeNo())))
                .toList();
    }

    private Optional<Refusal> ordered(EnvelopeCase envelopeCase) {
        return envelopeCase.state() == CaseState.DECIDED ? decisions.ordered(envelopeCase.key()) : Optional.empty();
    }

    private static Optional<Refusal> refusal(EnvelopeCase envelopeCase, Map<EnvelopeNumber, Integer> elsewhere) {
        EnvelopeNumber envelope = envelopeCase.key().envelopeNo();
        boolean ripe = envelopeCase.state() == CaseState.READY || envelopeCase.state() == CaseState.DECIDED;
        return Refusal.when(
                        !ripe,
                        Why.NOT_IN_THIS_STATE,
                        "The case is " + envelopeCase.state().spoken() + ", neither ready nor decided.")
                .or(() -> Refusal.when(
                        elsewhere.containsKey(envelope),
                        Why.ON_ANOTHER_AGENDA,
                        "It is on the agenda of session " + elsewhere.get(envelope) + ", which is not closed."));
    }

    /** The other sessions of the body that are not closed, by the envelopes on their agendas. */
    private Map<EnvelopeNumber, Integer> elsewhere(BoardSession session, List<BoardSession> all) {
        Map<EnvelopeNumber, Integer> elsewhere = new LinkedHashMap<>();
        all.stream()
                .filter(other -> other.body() == session.body() && other.closedAt() == null)
                .filter(other -> !other.key().equals(session.key()))
                .forEach(other -> agenda.all(other.key())
                        .forEach(item ->
                                elsewhere.put(item.envelopeNo(), other.key().sessionNo())));
        return elsewhere;
    }

    /** The cases in the order of their envelopes' numbers; every one of them must be there. */
    private Map<EnvelopeNumber, EnvelopeCase> known(ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        Map<EnvelopeNumber, EnvelopeCase> found = cases.find(electionId, envelopeNos);
        envelopeNos.stream()
                .filter(number -> !found.containsKey(number))
                .findFirst()
                .ifPresent(number -> {
                    throw new IllegalArgumentException("There is no envelope " + number + ".");
                });
        return found;
    }

    private static List<EnvelopeNumber> envelopes(List<AgendaItem> items) {
        return items.stream().map(AgendaItem::envelopeNo).toList();
    }
}
