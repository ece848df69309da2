package org.proviso.journey;

import static com.github.mvysny.kaributesting.v10.LocatorJ._find;
import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.core.act.ActResults.accepted;
import static org.proviso.journey.Office.as;

import com.github.mvysny.kaributesting.v10.DownloadKt;
import com.vaadin.flow.component.html.Anchor;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.proviso.Proviso;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.access.WebStaff;
import org.proviso.core.ElectionId;
import org.proviso.database.TestOffice;
import org.proviso.files.table.ReadList;
import org.proviso.files.table.TableColumn;
import org.proviso.files.table.TableFormat;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.release.ReleaseService;
import org.proviso.review.WorkedPrimary;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.ListedRows;
import org.proviso.ui.PlainTable;
import org.proviso.ui.RowGrid;
import org.springframework.beans.factory.annotation.Autowired;
import org.springframework.boot.test.context.SpringBootTest;
import org.springframework.boot.test.context.TestConfiguration;
import org.springframework.context.ApplicationContext;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Import;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Every list of every page as files: the page's columns, the page's rows, and what the file says about itself. */
@SpringBootTest(classes = Proviso.class, properties = "spring.datasource.url=" + DownloadsTest.DATABASE)
@Import(DownloadsTest.Standing.class)
class DownloadsTest {

    static final String DATABASE = "jdbc:h2:mem:downloads;DB_CLOSE_DELAY=-1;LOCK_TIMEOUT=10000";

    private static final ElectionId ELECTION = new ElectionId(Primary.ID);
    private static final String EVERYBODY = "zoe";
    private static final String ACCOUNTS = "set-up/users";

    /** Pages with a table that is no list, and why. */
    private static final Map<String, String> NO_LIST = Map.ofEntries(
            Map.entry(
                    "set-up [File, What it is, Who usually has it, Without it, Chosen, Begin from]",
                    "what the files of an election are, in words"),
            Map.entry("intake/receive", "the newest lines of the list of envelopes that Intake offers"),
            Map.entry("intake/correct", "the corrections of one envelope, field by field"),
            Map.entry("intake/key", "two keyings of one envelope, field by field"),
            Map.entry("review/case", "the records of one case, which is printed whole"),
            Map.entry("review/print", "the records of one case, which is printed whole"));

    /** Pages whose address ends with what is to be seen, or with what is sought. */
    private static final Map<String, String> SEEN = Map.ofEntries(
            Map.entry("board/record", "/1"),
            Map.entry("board/session", "/1"),
            Map.entry("help/guide", "/reviewer"),
            Map.entry("review/case", "/P-1012"),
            Map.entry("review/print", "/P-1012"),
            Map.entry("review/signature", "/P-1012"),
            Map.entry("intake/correct", "/P-1012"),
            Map.entry("intake/key", "/P-1012"),
            Map.entry("release/batch", "/1"),
            Map.entry("find", "?for=Whitfield"));

    @TestConfiguration
    static class Standing {

        @Bean
        @org.springframework.context.annotation.Primary
        Clock standingStill() {
            return Clock.fixed(Instant.parse("2026-08-06T16:00:00Z"), ZoneOffset.UTC);
        }
    }

    @Autowired
    private ApplicationContext server;

    @BeforeAll
    static void anElectionAtWork() {
        TestOffice office = TestOffice.over(DATABASE);
        WorkedPrimary.in(office);
        ReleaseService release = office.the(ReleaseService.class);
        accepted(as("carl", () -> release.recordOtherBallotsComplete(ELECTION)));
        accepted(as(
                "hal",
                () -> release.makeBatch(
                        ELECTION,
                        release.waiting(ELECTION).stream()
                                .filter(one -> !one.decision().ballot().heldApart())
                                .limit(6)
                                .map(one -> one.key().envelopeNo())
                                .collect(Collectors.toSet()),
                        "")));
        Staff.hire(office, EVERYBODY, Role.INTAKE, Role.REVIEWER, Role.DECIDER, Role.RELEASE_TEAM, Role.SUPERVISOR);
        Staff.hire(office, "nell", Role.ADMINISTRATOR);
        office.close();
    }

    /** A list as the page shows it. */
    private record Listed(List<String> headings, List<List<String>> rows) {

        static Listed of(ListedRows list) {
            List<List<String>> rows = new ArrayList<>();
            list.each(rows::add);
            return new Listed(list.columns().stream().map(TableColumn::heading).toList(), rows);
        }

        /** Figures lose the commas between thousands. */
        boolean isIn(ReadList file) {
            return file.headings().equals(headings)
                    && file.rows().size() >= rows.size()
                    && file.rows().subList(0, rows.size()).equals(withoutCommas());
        }

        private List<List<String>> withoutCommas() {
            return rows.stream()
                    .map(row -> row.stream()
                            .map(cell -> cell.matches("[0-9]{1,3}(,[0-9]{3})+") ? cell.replace(",", "") : cell)
                            .toList())
                    .toList();
        }
    }

    private static List<Listed> shown() {
        return Stream.concat(
                        _find(PlainTable.class).stream(),
                        _find(RowGrid.class).stream().map(RowGrid::listed))
                .map(Listed::of)
                .toList();
    }

    private static byte[] file(DownloadLinks links, TableFormat format) {
        Anchor link = links.getContent()
                .getChildren()
                .filter(Anchor.class::isInstance)
                .map(Anchor.class::cast)
                .filter(anchor -> anchor.getText().equals(format.name()))
                .findFirst()
                .orElseThrow();
        return DownloadKt._download(link);
    }

    private static Map<DownloadLinks, ReadList> files() {
        Map<DownloadLinks, ReadList> files = new LinkedHashMap<>();
        _find(DownloadLinks.class).forEach(links -> files.put(links, ReadList.xlsx(file(links, TableFormat.XLSX))));
        return files;
    }

    private static boolean isServedAtAnAddress(String page) {
        return page.equals("review");
    }

    @Test
    void each_list_of_each_page_is_offered_with_its_columns_and_rows() {
        Set<String> without = new TreeSet<>();
        Set<String> with = new TreeSet<>();
        for (String page : PageDriver.addresses()) {
            String who = page.equals(ACCOUNTS) ? "nell" : EVERYBODY;
            if (page.contains(":") || isServedAtAnAddress(page)) {
                continue;
            }
            PageDriver.of(server).on(page + SEEN.getOrDefault(page, ""), who, () -> {
                Map<DownloadLinks, ReadList> files = files();
                shown().forEach(list -> (files.values().stream().anyMatch(list::isIn) ? with : without)
                        .add(page + " " + list.headings()));
            });
        }
        assertThat(without.stream()
                        .filter(line -> !NO_LIST.containsKey(line.substring(0, line.indexOf(' '))))
                        .filter(line -> !NO_LIST.containsKey(line))
                        .toList())
                .isEmpty();
        assertThat(with)
                .extracting(line -> line.substring(0, line.indexOf(' ')))
                .contains(
                        "board/settled",
                        "calendar",
                        "canvass",
                        "canvass/closing",
                        "find",
                        "intake",
                        "intake/transmittals",
                        "ledger",
                        "notices",
                        "release",
                        "review/second",
                        "set-up",
                        "set-up/rules",
                        ACCOUNTS);
    }

    private static ReadList xlsx(String heading) {
        return files().values().stream()
                .filter(file -> file.headings().get(0).equals(heading))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void the_sheet_of_balances_and_the_totals_are_lists_too() {
        PageDriver.of(server).on("canvass/sheet", EVERYBODY, () -> {
            ReadList sheet = xlsx("Place");
            assertThat(sheet.headings()).contains("Supplied", "Received", "Sent on");
            assertThat(sheet.rows()).isNotEmpty();
            assertThat(sheet.numbers()).isNotEmpty();
        });
        PageDriver.of(server).on("canvass", EVERYBODY, () -> {
            ReadList totals = xlsx("Place");
            assertThat(totals.headings()).containsExactly("Place", "Total", "How it stands");
            assertThat(totals.rows()).isNotEmpty().allMatch(row -> !row.get(2).isEmpty());
        });
    }

    @Test
    void a_file_has_what_the_page_is_narrowed_to_and_says_so() {
        PageDriver.of(server).on("intake", EVERYBODY, () -> {
            PageDriver.choose("filter", "ALL");
            PageDriver.type("sought", "P-101");
            ReadList file = xlsx("Envelope");
            assertThat(file.about()).containsEntry("Filter", "Envelope or receipt number: P-101");
            assertThat(file.rows()).isNotEmpty().allMatch(row -> row.get(0).startsWith("P-101"));
        });
    }

    @Test
    void a_protected_address_is_in_no_file() {
        PageDriver.of(server).on("find?for=Whitfield, Ashley", EVERYBODY, () -> {
            ReadList voters = xlsx("Voter");
            assertThat(voters.rows())
                    .filteredOn(row -> row.get(1).equals("T1167226"))
                    .extracting(row -> row.get(3))
                    .containsExactly("protected address");
            assertThat(voters.rows().toString()).doesNotContain("Flint");
        });
    }

    @Test
    void whoever_lost_the_role_meanwhile_gets_no_file() {
        WebStaff.hire(server, "wes", Role.SUPERVISOR);
        PageDriver.of(server).on("ledger", "wes", () -> {
            DownloadLinks links = _find(DownloadLinks.class).get(0);
            assertThat(file(links, TableFormat.CSV)).isNotEmpty();
            server.getBean(JdbcClient.class)
                    .sql("delete from user_role where user_name = 'wes'")
                    .update();
            assertThat(file(links, TableFormat.CSV)).isEmpty();
            assertThat(file(links, TableFormat.XLSX)).isEmpty();
        });
    }

    @Test
    void both_files_say_of_which_election_moment_filter_and_head_of_the_ledger_they_are() {
        PageDriver.of(server).on("board/settled", EVERYBODY, () -> {
            DownloadLinks links = _find(DownloadLinks.class).get(0);
            ReadList csv = ReadList.csv(file(links, TableFormat.CSV), 4);
            ReadList xlsx = ReadList.xlsx(file(links, TableFormat.XLSX));
            assertThat(csv.headings()).isEqualTo(xlsx.headings());
            assertThat(csv.rows()).isEqualTo(xlsx.rows()).isNotEmpty();
            assertThat(xlsx.about())
                    .containsAllEntriesOf(csv.about())
                    .containsEntry("Listed at", "2026-08-06 12:00")
                    .containsEntry("Filter", "none")
                    .containsEntry(
                            "Ledger head",
                            server.getBean(LedgerService.class)
                                            .head(LedgerChain.of(ELECTION))
                                            .sequence()
                                    + " "
                                    + server.getBean(LedgerService.class)
                                            .head(LedgerChain.of(ELECTION))
                                            .hash());
        });
    }
}
