package org.proviso.election;

import java.util.List;
import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.stereotype.Repository;

/**
 * What the database knows of how many rows are where. PostgreSQL plans badly until it has counted a load; it would do so
 * by itself a minute later. H2 counts as it goes, and would end the transaction if asked.
 */
@Repository
class StatisticsStore {

    private static final List<String> LOADED = List.of(
            "voter",
            "mail_ballot",
            "check_in",
            "voted_elsewhere",
            "envelope",
            "affirmation",
            "affirmation_field",
            "street_segment",
            "envelope_case",
            "link",
            "assessment",
            "cure_evidence",
            "answer_given",
            "current_snapshot");

    private final JdbcTemplate jdbc;

    StatisticsStore(JdbcTemplate jdbc) {
        this.jdbc = jdbc;
    }

    /** Counts the tables that a load fills, in its transaction. */
    void gather() {
        ConnectionCallback<String> product =
                connection -> connection.getMetaData().getDatabaseProductName();
        if ("PostgreSQL".equals(jdbc.execute(product))) {
            LOADED.forEach(table -> jdbc.execute("analyze " + table));
        }
    }
}
