package org.proviso.review.queue;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.as;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.chain.ChainHead;
import org.proviso.database.OnBothDatabases;
import org.proviso.database.TestOffice;
import org.proviso.files.table.ReadList;
import org.proviso.files.table.TableFormat;
import org.proviso.journey.Primary;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;

/** A list of cases as a file. */
class QueueFileTest {

    private static final ElectionId ELECTION = new ElectionId(Primary.ID);

    private static byte[] file(TestOffice office, QueueFilter list, TableFormat format) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        as("ada", () -> {
            try {
                office.the(QueueFileService.class).write(list, format, out);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return out;
        });
        return out.toByteArray();
    }

    private static List<String> lines(TestOffice office, QueueFilter list) {
        return new String(file(office, list, TableFormat.CSV), StandardCharsets.UTF_8)
                .lines()
                .toList();
    }

    @OnBothDatabases
    void both_files_have_the_same_headings_and_rows(TestOffice office) {
        Primary.loaded(office);
        QueueFilter list = QueueFilter.all(ELECTION);
        ReadList csv = ReadList.csv(file(office, list, TableFormat.CSV), 5);
        ReadList xlsx = ReadList.xlsx(file(office, list, TableFormat.XLSX));
        assertThat(xlsx.headings()).isEqualTo(csv.headings()).contains("Envelope", "Outlook", "Last act");
        assertThat(xlsx.rows()).isEqualTo(csv.rows()).hasSizeGreaterThan(20);
        assertThat(xlsx.about())
                .containsAllEntriesOf(csv.about())
                .containsKeys("List", "Listed at", "Filter", "Order", "Ledger head");
    }

    @OnBothDatabases
    void the_file_says_when_of_what_and_over_which_ledger_and_has_the_list_in_its_order(TestOffice office) {
        Primary.loaded(office);
        QueueFilter list =
                QueueFilter.all(ELECTION).with(QueueColumn.REASON, "no_id").sortedBy(QueueSort.PRECINCT, true);
        ChainHead head = office.the(LedgerService.class).head(LedgerChain.of(ELECTION));
        List<QueueRow> rows = as("ada", () -> office.the(QueueService.class).page(list, 0, 100));
        List<String> lines = lines(office, list);
        assertThat(lines.get(0)).startsWith("Election,");
        assertThat(lines.get(1)).matches("Listed at,2026-08-0\\d \\d\\d:\\d\\d,+");
        assertThat(lines.get(2)).startsWith("Filter,Reason issued: no ID,");
        assertThat(lines.get(3)).startsWith("Order,\"precinct, last first\",");
        assertThat(lines.get(4)).startsWith("Ledger head," + head.sequence() + " " + head.hash());
        assertThat(lines.get(5)).startsWith("Envelope,State,Priority,Due,Outlook,Reason issued,Voting location");
        assertThat(lines.subList(6, lines.size()))
                .hasSameSizeAs(rows)
                .extracting(line -> line.split(",")[0])
                .containsExactlyElementsOf(
                        rows.stream().map(row -> row.envelopeNo().value()).toList());
    }

    @OnBothDatabases
    void no_cell_is_a_formula_to_a_spreadsheet(TestOffice office) {
        Primary.loaded(office);
        office.jdbc()
                .sql("update envelope_case set queue_location = '=HYPERLINK(\"http://x\")', queue_precinct = '-1'"
                        + " where envelope_no = 'P-1001'")
                .update();
        String line = lines(office, QueueFilter.all(ELECTION)).stream()
                .filter(row -> row.startsWith("P-1001,"))
                .findFirst()
                .orElseThrow();
        assertThat(line).contains(",\"'=HYPERLINK(\"\"http://x\"\")\",'-1,");
    }

    /** More cases than are held in memory at a time: every one is in the file, and none twice. */
    @OnBothDatabases
    void a_long_list_is_written_whole(TestOffice office) {
        Primary.loaded(office);
        for (String table : List.of("envelope", "envelope_case")) {
            office.jdbc().sql(copies(office, table)).update();
        }
        int all = office.jdbc()
                .sql("select count(*) from envelope_case")
                .query(Integer.class)
                .single();
        assertThat(all).isGreaterThan(5_000);
        for (QueueSort sort : List.of(QueueSort.PRIORITY, QueueSort.AGE, QueueSort.HOLDER)) {
            List<String> lines = lines(office, QueueFilter.all(ELECTION).sortedBy(sort, false));
            assertThat(lines.subList(6, lines.size()).stream()
                            .map(line -> line.split(",")[0])
                            .distinct()
                            .count())
                    .as(sort.code())
                    .isEqualTo(all)
                    .isEqualTo(lines.size() - 6);
        }
    }

    private static String copies(TestOffice office, String table) {
        List<String> columns = office.jdbc()
                .sql("select lower(column_name) from information_schema.columns where lower(table_name) = ?"
                        + " and lower(table_schema) = lower(current_schema()) order by ordinal_position")
                .param(table)
                .query(String.class)
                .list();
        String copied = String.join(", ", columns)
                .replaceFirst("envelope_no", "envelope_no || '-' || n.n")
                .replaceFirst("receipt_no,", "'',")
                .replaceFirst("receipt_compared", "''");
        return "insert into " + table + " (" + String.join(", ", columns) + ") select " + copied + " from " + table
                + " cross join (select a.t * 10 + b.t as n from "
                + "(values (1),(2),(3),(4),(5),(6),(7),(8),(9)) as a (t) cross join "
                + "(values (0),(1),(2),(3),(4),(5),(6),(7),(8),(9)) as b (t)) as n";
    }
}
