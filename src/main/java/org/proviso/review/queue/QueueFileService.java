package org.proviso.review.queue;

import java.io.IOException;
import java.io.OutputStream;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.Election;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.chain.ChainHead;
import org.proviso.election.ElectionService;
import org.proviso.files.table.TableColumn;
import org.proviso.files.table.TableFormat;
import org.proviso.files.table.TableHead;
import org.proviso.files.table.TableHead.About;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;

/** A list of cases as a file, with the moment, what narrows it, and the head of the ledger at that moment. */
@Service
public class QueueFileService {

    private static final int TOGETHER = 5_000;
    private static final List<TableColumn> COLUMNS = Stream.of(
                    "Envelope",
                    "State",
                    "Priority",
                    "Due",
                    "Outlook",
                    "Reason issued",
                    "Voting location",
                    "Precinct",
                    "Language",
                    "Assigned to",
                    "Last act")
            .map(TableColumn::text)
            .toList();

    private final QueueListStore lists;
    private final QueueService queue;
    private final ElectionService elections;
    private final LedgerService ledger;
    private final AccessService access;
    private final Clock clock;

    QueueFileService(
            QueueListStore lists,
            QueueService queue,
            ElectionService elections,
            LedgerService ledger,
            AccessService access,
            Clock clock) {
        this.lists = lists;
        this.queue = queue;
        this.elections = elections;
        this.ledger = ledger;
        this.access = access;
        this.clock = clock;
    }

    /**
     * Writes the whole list as it stands at one moment, in its order, some thousand lines in memory at a time. Times are
     * local to the county.
     */
    @Transactional(readOnly = true, isolation = Isolation.REPEATABLE_READ)
    public void write(QueueFilter filter, TableFormat format, OutputStream out) throws IOException {
        access.demand(Permission.SEARCH);
        Election election = elections
                .find(filter.electionId())
                .orElseThrow(() -> new IllegalArgumentException("The office has no such election."));
        Instant now = clock.instant();
        format.write(
                head(election, filter, now),
                out,
                file -> rows(filter, filter.before(now), row -> file.row(cells(row, election.zone()))));
    }

    private TableHead head(Election election, QueueFilter filter, Instant now) {
        ChainHead head = ledger.head(LedgerChain.of(filter.electionId()));
        String narrowed = filter.wanted().entrySet().stream()
                .map(entry -> entry.getKey().words() + ": " + queue.words(entry.getKey(), entry.getValue()))
                .collect(Collectors.joining("; "));
        return new TableHead(
                "Cases",
                List.of(
                        new About("Election", election.name()),
                        new About("Listed at", moment(now, election.zone())),
                        new About("Filter", narrowed.isEmpty() ? "none" : narrowed),
                        new About("Order", filter.sort().code() + (filter.descending() ? ", last first" : "")),
                        new About("Ledger head", head.sequence() + " " + head.hash())),
                COLUMNS);
    }

    private void rows(QueueFilter filter, @Nullable Instant before, java.util.function.Consumer<QueueRow> each) {
        QueuePosition place = null;
        List<QueueRow> page;
        do {
            page = lists.after(filter, before, place, TOGETHER);
            page.forEach(each);
            if (page.size() == TOGETHER) {
                EnvelopeNumber last = page.get(page.size() - 1).envelopeNo();
                place = lists.position(filter, last).orElseThrow();
            }
        } while (page.size() == TOGETHER);
    }

    private static List<String> cells(QueueRow row, ZoneId county) {
        String with = row.with();
        return List.of(
                row.envelopeNo().value(),
                row.state().spoken(),
                row.turnWords(),
                row.due().map(QueueFileService::text).orElse(""),
                row.outlook().words(),
                String.join("; ", row.issueReasons()),
                row.votingLocation(),
                row.precinct(),
                row.language(),
                with == null ? "" : with,
                moment(row.since(), county));
    }

    private static String moment(Instant at, ZoneId county) {
        return text(LocalDateTime.ofInstant(at, county));
    }

    private static String text(LocalDateTime at) {
        return at.truncatedTo(ChronoUnit.MINUTES).toString().replace('T', ' ');
    }
}
