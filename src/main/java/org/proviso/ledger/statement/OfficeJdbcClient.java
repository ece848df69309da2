package org.proviso.ledger.statement;

import org.springframework.jdbc.core.simple.JdbcClient;

/** Spring's client for statements; it also takes a key or a code, and gives keys, where a column holds their text. */
final class OfficeJdbcClient implements JdbcClient {

    private final JdbcClient plain;

    OfficeJdbcClient(JdbcClient plain) {
        this.plain = plain;
    }

    @Override
    public StatementSpec sql(String sql) {
        return new OfficeStatement(plain.sql(sql));
    }
}
