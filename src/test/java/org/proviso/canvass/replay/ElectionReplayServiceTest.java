package org.proviso.canvass.replay;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.journey.Office.as;

import java.util.Set;
import java.util.stream.Collectors;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.journey.Primary;
import org.proviso.release.Batch;
import org.proviso.release.ReleaseService;
import org.proviso.release.RemakeService;
import org.proviso.review.WorkedPrimary;
import org.springframework.transaction.support.TransactionTemplate;

/** A whole election is replayed: its chain, each room's tables, every assessment. */
class ElectionReplayServiceTest {

    private static ElectionReplayVerdict replay(TestOffice office) {
        return office.the(ElectionReplayService.class).replay(new ElectionId(Primary.ID));
    }

    private static void changed(TestOffice office, String sql, String sentence) {
        office.the(TransactionTemplate.class).executeWithoutResult(attempt -> {
            assertThat(office.jdbc().sql(sql).update()).as(sql).isOne();
            ElectionReplayVerdict found = replay(office);
            assertThat(found.isWhole()).isFalse();
            assertThat(found.differences()).anySatisfy(said -> assertThat(said).startsWith(sentence));
            attempt.setRollbackOnly();
        });
    }

    /** One batch opened, one made. */
    private static void opened(TestOffice office) {
        ReleaseService release = office.the(ReleaseService.class);
        accepted(as("carl", () -> release.recordOtherBallotsComplete(new ElectionId(Primary.ID))));
        Set<EnvelopeNumber> waiting = as("hal", () -> release.waiting(new ElectionId(Primary.ID))).stream()
                .filter(envelope -> !envelope.decision().ballot().heldApart())
                .map(envelope -> envelope.key().envelopeNo())
                .limit(8)
                .collect(Collectors.toSet());
        Batch made = accepted(as("hal", () -> release.makeBatch(new ElectionId(Primary.ID), waiting, "")));
        Batch begun = accepted(
                as("hal", () -> release.beginOpening(new ElectionId(Primary.ID), made.number(), made.version())));
        Batch open = accepted(
                as("ida", () -> release.recordOpening(new ElectionId(Primary.ID), made.number(), begun.version(), 1)));
        RemakeService remake = office.the(RemakeService.class);
        as("hal", () -> remake.sheets(new ElectionId(Primary.ID), 1)).forEach(sheet -> {
            accepted(as(
                    "hal", () -> remake.beginRemake(new ElectionId(Primary.ID), 1, sheet.number(), sheet.version())));
            accepted(as(
                    "ida",
                    () -> remake.recordRemake(new ElectionId(Primary.ID), 1, sheet.number(), sheet.version() + 1)));
        });
        accepted(as("hal", () -> remake.handOff(new ElectionId(Primary.ID), 1, open.version(), open.ballots())));
    }

    @OnBothDatabases
    void an_election_at_work_is_whole_and_whatever_was_changed_is_named(TestOffice office) {
        WorkedPrimary.in(office);
        opened(office);
        ElectionReplayVerdict whole = replay(office);
        assertThat(whole.differences()).isEmpty();
        assertThat(whole.isWhole()).isTrue();
        assertThat(whole.looked())
                .hasSize(8)
                .contains("1 papers that voters brought, 0 differences", "60 cases, 0 differences");
        changed(office, "update cure_evidence set words = 'Nothing.'", "Envelope P-");
        changed(office, "delete from cure_evidence", "Envelope P-");
        changed(
                office,
                "update release_batch set empty_envelopes = 2",
                "batch 1 empty: the table has 2, the ledger has 1.");
        changed(
                office,
                "update release_batch set second_opener = 'carl'",
                "batch 1 second opener: the table has staff-TEST02, the ledger has staff-TEST08.");
        changed(office, "delete from others_done", "other ballots: the table has nothing, the ledger has done.");
        // Assessments are made again outside any transaction, some at a time: this change has to be there for all.
        office.jdbc()
                .sql(
                        "update assessment set texts = null, facts = '{}', content = '{}' where envelope_no = 'P-1012' and assessment_no = 1"
                                + " and way = 'settled'")
                .update();
        assertThat(replay(office).differences())
                .singleElement()
                .asString()
                .startsWith("Envelope P-1012: assessment 1 (settled) does not come out again");
    }

    @OnBothDatabases
    void a_chain_whose_end_was_cut_off_proves_nothing(TestOffice office) {
        Primary.loaded(office);
        changed(
                office,
                "update ledger_head set sequence = sequence + 1 where chain = 'election:" + Primary.ID + "'",
                "The ledger does not hold: the chain ends at entry 1, but its head is entry 2");
        assertThatThrownBy(() -> office.the(ElectionReplayService.class).replay(new ElectionId("elsewhere")))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
