package org.proviso.intake.numbers;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.proviso.access.StaffList;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.chain.Salt;
import org.proviso.intake.IntakeService;
import org.proviso.ledger.DifferenceCounter;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.ledger.TableComparison;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Compares what people settled about numbers, as the tables have it, with the ledger, both ways; and each receipt number
 * that was corrected with the last correction. It changes nothing.
 */
@BetweenRooms
@Service
public class NumberCheckReplay {

    private static final int SHOWN = 12;
    private static final String CONFIRMED = "number_confirmed";
    private static final String CORRECTED = "receipt_corrected";

    private final NumberCheckStore checks;
    private final IntakeService intake;
    private final LedgerService ledger;
    private final StaffList staff;

    NumberCheckReplay(NumberCheckStore checks, IntakeService intake, LedgerService ledger, StaffList staff) {
        this.checks = checks;
        this.intake = intake;
        this.ledger = ledger;
        this.staff = staff;
    }

    /** Tables and ledger are seen as of one moment. */
    @Transactional(readOnly = true, isolation = Isolation.SERIALIZABLE)
    public TableComparison replay(ElectionId electionId) {
        Map<String, String> said = new TreeMap<>();
        Map<String, Integer> numbers = new HashMap<>();
        Map<String, String> corrected = new TreeMap<>();
        ledger.follow(LedgerChain.of(electionId), entry -> {
            if (entry.act().equals(CONFIRMED) || entry.act().equals(CORRECTED)) {
                said.put(name(entry.subject(), numbers.merge(entry.subject(), 1, Integer::sum)), said(entry));
            }
            if (entry.act().equals(CORRECTED)) {
                corrected.put(entry.subject(), String.valueOf(entry.payload().getOrDefault("receipt", "")));
            }
        });
        Map<String, String> there = new TreeMap<>();
        checks.settled(electionId)
                .forEach(row -> there.put(name(row.envelopeNo().value(), row.number()), there(electionId, row)));
        int settled = there.size();
        corrected.forEach((number, hash) -> {
            said.put(receiptOf(number), shown(hash));
            there.put(receiptOf(number), shown(receiptHash(electionId, new EnvelopeNumber(number))));
        });
        DifferenceCounter differences = new DifferenceCounter();
        differences.compare(said, there);
        return differences.result(settled, "numbers of envelopes settled");
    }

    private static String name(String envelope, int number) {
        return "Envelope " + envelope + ", number settled " + number;
    }

    private static String receiptOf(String envelope) {
        return "Envelope " + envelope + ", receipt number";
    }

    private static String said(LedgerEntry entry) {
        Map<String, Object> payload = entry.payload();
        return text(
                entry.act(),
                payload.get("mark"),
                payload.get("envelopes"),
                entry.actor(),
                String.valueOf(payload.getOrDefault("because", "")));
    }

    private String there(ElectionId electionId, NumberCheckStore.Settled row) {
        String because = salt(electionId, row.envelopeNo())
                .map(salt -> salt.hash(row.because()))
                .orElse("");
        String by = staff.user(row.settledBy())
                .map(user -> user.actor().pseudonym())
                .orElse("nobody");
        String act = row.settled().equals(NumberCheckStore.CONFIRMED) ? CONFIRMED : CORRECTED;
        return text(act, row.mark().code(), row.envelopes(), by, because);
    }

    private String receiptHash(ElectionId electionId, EnvelopeNumber envelopeNo) {
        String receipt = ReceiptNumber.text(checks.receipt(electionId, envelopeNo));
        return salt(electionId, envelopeNo).map(salt -> salt.hash(receipt)).orElse("");
    }

    private Optional<Salt> salt(ElectionId electionId, EnvelopeNumber envelopeNo) {
        return intake.salt(electionId, envelopeNo);
    }

    private static String text(
            String act, @Nullable Object mark, @Nullable Object envelopes, String by, String because) {
        return act + " " + mark + " of " + envelopes + " by " + by + ", reason " + shown(because);
    }

    /** The start of a hash is enough to tell two texts apart in a sentence. */
    private static String shown(String hash) {
        return hash.substring(0, Math.min(SHOWN, hash.length()));
    }
}
