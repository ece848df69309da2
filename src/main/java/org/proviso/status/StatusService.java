package org.proviso.status;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.proviso.access.ActDoor;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.act.ActResult;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * A voter looks up the own envelope, by receipt number and birth date and in no other way (52 USC 21082(a)(5)(B): only
 * the individual who cast the ballot). It reads its own table only, which tells nobody's name.
 */
@Service
public class StatusService {

    private final StatusLineStore lines;
    private final OfficeSecret secret;
    private final LookupElections elections;
    private final Clock clock;
    private final StatusRebuild rebuild;
    private final ActDoor door;

    StatusService(
            StatusLineStore lines,
            OfficeSecret secret,
            LookupElections elections,
            Clock clock,
            StatusRebuild rebuild,
            ActDoor door) {
        this.lines = lines;
        this.secret = secret;
        this.elections = elections;
        this.clock = clock;
        this.rebuild = rebuild;
        this.door = door;
    }

    /**
     * The envelope of that receipt number and birth date. Open to everybody: the page knows no session, so whoever opens
     * it is a visitor to it, also staff who look up for a voter on the telephone. A wrong number and a wrong date take
     * the same way to the same answer: one hash over both, one search by it. So does a number on several envelopes that
     * the date does not tell apart. The one statement is a transaction of its own.
     */
    public LookupResult lookUp(ReceiptNumber receiptNo, LocalDate birthDate) {
        StatusHash hash = secret.hash();
        return lines.find(hash.line(receiptNo, birthDate), hash.undated(receiptNo))
                .<LookupResult>map(this::found)
                .orElseGet(() -> nothing(receiptNo));
    }

    /** Whom a voter calls and how receipts look, or empty before there is an election; open to everybody as well. */
    public Optional<LookupPageInfo> office() {
        return elections.office();
    }

    private LookupResult nothing(ReceiptNumber receiptNo) {
        return new LookupResult.NothingFits(
                elections.office().flatMap(office -> office.slip(receiptNo)).orElse(null));
    }

    private LookupResult.Found found(StatusLine line) {
        LookupElection known = elections.of(line.electionId());
        ZoneId zone = known.election().zone();
        Optional<PlannedDecision> planned =
                line.state().isOpen() ? known.planned(line.asks(), county(clock.instant(), zone)) : Optional.empty();
        return new LookupResult.Found(
                known.election(),
                line.state(),
                line.reasons().stream().map(known.reasons()::get).toList(),
                line.asks(),
                known.untilTheMeeting(),
                known.ways(),
                line.arrival(),
                line.registrationFound(),
                planned.orElse(null),
                known.papers(),
                county(line.changedAt(), zone));
    }

    private static LocalDateTime county(Instant moment, ZoneId zone) {
        return LocalDateTime.ofInstant(moment, zone).truncatedTo(ChronoUnit.MINUTES);
    }

    /** Makes the lines of an election anew from its cases and sessions; how many there are. */
    @Transactional
    public ActResult<Integer> rebuild(ElectionId electionId) {
        return door.demand(Permission.LOAD_FILES)
                .lockNothing()
                .save(any -> rebuild.of(electionId))
                .withoutEntry();
    }
}
