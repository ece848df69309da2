package org.proviso.database;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.proviso.core.UserName;
import org.springframework.dao.DataIntegrityViolationException;
import org.springframework.dao.DuplicateKeyException;

/** The tables keep what no program may break. */
class SchemaTest {

    /** What belongs to no election; the status table is found by its keyed hash, under one secret of the office. */
    private static final Set<String> OF_NO_ELECTION = Set.of(
            "ledger",
            "ledger_head",
            "office_clock",
            "office_user",
            "user_role",
            "server_run",
            "status_key",
            "status_line");

    @OnBothDatabases
    void every_key_of_a_case_begins_with_its_election(TestOffice office) {
        List<String> first = office.jdbc().sql("""
                        select lower(k.table_name) from information_schema.table_constraints c
                        join information_schema.key_column_usage k
                          on k.constraint_name = c.constraint_name and k.table_name = c.table_name
                          and k.table_schema = c.table_schema
                        where c.constraint_type = 'PRIMARY KEY' and lower(k.column_name) = 'election_id'
                          and k.ordinal_position = 1""").query(String.class).list();
        assertThat(first).contains("election", "envelope", "envelope_case", "decision", "notice");
        assertThat(office.tables())
                .hasSizeGreaterThan(45)
                .allMatch(table -> OF_NO_ELECTION.contains(table) || first.contains(table));
    }

    @OnBothDatabases
    void an_envelope_number_is_given_once_and_a_receipt_number_may_be_missing_or_on_several(TestOffice office) {
        Rows rows = new Rows(office.jdbc());
        rows.election("one");
        rows.election("other");
        rows.envelope("one", "E-1", "AAAA-1111");
        rows.envelope("one", "E-2", "AAAA-1111");
        rows.envelope("one", "E-3", "");
        rows.envelope("one", "E-4", "");
        rows.envelope("other", "E-1", "AAAA-1111");
        assertThatThrownBy(() -> rows.envelope("one", "E-1", "AAAA-1112")).isInstanceOf(DuplicateKeyException.class);
    }

    @OnBothDatabases
    void one_person_counts_once_in_an_election(TestOffice office) {
        Rows rows = new Rows(office.jdbc());
        rows.election("one");
        rows.person("one", "P-1");
        rows.envelope("one", "E-1", "R-1");
        rows.envelope("one", "E-2", "R-2");
        rows.caseOf("one", "E-1", "P-1", "P-1");
        assertThatThrownBy(() -> rows.caseOf("one", "E-2", "P-1", "P-1")).isInstanceOf(DuplicateKeyException.class);
        rows.caseOf("one", "E-2", "P-1", null);
    }

    @OnBothDatabases
    void a_word_that_is_no_code_is_refused(TestOffice office) {
        Rows rows = new Rows(office.jdbc());
        rows.election("one");
        rows.envelope("one", "E-1", "R-1");
        assertThatThrownBy(() -> office.jdbc()
                        .sql("update envelope set condition = 'steamed open'")
                        .update())
                .isInstanceOf(DataIntegrityViolationException.class);
    }

    @OnBothDatabases
    void nobody_is_second_reader_of_the_own_proposal(TestOffice office) {
        Rows rows = new Rows(office.jdbc());
        rows.election("one");
        rows.person("one", "P-1");
        rows.envelope("one", "E-1", "R-1");
        rows.caseOf("one", "E-1", "P-1", null);
        rows.user("ada");
        rows.user("ben");
        rows.proposal("one", "E-1", new UserName("ada"));
        assertThatThrownBy(() -> rows.secondReview("one", "E-1", new UserName("ada"), new UserName("ada")))
                .isInstanceOf(DataIntegrityViolationException.class);
        assertThatThrownBy(() -> rows.secondReview("one", "E-1", new UserName("ben"), new UserName("ada")))
                .as("a row that names somebody else as the proposer")
                .isInstanceOf(DataIntegrityViolationException.class);
        rows.secondReview("one", "E-1", new UserName("ada"), new UserName("ben"));
    }

    @OnBothDatabases
    void the_page_on_data_names_every_table(TestOffice office) throws IOException {
        String page = Files.readString(Path.of("docs", "data.md"));
        assertThat(office.tables()).allMatch(table -> page.contains("`" + table + "`"));
    }
}
