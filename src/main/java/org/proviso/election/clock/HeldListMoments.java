package org.proviso.election.clock;

import java.time.Clock;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Election;
import org.proviso.core.ElectionId;
import org.proviso.core.chain.ChainHead;
import org.proviso.election.ElectionService;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.ui.ListMoments;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Reads a list and the head of the ledger in one transaction that sees no act done meanwhile. It demands nothing itself:
 * the services that the list is read from do.
 */
@Component
class HeldListMoments implements ListMoments {

    private final ElectionService elections;
    private final LedgerService ledger;
    private final Clock clock;

    HeldListMoments(ElectionService elections, LedgerService ledger, Clock clock) {
        this.elections = elections;
        this.ledger = ledger;
        this.clock = clock;
    }

    @Override
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public void read(@Nullable ElectionId electionId, Consumer<ListMoment> list) {
        Optional<Election> election = Optional.ofNullable(electionId).flatMap(elections::find);
        ChainHead head =
                ledger.head(election.map(one -> LedgerChain.of(one.id())).orElse(LedgerChain.OFFICE));
        list.accept(new ListMoment(
                election.map(Election::name).orElse("none: a list of the office"),
                listedAt(election.map(Election::zone)),
                head.sequence() + " " + head.hash()));
    }

    /** Where no election says which clock is the county's, UTC, and it says so. */
    private String listedAt(Optional<ZoneId> county) {
        ZoneId zone = county.or(() -> elections.all().stream()
                        .map(elections::find)
                        .flatMap(Optional::stream)
                        .findFirst()
                        .map(Election::zone))
                .orElse(ZoneOffset.UTC);
        String at = LocalDateTime.ofInstant(clock.instant(), zone)
                .truncatedTo(ChronoUnit.MINUTES)
                .toString()
                .replace('T', ' ');
        return zone.equals(ZoneOffset.UTC) ? at + " UTC" : at;
    }
}
