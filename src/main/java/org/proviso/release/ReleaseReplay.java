package org.proviso.release;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import org.proviso.access.StaffList;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.Key;
import org.proviso.core.UserName;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.core.chain.Sha256;
import org.proviso.election.OtherBallots;
import org.proviso.ledger.DifferenceCounter;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.ledger.TableComparison;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;

/** Compares batches, what was opened and what was handed off with the ledger, both ways; it changes nothing. */
@Service
@BetweenRooms
public class ReleaseReplay {

    private final BatchStore batches;
    private final OtherBallots others;
    private final RemakeSheetStore sheets;
    private final LedgerService ledger;
    private final StaffList staff;

    ReleaseReplay(
            BatchStore batches, OtherBallots others, RemakeSheetStore sheets, LedgerService ledger, StaffList staff) {
        this.batches = batches;
        this.others = others;
        this.sheets = sheets;
        this.ledger = ledger;
        this.staff = staff;
    }

    /** Tables and ledger are seen as of one moment. */
    @Transactional(readOnly = true, isolation = Isolation.SERIALIZABLE)
    public TableComparison replay(ElectionId electionId) {
        LedgerSays said = new LedgerSays();
        ledger.follow(LedgerChain.of(electionId), said::add);
        Map<String, String> there = new TreeMap<>();
        batches.all(electionId).forEach(batch -> put(there, batch));
        if (others.areCounted(electionId)) {
            there.put(LedgerSays.OTHERS, "done");
        }
        others.takenBack(electionId)
                .forEach(word -> there.put(
                        LedgerSays.takenBack(word.number()),
                        pseudonym(word.by()) + ", reason " + Sha256.of(word.because())));
        DifferenceCounter differences = new DifferenceCounter();
        differences.compare(said.said, there);
        return differences.result(batches.all(electionId).size(), "batches");
    }

    private void put(Map<String, String> there, Batch batch) {
        String name = "batch " + batch.number();
        there.put(name + " envelopes", String.valueOf(batch.envelopes()));
        there.put(name + " held apart", String.valueOf(batch.heldApart()));
        there.put(
                name + " sheets",
                String.valueOf(sheets.of(batch.electionId(), batch.number()).size()));
        there.put(name + " asked to dissolve", pseudonym(batch.dissolveAskedBy()));
        there.put(name + " dissolved", pseudonym(batch.dissolvedBy()));
        there.put(name + " first opener", pseudonym(batch.firstOpener()));
        there.put(name + " second opener", pseudonym(UserName.orNull(batch.secondOpener())));
        if (batch.openedAt() != null) {
            there.put(name + " empty", String.valueOf(batch.empty()));
            there.put(name + " opened", Key.join(", ", batches.envelopes(batch.electionId(), batch.number())));
        }
        there.put(name + " handed off", batch.handedOffAt() == null ? "" : batch.ballots() + " ballots");
        for (RemakeSheet sheet : sheets.of(batch.electionId(), batch.number())) {
            String which = name + " sheet " + sheet.number();
            there.put(which + " copied by", pseudonym(sheet.firstCopier()));
            there.put(which + " read back by", pseudonym(UserName.orNull(sheet.secondCopier())));
        }
    }

    private String pseudonym(@Nullable UserName userName) {
        return userName == null
                ? ""
                : staff.user(userName).map(user -> user.actor().pseudonym()).orElse("nobody");
    }

    /** What the entries say. */
    private static final class LedgerSays {

        private static final String OTHERS = "other ballots";

        private final Map<String, String> said = new TreeMap<>();
        /** Envelopes opened since the last batch: their entries come before that of their batch. */
        private final Set<String> released = new TreeSet<>();

        private int wordsTakenBack;

        private static String takenBack(int number) {
            return OTHERS + " taken back " + number;
        }

        private void add(LedgerEntry entry) {
            String name = entry.subject();
            Map<String, Object> payload = entry.payload();
            switch (entry.act()) {
                case "others_done" -> said.put(OTHERS, "done");
                case "others_done_taken_back" -> {
                    said.remove(OTHERS);
                    said.put(takenBack(++wordsTakenBack), entry.actor() + ", reason " + payload.get("because"));
                }
                case "batch_made" -> {
                    said.put(name + " envelopes", text(payload.get("envelopes")));
                    said.put(name + " held apart", text(payload.get("held_apart")));
                    said.put(name + " sheets", text(payload.get("sheets")));
                }
                case "taken_out_of_batch" -> {
                    String batch = "batch " + payload.get("batch");
                    said.put(batch + " envelopes", text(payload.get("envelopes")));
                    said.put(batch + " sheets", text(payload.get("sheets")));
                }
                case "dissolving_asked" -> said.put(name + " asked to dissolve", entry.actor());
                case "batch_kept" -> said.remove(name + " asked to dissolve");
                case "batch_dissolved" -> {
                    said.put(name + " dissolved", entry.actor());
                    said.put(name + " envelopes", "0");
                    said.put(name + " sheets", "0");
                }
                case "opening_begun" -> said.put(name + " first opener", entry.actor());
                case "released" -> released.add(name);
                case "batch_opened" -> {
                    said.put(name + " second opener", entry.actor());
                    said.put(name + " empty", text(payload.get("empty")));
                    said.put(name + " opened", String.join(", ", released));
                    released.clear();
                }
                case "handed_off" -> said.put(name + " handed off", payload.get("ballots") + " ballots");
                case "remake_begun" -> said.put(name + " copied by", entry.actor());
                case "remade" -> said.put(name + " read back by", entry.actor());
                default -> {}
            }
        }

        private static String text(@Nullable Object value) {
            return String.valueOf(value);
        }
    }
}
