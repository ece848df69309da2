package org.proviso.status;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.Act;
import org.proviso.core.Election;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.ReasonText;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.election.ElectionService;
import org.proviso.election.RulesService;
import org.proviso.review.AnnouncementService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * A voter looks up the own envelope, by receipt number and birth date and in no other way (52 USC 21082(a)(5)(B): only
 * the individual who cast the ballot). It reads its own table only, which tells nobody's name.
 */
@Service
public class StatusService {

    private static final LookedUp.NothingFits NOTHING = new LookedUp.NothingFits();

    private final StatusLineStore lines;
    private final OfficeSecret secret;
    private final ElectionService elections;
    private final RulesService rules;
    private final AnnouncementService announcements;
    private final AccessService access;

    StatusService(
            StatusLineStore lines,
            OfficeSecret secret,
            ElectionService elections,
            RulesService rules,
            AnnouncementService announcements,
            AccessService access) {
        this.lines = lines;
        this.secret = secret;
        this.elections = elections;
        this.rules = rules;
        this.announcements = announcements;
        this.access = access;
    }

    /**
     * The envelope of that receipt number and birth date. Open to everybody, signed in or not: staff look up for a voter
     * on the telephone. A wrong number and a wrong date take the same way to the same answer: one hash over both, one
     * search by it.
     */
    @Transactional(readOnly = true)
    public LookedUp lookUp(String receiptNo, LocalDate birthDate) {
        return lines.find(secret.hash().line(receiptNo, birthDate))
                .<LookedUp>map(this::found)
                .orElse(NOTHING);
    }

    /** Whom a voter calls: the office of the newest election, or empty before there is one. */
    @Transactional(readOnly = true)
    public Optional<Election.Office> office() {
        return elections.all().stream().findFirst().flatMap(elections::find).map(Election::office);
    }

    private LookedUp.Found found(StatusLine line) {
        Election election = elections.find(line.electionId()).orElseThrow();
        return new LookedUp.Found(
                election.name(),
                election.date(),
                line.state(),
                line.reasons(),
                words(line),
                line.asks(),
                line.asksUntil(),
                county(line.changedAt(), election.zone()),
                election.office());
    }

    /** Most lines have no reason to be told, and then the rules are not asked. */
    private List<String> words(StatusLine line) {
        if (line.reasons().isEmpty()) {
            return List.of();
        }
        ResolvedPack pack = rules.book(line.electionId()).pack();
        return line.reasons().stream().map(reason -> words(reason, pack)).toList();
    }

    private static String words(Reason reason, ResolvedPack pack) {
        return pack.text(reason).map(ReasonText::notice).orElse("The reason: " + reason.words() + ".");
    }

    private static LocalDateTime county(Instant moment, ZoneId zone) {
        return LocalDateTime.ofInstant(moment, zone).truncatedTo(ChronoUnit.MINUTES);
    }

    /**
     * Makes the lines of an election anew from its cases; how many there are. A line that reads as before keeps since
     * when it does. Cases are held meanwhile.
     */
    @Transactional
    public int rebuild(String electionId) {
        access.demand(Act.LOAD_FILES);
        Map<String, StatusLine> before = new HashMap<>();
        announcements.announceAll(electionId, () -> {
            lines.all(electionId).forEach(line -> before.put(line.keyHash(), line));
            lines.empty(electionId);
        });
        int count = 0;
        for (StatusLine line : lines.all(electionId)) {
            StatusLine was = before.get(line.keyHash());
            if (was != null && line.saysTheSame(was)) {
                lines.changedAt(line.keyHash(), was.changedAt());
            }
            count++;
        }
        return count;
    }
}
