package org.proviso.ledger;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.proviso.database.DatabaseKind;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;

/** Nothing in the program changes or removes an entry, and on PostgreSQL nothing can. */
class LedgerIsAppendOnlyTest {

    private static final Pattern CHANGES = Pattern.compile(
            "\\b(update|delete\\s+from|truncate(\\s+table)?|merge\\s+into|drop\\s+table|alter\\s+table)\\s+ledger\\b(?!_)",
            Pattern.CASE_INSENSITIVE);

    @Test
    void no_source_and_no_migration_changes_or_removes_an_entry() throws IOException {
        List<Path> sources = sources();
        assertThat(sources).hasSizeGreaterThan(300).anyMatch(path -> path.endsWith("LedgerStore.java"));
        for (Path source : sources) {
            assertThat(CHANGES.matcher(Files.readString(source)).find())
                    .as(source.toString())
                    .isFalse();
        }
    }

    @Test
    void each_way_to_change_an_entry_would_be_found() {
        for (String sql : List.of(
                "update ledger set hash = ''",
                "UPDATE  ledger SET",
                "delete from\nledger where",
                "truncate table ledger",
                "merge into ledger using",
                "drop table ledger")) {
            assertThat(CHANGES.matcher(sql).find()).as(sql).isTrue();
        }
        assertThat(CHANGES.matcher("update ledger_head set").find()).isFalse();
        assertThat(CHANGES.matcher("insert into ledger (chain").find()).isFalse();
    }

    @OnBothDatabases
    void postgresql_itself_refuses_to_change_an_entry(TestOffice office) {
        office.inTransaction(() -> office.the(LedgerService.class)
                .record(LedgerChain.OFFICE, Actor.SYSTEM, "started", "office", Map.of()));
        if (office.kind() == DatabaseKind.POSTGRESQL) {
            assertThatThrownBy(() ->
                            office.jdbc().sql("update ledger set act = 'x'").update())
                    .hasMessageContaining("the ledger is only added to");
            assertThatThrownBy(() -> office.jdbc().sql("delete from ledger").update())
                    .hasMessageContaining("the ledger is only added to");
        } else {
            office.jdbc().sql("update ledger set act = 'x'").update();
            assertThat(office.the(LedgerService.class)
                            .verify(LedgerChain.OFFICE)
                            .fault())
                    .as("H2 cannot refuse it, the check finds it")
                    .contains("entry 1 was changed: its hash does not match its content");
        }
    }

    private static List<Path> sources() throws IOException {
        try (Stream<Path> walk = Files.walk(Path.of("src", "main"))) {
            return walk.filter(path -> path.toString().matches(".*\\.(java|sql)"))
                    .toList();
        }
    }
}
