package org.proviso.review.news;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.database.OnADatabase;
import org.proviso.database.TestOffice;
import org.proviso.election.RulesService;
import org.proviso.journey.Primary;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;

/** The program comes back with other rules than those an election was assessed under. */
class ProgramRulesUpdateTest {

    @OnADatabase
    void newer_rules_are_kept_recorded_once_and_every_open_case_is_assessed_under_them(TestOffice services) {
        Primary primary = Primary.loaded(services);
        EnvelopeKey key = primary.envelope("in_order");
        ProgramRulesUpdate watch = services.the(ProgramRulesUpdate.class);
        RulesService rules = services.the(RulesService.class);
        assertThat(watch.takeUpNewRules(new ElectionId(Primary.ID)))
                .as("nothing is newer")
                .isEmpty();
        String before = rules.book(new ElectionId(Primary.ID)).pack().hash();
        services.jdbc()
                .sql("update election set rule_pack = 'us' where election_id = ?")
                .param(Primary.ID)
                .update();
        assertThat(rules.areKept(new ElectionId(Primary.ID))).isFalse();

        watch.takeUpNewRules(new ElectionId(Primary.ID));

        String now = rules.book(new ElectionId(Primary.ID)).pack().hash();
        assertThat(now).isNotEqualTo(before);
        assertThat(rules.areKept(new ElectionId(Primary.ID))).isTrue();
        assertThat(services.jdbc()
                        .sql(
                                "select pack_hash from assessment where envelope_no = ? order by assessment_no desc limit 1")
                        .param(key.envelopeNo())
                        .query(String.class)
                        .single())
                .isEqualTo(now);
        List<LedgerEntry> updated =
                services.the(LedgerService.class).read(LedgerChain.of(new ElectionId(Primary.ID)), 0, 999).stream()
                        .filter(entry -> entry.act().equals("rules_updated"))
                        .toList();
        assertThat(updated).singleElement().satisfies(entry -> {
            assertThat(entry.subject()).isEqualTo("us");
            assertThat(entry.payload()).containsEntry("pack_hash", now);
        });
        assertThat(watch.takeUpNewRules(new ElectionId(Primary.ID)))
                .as("recorded once")
                .isEmpty();
    }
}
