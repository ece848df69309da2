package org.proviso.canvass;

import jakarta.validation.Valid;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.chain.ChainHead;
import org.proviso.election.ElectionService;
import org.proviso.ledger.LedgerChain;
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

    /** Figures that a person tells; all others are counted. */
    private static final Set<Figure> TOLD = EnumSet.of(
            Figure.SUPPLIED,
            Figure.ISSUED,
            Figure.SPOILED,
            Figure.UNUSED,
            Figure.MISSING,
            Figure.SENT_BACK,
            Figure.UNACCOUNTED,
            Figure.HELD_BY_LAW,
            Figure.TABULATED,
            Figure.CREDITED);

    private final CanvassFigureCollector book;
    private final FigureStore figures;
    private final ElectionService elections;
    private final AccessService access;
    private final LedgerService ledger;

    CanvassService(
            CanvassFigureCollector book,
            FigureStore figures,
            ElectionService elections,
            AccessService access,
            LedgerService ledger) {
        this.book = book;
        this.figures = figures;
        this.elections = elections;
        this.access = access;
        this.ledger = ledger;
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
        return balanced(book.collect(electionId), asked);
    }

    /** The same of accounts at hand. */
    @Transactional(readOnly = true)
    public List<BalanceResult> balances(List<CanvassFigures> accounts, Collection<BalanceRule> asked) {
        access.demand(Permission.READ_FIGURES);
        return balanced(accounts, asked);
    }

    /** The figures of a sum that only a person can tell. */
    public List<Figure> toBeNoted(BalanceRule identity) {
        return identity.figures().stream().filter(TOLD::contains).toList();
    }

    /** Notes a number that only a person can tell; the newest note of a figure holds. */
    @Transactional
    public void noteFigure(@Valid NoteFigure note) {
        OfficeUser user = access.demand(Permission.CLOSE_ELECTION);
        if (!TOLD.contains(note.figure())) {
            throw new IllegalArgumentException(
                    "Nobody notes how many " + note.figure().code() + ": it is counted.");
        }
        demandOpen(note.electionId());
        figures.note(note, user.userName());
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("figure", note.figure().code());
        payload.put("hours", note.hours().code());
        payload.put("number", note.number());
        ledger.record(LedgerChain.of(note.electionId()), user.actor(), "figure_noted", note.place(), payload);
    }

    /** Keeps the figures of the day, and says which became less than those kept before. */
    @Transactional
    public List<String> keepDailyFigures(ElectionId electionId, Map<DailyProgressRule, Integer> corrections) {
        OfficeUser user = access.demand(Permission.CLOSE_ELECTION);
        demandOpen(electionId);
        PlaceFigures now = total(electionId);
        List<String> fallen = figures.kept(electionId)
                .map(before -> DailyProgressRule.fallen(before, now, corrections))
                .orElse(List.of());
        figures.keep(electionId, now);
        ledger.record(LedgerChain.of(electionId), user.actor(), "figures_kept", electionId.value(), plain(now));
        return fallen;
    }

    /** Closes the election, if every identity holds to the last envelope; otherwise says what does not. */
    @Transactional
    public ElectionClosingResult closeElection(ElectionId electionId) {
        OfficeUser user = access.demand(Permission.CLOSE_ELECTION);
        demandOpen(electionId);
        List<String> wrong = balanced(book.collect(electionId), Arrays.asList(BalanceRule.values())).stream()
                .filter(balance -> !(balance instanceof BalanceResult.Holds))
                .map(BalanceResult::words)
                .toList();
        if (!wrong.isEmpty()) {
            return new ElectionClosingResult.NotYet(wrong);
        }
        elections.close(electionId);
        LedgerChain chain = LedgerChain.of(electionId);
        ledger.record(chain, user.actor(), "closed", electionId.value(), plain(total(electionId)));
        ChainHead head = ledger.head(chain);
        return new ElectionClosingResult.Closed(head.hash());
    }

    private static List<BalanceResult> balanced(List<CanvassFigures> all, Collection<BalanceRule> asked) {
        List<BalanceResult> balances = new ArrayList<>();
        all.forEach(accounts -> balances.addAll(Reconciliation.reconcile(accounts, asked)));
        return balances;
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

    private void demandOpen(ElectionId electionId) {
        if (elections.isClosed(electionId)) {
            throw new IllegalStateException("The election is closed.");
        }
    }
}
