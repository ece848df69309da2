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
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.board.AgendaItem;
import org.proviso.board.AgendaStore;
import org.proviso.board.BoardActResult;
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

    AgendaService(
            SessionStore sessions,
            AgendaStore agenda,
            MotionStore motions,
            AgendaOrdering places,
            CaseService cases,
            DecisionService decisions,
            ProposalsForDecision proposals,
            AccessService access,
            BoardLedger ledger) {
        this.sessions = sessions;
        this.agenda = agenda;
        this.motions = motions;
        this.places = places;
        this.cases = cases;
        this.decisions = decisions;
        this.proposals = proposals;
        this.access = access;
        this.ledger = ledger;
    }

    /**
     * Puts envelopes on the agenda of a session that is not closed, all of them or none. One that is there already is
     * placed anew where its proposal changed. Refused where an envelope is neither ready nor decided, or is on the
     * agenda of another session of that body that is not closed.
     */
    @Transactional
    public BoardActResult<List<AgendaItem>> addToAgenda(SessionKey key, Collection<EnvelopeNumber> envelopeNos) {
        OfficeUser decider = access.demand(Permission.DECIDE);
        List<BoardSession> all = sessions.lockAll(key.electionId());
        BoardSession session = all.stream()
                .filter(one -> one.key().equals(key))
                .findFirst()
                .orElseThrow(() -> SessionStore.unknown(key));
        List<EnvelopeCase> wanted =
                List.copyOf(known(key.electionId(), new TreeSet<>(envelopeNos)).values());
        Map<EnvelopeNumber, Integer> elsewhere = elsewhere(session, all);
        List<Refusal> refusals =
                new ArrayList<>(SessionChecks.notClosed(session).stream().toList());
        wanted.forEach(one -> refusal(one, elsewhere).or(() -> ordered(one)).ifPresent(refusals::add));
        return BoardActResult.unless(refusals, () -> {
            List<AgendaItem> placed = places.place(key, wanted);
            if (!placed.isEmpty()) {
                agenda.put(key, placed);
                ledger.record(decider, "agenda_put", key, key.subject(), Map.of("envelopes", envelopes(placed)));
            }
            return agenda.all(key);
        });
    }

    /** Puts every envelope that is ready and on no other agenda of that body. */
    @Transactional
    public BoardActResult<List<AgendaItem>> addAllReady(SessionKey key) {
        access.demand(Permission.DECIDE);
        List<BoardSession> all = sessions.lockAll(key.electionId());
        BoardSession session = sessions.lock(key);
        Set<EnvelopeNumber> elsewhere = elsewhere(session, all).keySet();
        return addToAgenda(
                key,
                cases.inState(key.electionId(), CaseState.READY).stream()
                        .map(one -> one.key().envelopeNo())
                        .filter(envelope -> !elsewhere.contains(envelope))
                        .toList());
    }

    /** One member takes an envelope out of its group, so that it is moved and voted on by itself. */
    @Transactional
    public BoardActResult<AgendaItem> removeFromGroup(SessionKey key, EnvelopeNumber envelopeNo, int version) {
        OfficeUser member = access.demand(Permission.PULL_OUT);
        BoardSession session = sessions.lock(key);
        Optional<AgendaItem> item = agenda.find(key, envelopeNo);
        Optional<Refusal> refusal = SessionChecks.notClosed(session)
                .or(() -> SessionChecks.onAgenda(item, envelopeNo))
                .or(() -> SessionChecks.refuse(
                        item.orElseThrow().standsAlone(), Why.NOT_ONE_GROUP, envelopeNo + " stands alone already."));
        return BoardActResult.unless(refusal, () -> {
            agenda.pullOut(key, envelopeNo, version, member.userName());
            motions.pending(key).ifPresent(motion -> motions.pullOut(motion.key(), envelopeNo));
            ledger.record(
                    member,
                    "pulled_out",
                    key,
                    envelopeNo.value(),
                    Map.of("group", item.orElseThrow().group()));
            return agenda.find(key, envelopeNo).orElseThrow();
        });
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

    private Optional<Refusal> ordered(EnvelopeCase one) {
        return one.state() == CaseState.DECIDED ? decisions.ordered(one.key()) : Optional.empty();
    }

    private static Optional<Refusal> refusal(EnvelopeCase one, Map<EnvelopeNumber, Integer> elsewhere) {
        EnvelopeNumber envelope = one.key().envelopeNo();
        boolean ripe = one.state() == CaseState.READY || one.state() == CaseState.DECIDED;
        return SessionChecks.refuse(
                        !ripe,
                        Why.NOT_IN_THIS_STATE,
                        envelope + " is " + one.state().spoken() + ", neither ready nor decided.")
                .or(() -> SessionChecks.refuse(
                        elsewhere.containsKey(envelope),
                        Why.ON_ANOTHER_AGENDA,
                        envelope + " is on the agenda of session " + elsewhere.get(envelope)
                                + ", which is not closed."));
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
