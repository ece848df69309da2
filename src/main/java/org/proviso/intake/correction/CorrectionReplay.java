package org.proviso.intake.correction;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.proviso.access.StaffList;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.chain.CanonicalJson;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.chain.Salt;
import org.proviso.intake.IntakeService;
import org.proviso.intake.correction.CorrectionStore.Row;
import org.proviso.ledger.DifferenceCounter;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.ledger.TableComparison;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Compares corrections of envelopes, as the table has them, with the ledger, both ways; and where a corrected envelope was
 * cast with its last correction, for nothing else changes that. It changes nothing.
 */
@BetweenRooms
@Service
public class CorrectionReplay {

    private static final int SHOWN = 12;

    private final CorrectionStore corrections;
    private final IntakeService intake;
    private final LedgerService ledger;
    private final StaffList staff;

    CorrectionReplay(CorrectionStore corrections, IntakeService intake, LedgerService ledger, StaffList staff) {
        this.corrections = corrections;
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
            if (entry.act().equals("envelope_corrected")) {
                said.put(name(entry.subject(), numbers.merge(entry.subject(), 1, Integer::sum)), said(entry));
            }
        });
        List<Row> rows = corrections.all(electionId);
        Map<String, String> there = new TreeMap<>();
        rows.forEach(row -> there.put(name(row.envelopeNo().value(), row.number()), there(electionId, row)));
        cast(electionId, rows, said, there);
        DifferenceCounter differences = new DifferenceCounter();
        differences.compare(said, there);
        return differences.result(rows.size(), "corrections of envelopes");
    }

    private void cast(ElectionId electionId, List<Row> rows, Map<String, String> said, Map<String, String> there) {
        Map<EnvelopeNumber, Map<String, String>> last = new LinkedHashMap<>();
        rows.forEach(row ->
                last.computeIfAbsent(row.envelopeNo(), any -> new TreeMap<>()).putAll(row.became()));
        intake.envelopes(electionId, last.keySet())
                .forEach(envelope -> CastBoxes.of(envelope.cast()).forEach((box, now) -> {
                    String became =
                            last.getOrDefault(envelope.envelopeNo(), Map.of()).get(box);
                    if (became != null) {
                        String name = "Envelope " + envelope.envelopeNo() + ", " + box;
                        said.put(name, became);
                        there.put(name, now);
                    }
                }));
    }

    private static String name(String envelope, int number) {
        return "Envelope " + envelope + ", correction " + number;
    }

    private static String said(LedgerEntry entry) {
        Map<String, Object> payload = entry.payload();
        return text(
                payload.get("boxes"),
                entry.actor(),
                String.valueOf(payload.getOrDefault("was", "")),
                String.valueOf(payload.getOrDefault("became", "")),
                String.valueOf(payload.getOrDefault("because", "")));
    }

    private String there(ElectionId electionId, Row row) {
        Optional<Salt> salt = intake.salt(electionId, row.envelopeNo());
        return text(
                List.copyOf(new TreeMap<>(row.became()).keySet()),
                staff.user(row.by()).map(user -> user.actor().pseudonym()).orElse("nobody"),
                hash(salt, CanonicalJson.of(row.was())),
                hash(salt, CanonicalJson.of(row.became())),
                hash(salt, row.because()));
    }

    private static String hash(Optional<Salt> salt, String text) {
        return salt.map(known -> known.hash(text)).orElse("");
    }

    private static String text(@Nullable Object boxes, String by, String was, String became, String because) {
        return boxes + " by " + by + ", from " + shown(was) + " to " + shown(became) + ", reason " + shown(because);
    }

    /** The start of a hash is enough to tell two texts apart in a sentence. */
    private static String shown(String hash) {
        return hash.substring(0, Math.min(SHOWN, hash.length()));
    }
}
