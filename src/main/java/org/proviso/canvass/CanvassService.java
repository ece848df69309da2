package org.proviso.canvass;

import jakarta.validation.Valid;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.proviso.access.AccessService;
import org.proviso.access.ActDoor;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.chain.ChainHead;
import org.proviso.election.ElectionService;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerLine;
import org.proviso.ledger.LedgerService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/** The canvass: the figures of every place and of the county, whether they add up, and the closing of the election. */
@Service
@Validated
public class CanvassService {

    /** The place of figures that only the county has. */
    public static final String COUNTY = "The county";

    private final CanvassFigureCollector book;
    private final ClosingChecks closing;
    private final FigureStore figures;
    private final ClosingStore closings;
    private final ExplanationStore explanations;
    private final ElectionService elections;
    private final AccessService access;
    private final LedgerService ledger;
    private final ActDoor door;

    CanvassService(
            CanvassFigureCollector book,
            ClosingChecks closing,
            FigureStore figures,
            ClosingStore closings,
            ExplanationStore explanations,
            ElectionService elections,
            AccessService access,
            LedgerService ledger,
            ActDoor door) {
        this.book = book;
        this.closing = closing;
        this.figures = figures;
        this.closings = closings;
        this.explanations = explanations;
        this.elections = elections;
        this.access = access;
        this.ledger = ledger;
        this.door = door;
    }

    /** The figures of each group of hours in which an envelope was cast. */
    @Transactional(readOnly = true)
    public List<CanvassFigures> accounts(ElectionId electionId) {
        access.demand(Permission.READ_FIGURES);
        return book.collect(electionId);
    }

    /** How the identities asked for stand in every place. */
    @Transactional(readOnly = true)
    public List<BalanceResult> balances(ElectionId electionId, Collection<BalanceRule> asked) {
        access.demand(Permission.READ_FIGURES);
        return balanced(electionId, book.collect(electionId), asked);
    }

    /** The same of accounts at hand. */
    @Transactional(readOnly = true)
    public List<BalanceResult> balances(
            ElectionId electionId, List<CanvassFigures> accounts, Collection<BalanceRule> asked) {
        access.demand(Permission.READ_FIGURES);
        return balanced(electionId, accounts, asked);
    }

    /** Voting locations that sent no return, of those whose totals are given: nobody knows how many envelopes they sent back. */
    @Transactional(readOnly = true)
    public List<String> withoutReturn(ElectionId electionId, List<BalanceResult> balances) {
        access.demand(Permission.READ_FIGURES);
        Set<String> returned = closing.withReturn(electionId);
        return balances.stream()
                .filter(balance -> balance instanceof BalanceResult.CannotBeChecked unchecked
                        && unchecked.missing().contains(Figure.SENT_BACK))
                .map(BalanceResult::where)
                .filter(where -> !where.isCounty() && !where.isOffice())
                .map(CanvassPlace::name)
                .filter(place -> !returned.contains(place))
                .distinct()
                .toList();
    }

    /** Notes a number that only a person can tell; the newest note of a figure holds. */
    @Transactional
    public ActResult<NoteFigure> noteFigure(@Valid NoteFigure note) {
        return door.demand(Permission.CLOSE_ELECTION)
                .lockNothing()
                .refuse(user -> counted(note.figure()))
                .refuse(user -> closed(note.electionId()))
                .save(user -> {
                    figures.note(note, user.userName());
                    return note;
                })
                .record(noted -> line(noted.electionId(), "figure_noted", noted.place(), payload(noted)));
    }

    private static Map<String, Object> payload(NoteFigure note) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("figure", note.figure().code());
        payload.put("hours", note.hours().code());
        payload.put("number", note.number());
        return payload;
    }

    /** The figures of a day as they were kept, and a sentence for each that became less. */
    private record DailyFigures(PlaceFigures total, List<String> fallen) {}

    /** Keeps the figures of the day, and says which became less than those kept before. */
    @Transactional
    public ActResult<List<String>> keepDailyFigures(
            ElectionId electionId, Map<DailyProgressRule, Integer> corrections) {
        return door.demand(Permission.CLOSE_ELECTION)
                .lockNothing()
                .refuse(user -> closed(electionId))
                .save(user -> keep(electionId, corrections))
                .record(kept -> line(electionId, "figures_kept", electionId.value(), plain(kept.total())))
                .map(DailyFigures::fallen);
    }

    private DailyFigures keep(ElectionId electionId, Map<DailyProgressRule, Integer> corrections) {
        PlaceFigures now = total(electionId);
        List<String> fallen = figures.kept(electionId)
                .map(before -> DailyProgressRule.fallen(before, now, corrections))
                .orElse(List.of());
        figures.keep(electionId, now);
        return new DailyFigures(now, fallen);
    }

    /**
     * What is missing until the election can be closed: what {@link #closeElection} refuses for, and the work behind it.
     * Nothing is missing of an election that is closed.
     */
    @Transactional(readOnly = true)
    public ClosingReport missing(ElectionId electionId) {
        access.demand(Permission.CLOSE_ELECTION);
        return elections.isClosed(electionId) ? ClosingReport.NOTHING : closing.report(electionId);
    }

    /**
     * Closes the election, if every identity holds to the last envelope; otherwise says what does not. What is new is
     * the ledger's head, whose hash is printed on the certificate.
     */
    @Transactional
    public ActResult<ChainHead> closeElection(ElectionId electionId) {
        ActDoor.Permitted supervisor = door.demand(Permission.CLOSE_ELECTION);
        return supervisor
                .lock(() -> {
                    elections.holdForClosing(electionId);
                    return supervisor.user();
                })
                .refuse(user -> closed(electionId))
                .refuseAll(user -> contradicted(electionId))
                .refuseAll(user -> outOfBalance(electionId))
                .save(user -> {
                    elections.close(electionId);
                    PlaceFigures total = total(electionId);
                    closings.insert(electionId, user.userName(), total);
                    return total;
                })
                .record(total -> line(electionId, "closed", electionId.value(), plain(total)))
                .map(total -> headed(electionId));
    }

    private ChainHead headed(ElectionId electionId) {
        ChainHead head = ledger.head(LedgerChain.of(electionId));
        closings.headed(electionId, head.hash());
        return head;
    }

    /** Every decision that a newer record contradicts is followed up before the canvass is certified. */
    private List<Refusal> contradicted(ElectionId electionId) {
        return closing.contradicted(electionId).stream()
                .map(found -> Refusal.of(
                                Why.CONTRADICTED,
                                "It is " + found.wasSettled() + ", and the rules now say " + found.saysNow()
                                        + ". Follow it up first.")
                        .about(found.key().envelopeNo()))
                .toList();
    }

    private List<Refusal> outOfBalance(ElectionId electionId) {
        return closing.open(electionId).stream()
                .map(balance -> Refusal.of(Why.OUT_OF_BALANCE, balance.words()))
                .toList();
    }

    private static Optional<Refusal> counted(Figure figure) {
        return figure.isNoted()
                ? Optional.empty()
                : Optional.of(Refusal.at(
                        "figure", Why.COUNTED_NOT_NOTED, "The program counts this figure. It cannot be entered."));
    }

    private Optional<Refusal> closed(ElectionId electionId) {
        return elections.closed(electionId);
    }

    private static LedgerLine line(ElectionId electionId, String act, String subject, Map<String, Object> payload) {
        return LedgerLine.of(LedgerChain.of(electionId), act, subject, payload);
    }

    private List<BalanceResult> balanced(
            ElectionId electionId, List<CanvassFigures> all, Collection<BalanceRule> asked) {
        List<BalanceResult> balances = new ArrayList<>();
        all.forEach(accounts -> balances.addAll(Reconciliation.reconcile(accounts, asked)));
        return explanations.applied(electionId, balances);
    }

    /** Both groups of hours together. */
    private PlaceFigures total(ElectionId electionId) {
        Map<Figure, Integer> total = new EnumMap<>(Figure.class);
        List<PlaceFigures> ofCounty =
                book.collect(electionId).stream().map(CanvassFigures::county).toList();
        for (Figure figure : List.of(Figure.RECEIVED, Figure.COUNTED, Figure.COUNTED_IN_PART, Figure.REJECTED)) {
            total.put(figure, 0);
            ofCounty.stream()
                    .filter(counts -> counts.has(figure))
                    .forEach(counts -> total.merge(figure, counts.number(figure), Integer::sum));
        }
        return new PlaceFigures(total);
    }

    private static Map<String, Object> plain(PlaceFigures counts) {
        Map<String, Object> plain = new LinkedHashMap<>();
        counts.figures().forEach((figure, number) -> plain.put(figure.code(), number));
        return plain;
    }
}
