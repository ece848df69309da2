package org.proviso.ledger.statement;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.namedparam.NamedParameterJdbcTemplate;
import org.springframework.jdbc.core.namedparam.SqlParameterSource;

/** Spring's template for many rows of named values, with keys and codes as the text that the columns hold. */
final class OfficeBatches extends NamedParameterJdbcTemplate {

    /** So many rows go to the database at once. */
    private static final int BATCH = 1_000;

    OfficeBatches(JdbcTemplate template) {
        super(template);
    }

    @Override
    public int[] batchUpdate(String sql, SqlParameterSource[] rows) {
        return IntStream.iterate(0, from -> from < rows.length, from -> from + BATCH)
                .mapToObj(from -> Arrays.copyOfRange(rows, from, Math.min(rows.length, from + BATCH)))
                .flatMapToInt(part -> Arrays.stream(super.batchUpdate(sql, asColumns(part))))
                .toArray();
    }

    private static SqlParameterSource[] asColumns(SqlParameterSource[] rows) {
        return Arrays.stream(rows).map(ColumnValues::new).toArray(SqlParameterSource[]::new);
    }
}
