package org.proviso.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.core.ElectionId;
import org.proviso.core.chain.ChainHead;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.files.ledger.LedgerFile;
import org.springframework.transaction.IllegalTransactionStateException;

/** The ledger keeps every act in its place, and says where somebody touched it. */
class LedgerServiceTest {

    private static final LedgerChain CHAIN = LedgerChain.of(new ElectionId("tamarack"));
    private static final Actor ADA = new Actor("staff-7K3Q2M");

    @TempDir
    private Path folder;

    @OnBothDatabases
    void an_act_stands_at_the_end_of_its_own_chain(TestOffice office) {
        record(office, 2);
        LedgerService ledger = office.the(LedgerService.class);
        assertThat(ledger.read(CHAIN, 0, 10))
                .extracting(LedgerEntry::sequence, LedgerEntry::actor, LedgerEntry::subject, LedgerEntry::at)
                .containsExactly(
                        org.assertj.core.groups.Tuple.tuple(1L, "staff-7K3Q2M", "E-1", "2026-11-04T03:00:00Z"),
                        org.assertj.core.groups.Tuple.tuple(2L, "staff-7K3Q2M", "E-2", "2026-11-04T03:00:00Z"));
        assertThat(ledger.read(CHAIN, 1, 10)).hasSize(1);
        assertThat(ledger.head(LedgerChain.OFFICE)).isEqualTo(ChainHead.EMPTY);
        assertThat(ledger.verify(CHAIN)).isEqualTo(verdict(2, ledger.head(CHAIN).hash()));
        assertThat(ledger.verify(LedgerChain.OFFICE).isWhole()).isTrue();
    }

    @OnBothDatabases
    void an_exported_chain_is_what_the_check_without_a_database_accepts(TestOffice office) throws IOException {
        record(office, 1_100);
        StringWriter out = new StringWriter();
        office.the(LedgerService.class).export(CHAIN, out);
        Path file = Files.writeString(folder.resolve("ledger.jsonl"), out.toString());
        LedgerFile.ChainVerdict verdict = LedgerFile.verify(file);
        assertThat(verdict.fault()).isEmpty();
        assertThat(verdict.entries()).isEqualTo(1_100);
        assertThat(verdict.headHash())
                .isEqualTo(office.the(LedgerService.class).head(CHAIN).hash());
    }

    @OnBothDatabases
    void nothing_is_recorded_outside_the_transaction_of_the_act(TestOffice office) {
        LedgerService ledger = office.the(LedgerService.class);
        assertThatThrownBy(() -> ledger.record(LedgerChain.OFFICE, ADA, "act", "subject", Map.of()))
                .isInstanceOf(IllegalTransactionStateException.class);
    }

    @OnBothDatabases
    void an_act_that_fails_leaves_no_entry(TestOffice office) {
        record(office, 1);
        LedgerService ledger = office.the(LedgerService.class);
        assertThatThrownBy(() -> office.inTransaction(() -> {
                    ledger.record(CHAIN, ADA, "envelope_opened", "E-2", Map.of());
                    throw new IllegalStateException("the act failed");
                }))
                .hasMessage("the act failed");
        assertThat(ledger.verify(CHAIN).entries()).isOne();
    }

    @OnBothDatabases
    void an_end_that_was_cut_off_is_noticed(TestOffice office) {
        record(office, 3);
        LedgerService ledger = office.the(LedgerService.class);
        String second = ledger.read(CHAIN, 1, 1).get(0).hash();
        office.jdbc()
                .sql("update ledger_head set sequence = 4 where chain = ?")
                .param(CHAIN.name())
                .update();
        assertThat(ledger.verify(CHAIN).fault().orElseThrow()).contains("entries are missing at the end");
        office.jdbc()
                .sql("update ledger_head set sequence = 2 where chain = ?")
                .param(CHAIN.name())
                .update();
        assertThat(ledger.verify(CHAIN).fault().orElseThrow()).contains("not the one named by the head");
        office.jdbc()
                .sql("update ledger_head set hash = ? where chain = ?")
                .params(second, CHAIN.name())
                .update();
        assertThat(ledger.verify(CHAIN).isWhole()).isTrue();
    }

    @OnBothDatabases
    void an_entry_somebody_slipped_in_or_respelled_is_named(TestOffice office) {
        record(office, 1);
        LedgerService ledger = office.the(LedgerService.class);
        String head = ledger.head(CHAIN).hash();
        office.jdbc()
                .sql("insert into ledger values (?, 2, '', 'x', 'x', 'x', '{ }', ?, repeat('1', 64))")
                .params(CHAIN.name(), head)
                .update();
        office.jdbc()
                .sql("update ledger_head set sequence = 2 where chain = ?")
                .param(CHAIN.name())
                .update();
        assertThat(ledger.verify(CHAIN).fault()).contains("entry 2 is not written in canonical JSON");
    }

    @OnBothDatabases
    void a_person_cannot_stand_in_the_ledger_by_name(TestOffice office) {
        assertThatThrownBy(() -> new Actor("Ada Lovering")).hasMessageContaining("by pseudonym");
    }

    private static void record(TestOffice office, int acts) {
        LedgerService ledger = office.the(LedgerService.class);
        office.inTransaction(() -> {
            ledger.open(CHAIN);
            return IntStream.rangeClosed(1, acts)
                    .mapToObj(act -> ledger.record(
                            CHAIN, ADA, "envelope_received", "E-" + act, Map.of("pages", 1, "of", List.of("a\n\"b\""))))
                    .toList();
        });
    }

    private static LedgerVerdict verdict(long entries, String head) {
        return new LedgerVerdict(entries, head, java.util.Optional.empty());
    }
}
