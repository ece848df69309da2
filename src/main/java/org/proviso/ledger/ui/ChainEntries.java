package org.proviso.ledger.ui;

import com.vaadin.flow.component.Composite;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.proviso.access.LedgerReadService;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.ledger.LedgerChain;
import org.proviso.ui.RowGrid;
import org.proviso.ui.UsDates;

/** The entries of a chain, newest first, a screen at a time. */
final class ChainEntries extends Composite<RowGrid<LedgerEntry>> {

    private static final int SHORT = 8;

    private final transient LedgerReadService ledger;
    private final LedgerChain chain;
    private final ZoneId zone;

    ChainEntries(LedgerReadService ledger, LedgerChain chain, ZoneId zone) {
        this.ledger = ledger;
        this.chain = chain;
        this.zone = zone;
    }

    @Override
    protected RowGrid<LedgerEntry> initContent() {
        RowGrid<LedgerEntry> grid = new RowGrid<>(
                "Ledger entries", "No entries yet. Every act of the office is recorded here as it is done.");
        grid.number("No.", "4rem", entry -> String.valueOf(entry.sequence()))
                .number("When", "12.5rem", this::when)
                .words("Act", "9rem", entry -> DateWords.code(entry.act()))
                .words("On", "9rem", LedgerEntry::subject)
                .words("Details", "20rem", entry -> with(entry.payload()))
                .number("By", "8rem", LedgerEntry::actor)
                .number("Hash", "6rem", entry -> entry.hash().substring(0, SHORT));
        long last = ledger.head(chain).sequence();
        grid.show((offset, limit) -> page(last, offset, limit), () -> (int) Math.min(last, Integer.MAX_VALUE));
        return grid;
    }

    private List<LedgerEntry> page(long last, int offset, int limit) {
        long from = Math.max(0, last - offset - limit);
        List<LedgerEntry> page = new ArrayList<>(ledger.read(chain, from, (int) (last - offset - from)));
        Collections.reverse(page);
        return page;
    }

    private String when(LedgerEntry entry) {
        return UsDates.moment(LocalDateTime.ofInstant(Instant.parse(entry.at()), zone));
    }

    private static String with(Map<String, Object> payload) {
        return payload.entrySet().stream()
                .map(entry -> DateWords.code(entry.getKey()) + ": "
                        + DateWords.code(shortened(String.valueOf(entry.getValue()))))
                .collect(Collectors.joining("; "));
    }

    /** The first characters tell a hash apart; the whole hash is in the exported file. */
    private static String shortened(String value) {
        return value.matches("[0-9a-f]{64}") ? value.substring(0, SHORT) + "…" : value;
    }
}
