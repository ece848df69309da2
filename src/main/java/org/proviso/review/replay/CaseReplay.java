package org.proviso.review.replay;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.proviso.access.StaffList;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.intake.IntakeService;
import org.proviso.ledger.DifferenceCounter;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.ledger.TableComparison;
import org.proviso.review.replay.CaseReplayStore.CaseRow;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Isolation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Follows every case of an election by the entries of its chain and compares where that leads with the tables, row by
 * row and both ways. It reads and changes nothing, and names envelopes and codes only.
 */
@Service
@BetweenRooms
public class CaseReplay {

    /** So many cases are compared at once. */
    private static final int PAGE = 500;

    private final CaseReplayStore store;
    private final LedgerService ledger;
    private final IntakeService intake;
    private final StaffList staff;

    CaseReplay(CaseReplayStore store, LedgerService ledger, IntakeService intake, StaffList staff) {
        this.store = store;
        this.ledger = ledger;
        this.intake = intake;
        this.staff = staff;
    }

    /** Tables and ledger are seen as of one moment, so that people may go on working meanwhile. */
    @Transactional(readOnly = true, isolation = Isolation.SERIALIZABLE)
    public TableComparison replay(ElectionId electionId) {
        DifferenceCounter differences = new DifferenceCounter();
        CaseTrails trails = new CaseTrails(differences);
        ledger.follow(LedgerChain.of(electionId), trails::follow);
        SaltedTextCheck words = new SaltedTextCheck(envelope -> intake.salt(electionId, envelope), this::pseudonym);
        CaseComparison comparison = new CaseComparison(words, differences);
        Set<EnvelopeNumber> withoutCase = new TreeSet<>(trails.envelopes());
        long cases = 0;
        List<CaseRow> page = store.casesAfter(electionId, null, PAGE);
        while (!page.isEmpty()) {
            compare(electionId, page, trails, comparison);
            page.forEach(row -> withoutCase.remove(row.envelopeNo()));
            cases += page.size();
            page = store.casesAfter(electionId, page.get(page.size() - 1).envelopeNo(), PAGE);
        }
        withoutCase.forEach(
                envelope -> comparison.differ(envelope.value(), "the ledger knows it, and there is no case of it."));
        if (cases != trails.cases()) {
            differences.add(
                    "There are " + cases + " cases, and by the ledger " + trails.cases() + " envelopes came in.");
        }
        store.matchedAfterSettled(electionId)
                .forEach(envelope ->
                        comparison.differ(envelope, "it was matched anew after a person settled its voter."));
        return differences.result(cases, "cases");
    }

    private void compare(ElectionId electionId, List<CaseRow> page, CaseTrails trails, CaseComparison comparison) {
        page.forEach(row -> comparison.compare(row, trails.of(row.envelopeNo())));
        EnvelopeNumber first = page.get(0).envelopeNo();
        EnvelopeNumber last = page.get(page.size() - 1).envelopeNo();
        for (CaseTable table : CaseTable.values()) {
            Map<EnvelopeNumber, List<Map<String, String>>> rows = store.rows(table, electionId, first, last);
            for (CaseRow row : page) {
                EnvelopeNumber envelope = row.envelopeNo();
                comparison.compare(
                        envelope,
                        table,
                        rows.getOrDefault(envelope, List.of()),
                        trails.of(envelope).rows(table));
            }
        }
    }

    private String pseudonym(UserName userName) {
        return staff.user(userName).map(user -> user.actor().pseudonym()).orElse("");
    }
}
