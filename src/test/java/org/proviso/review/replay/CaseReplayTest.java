package org.proviso.review.replay;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.journey.Primary;
import org.proviso.ledger.Actor;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.ledger.TableComparison;
import org.proviso.review.CaseState;
import org.proviso.review.Tampering;
import org.proviso.review.WorkedPrimary;
import org.springframework.transaction.support.TransactionTemplate;

/** The cases are followed by the ledger and compared with the tables; whatever somebody changed in a row is named. */
class CaseReplayTest {

    private static TableComparison replay(TestOffice office) {
        return office.the(CaseReplay.class).replay(new ElectionId(Primary.ID));
    }

    @OnBothDatabases
    void after_every_kind_of_act_tables_and_ledger_agree(TestOffice office) {
        WorkedPrimary worked = WorkedPrimary.in(office);
        assertThat(worked.states())
                .as("there is something to compare")
                .containsKeys(CaseState.OPEN, CaseState.DECIDED, CaseState.ENDED);
        Map<String, Integer> acts = new TreeMap<>();
        office.the(LedgerService.class)
                .follow(LedgerChain.of(new ElectionId(Primary.ID)), entry -> acts.merge(entry.act(), 1, Integer::sum));
        assertThat(acts)
                .containsKeys(
                        "taken",
                        "given_back",
                        "link_confirmed",
                        "search_recorded",
                        "answer_given",
                        "put_forward",
                        "research_asked",
                        "research_answered",
                        "note_written",
                        "note_corrected",
                        "proposed",
                        "proposal_withdrawn",
                        "second_review_agreed",
                        "second_review_returned",
                        "cure_recorded",
                        "sent_back",
                        "decided",
                        "reopened",
                        "ended");
        assertThat(replay(office)).isEqualTo(new TableComparison("cases", 60, 0, List.of()));
    }

    @OnBothDatabases
    void each_thing_that_was_changed_behind_the_ledger_is_named(TestOffice office) {
        WorkedPrimary worked = WorkedPrimary.in(office);
        EnvelopeNumber counted = worked.decidedAs(DecisionOutcome.COUNT).envelopeNo();
        EnvelopeNumber rejected = worked.decidedAs(DecisionOutcome.REJECT).envelopeNo();
        EnvelopeNumber proposed = worked.primary().envelope("in_order").envelopeNo();
        List<String> unnoticed = new ArrayList<>();
        for (Tampering tampering : Tampering.all(counted, rejected, proposed)) {
            office.the(TransactionTemplate.class).executeWithoutResult(attempt -> {
                int rows = office.jdbc().sql(tampering.sql()).update();
                TableComparison found = replay(office);
                if (rows != 1 || !tampering.isNamedIn(found.first())) {
                    unnoticed.add(tampering + " changed " + rows + " rows and gave " + found.first());
                }
                attempt.setRollbackOnly();
            });
        }
        assertThat(unnoticed).isEmpty();
        assertThat(replay(office).isWhole()).isTrue();
    }

    @OnBothDatabases
    void an_entry_that_leads_nowhere_and_one_without_a_row_are_named(TestOffice office) {
        WorkedPrimary worked = WorkedPrimary.in(office);
        EnvelopeNumber counted = worked.decidedAs(DecisionOutcome.COUNT).envelopeNo();
        record(office, "taken", counted.value(), Map.of());
        record(office, "research_asked", counted.value(), Map.of("asked", "0", "request", 1));
        assertThat(replay(office).first())
                .hasSize(2)
                .anyMatch(line -> line.startsWith("Envelope " + counted + ": entry ")
                        && line.endsWith(", taken, leads nowhere, because the case was decided then."))
                .anyMatch(line -> line.equals(
                        "Envelope " + counted + ": of the kind research request the table has 0 and the ledger 1."));
        record(office, "given_back", "P-9999", Map.of());
        assertThat(replay(office).first())
                .contains("Envelope P-9999: the ledger knows it, and there is no case of it.");
    }

    private static void record(TestOffice office, String act, String envelope, Map<String, Object> payload) {
        office.inTransaction(() -> office.the(LedgerService.class)
                .record(LedgerChain.of(new ElectionId(Primary.ID)), Actor.SYSTEM, act, envelope, payload));
    }
}
