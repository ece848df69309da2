package org.proviso.intake.cure;

import java.util.HashMap;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.proviso.access.StaffList;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.chain.Salt;
import org.proviso.intake.CureStore;
import org.proviso.intake.IntakeService;
import org.proviso.ledger.DifferenceCounter;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.ledger.TableComparison;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;

/** Compares what voters brought, as the tables have it, with the ledger, both ways; it changes nothing. */
@BetweenRooms
@Service
public class CureReplay {

    private static final int SHOWN = 12;

    private final CureStore cures;
    private final CureScanStore scans;
    private final IntakeService intake;
    private final LedgerService ledger;
    private final StaffList staff;

    CureReplay(CureStore cures, CureScanStore scans, IntakeService intake, LedgerService ledger, StaffList staff) {
        this.cures = cures;
        this.scans = scans;
        this.intake = intake;
        this.ledger = ledger;
        this.staff = staff;
    }

    /** Tables and ledger are seen as of one moment. */
    @Transactional(readOnly = true, isolation = Isolation.SERIALIZABLE)
    public TableComparison replay(ElectionId electionId) {
        Map<String, String> said = new TreeMap<>();
        Map<String, Integer> numbers = new HashMap<>();
        ledger.follow(LedgerChain.of(electionId), entry -> {
            if (entry.act().equals("cure_recorded")) {
                said.put(
                        name(new EnvelopeNumber(entry.subject()), numbers.merge(entry.subject(), 1, Integer::sum)),
                        said(entry));
            } else if (entry.act().equals("cure_scan_kept")) {
                said.put(
                        name(new EnvelopeNumber(entry.subject()), number(entry)) + ", scan "
                                + entry.payload().get("scan"),
                        entry.payload().get("sha256") + " by " + entry.actor());
            } else if (entry.act().equals("cure_taken_back")) {
                said.merge(
                        name(new EnvelopeNumber(entry.subject()), number(entry)),
                        takenBack(entry.actor(), String.valueOf(entry.payload().getOrDefault("because", ""))),
                        String::concat);
            }
        });
        Map<String, String> there = new TreeMap<>();
        cures.rows(electionId).forEach(row -> there.put(name(row.envelopeNo(), row.number()), there(electionId, row)));
        int papers = there.size();
        scans.rows(electionId)
                .forEach(row -> there.put(
                        name(row.envelopeNo(), row.cureNo()) + ", scan " + row.number(),
                        row.sha256() + " by " + pseudonym(row.keptBy())));
        DifferenceCounter differences = new DifferenceCounter();
        differences.compare(said, there);
        return differences.result(papers, "papers that voters brought");
    }

    private static String name(EnvelopeNumber envelopeNo, int number) {
        return "Envelope " + envelopeNo + ", paper " + number;
    }

    private static String said(LedgerEntry entry) {
        Map<String, Object> payload = entry.payload();
        String words = String.valueOf(payload.getOrDefault("words", ""));
        return text(payload.get("ask"), payload.get("received_at"), entry.actor(), words);
    }

    private String there(ElectionId electionId, CureStore.CureRow row) {
        String words = intake.salt(electionId, row.envelopeNo())
                .map((Salt salt) -> salt.hash(row.words()))
                .orElse("");
        String by = pseudonym(new UserName(row.recordedBy()));
        return text(row.ask(), row.receivedAt(), by, words) + takenBack(electionId, row);
    }

    private String takenBack(ElectionId electionId, CureStore.CureRow row) {
        UserName by = row.takenBackBy();
        if (by == null) {
            return "";
        }
        String because = String.valueOf(row.because());
        return takenBack(
                pseudonym(by),
                intake.salt(electionId, row.envelopeNo())
                        .map(salt -> salt.hash(because))
                        .orElse(""));
    }

    private String pseudonym(UserName userName) {
        return staff.user(userName).map(user -> user.actor().pseudonym()).orElse("nobody");
    }

    private static int number(LedgerEntry entry) {
        return Integer.parseInt(String.valueOf(entry.payload().get("evidence")));
    }

    private static String takenBack(String by, String because) {
        return ", taken back by " + by + ", reason " + because.substring(0, Math.min(SHOWN, because.length()));
    }

    /** The start of the hash is enough to tell two texts apart in a sentence. */
    private static String text(@Nullable Object ask, @Nullable Object receivedAt, String by, String words) {
        return ask + " stamped " + receivedAt + " by " + by + ", words "
                + words.substring(0, Math.min(SHOWN, words.length()));
    }
}
