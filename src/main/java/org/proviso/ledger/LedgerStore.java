package org.proviso.ledger;

import java.util.List;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.chain.ChainHead;
import org.proviso.core.chain.LedgerEntry;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The tables of the ledger: entries are inserted and selected; only the row that names a chain's end moves. */
@Repository
class LedgerStore {

    private static final int BATCH = 1_000;

    private final JdbcClient jdbc;
    private final JdbcTemplate batches;

    LedgerStore(JdbcClient jdbc, JdbcTemplate batches) {
        this.jdbc = jdbc;
        this.batches = batches;
    }

    void insertHead(LedgerChain chain, ChainHead head) {
        jdbc.sql("insert into ledger_head (chain, sequence, hash) values (?, ?, ?)")
                .params(chain.name(), head.sequence(), head.hash())
                .update();
    }

    /** The head, held against every other writer until the transaction ends. */
    ChainHead lockHead(LedgerChain chain) {
        return head(chain, "select sequence, hash from ledger_head where chain = ? for update");
    }

    ChainHead head(LedgerChain chain) {
        return head(chain, "select sequence, hash from ledger_head where chain = ?");
    }

    private ChainHead head(LedgerChain chain, String sql) {
        return jdbc.sql(sql)
                .param(chain.name())
                .query((row, number) -> new ChainHead(row.getLong("sequence"), row.getString("hash")))
                .optional()
                .orElseThrow(() -> new IllegalStateException("there is no chain " + chain.name() + " in the ledger"));
    }

    void moveHead(LedgerChain chain, ChainHead head) {
        jdbc.sql("update ledger_head set sequence = ?, hash = ? where chain = ?")
                .params(head.sequence(), head.hash(), chain.name())
                .update();
    }

    void insert(LedgerChain chain, List<LedgerEntry> entries) {
        batches.batchUpdate("""
                insert into ledger (chain, sequence, at, actor, act, subject, payload, previous_hash, hash)
                values (?, ?, ?, ?, ?, ?, ?, ?, ?)""", entries, BATCH, (statement, entry) -> {
            LedgerRow row = LedgerRow.of(entry);
            statement.setString(1, chain.name());
            statement.setLong(2, row.sequence());
            statement.setString(3, row.at());
            statement.setString(4, row.actor());
            statement.setString(5, row.act());
            statement.setString(6, row.subject());
            statement.setString(7, row.payload());
            statement.setString(8, row.previousHash());
            statement.setString(9, row.hash());
        });
    }

    List<LedgerRow> rows(LedgerChain chain, long after, int limit) {
        return jdbc.sql("""
                        select sequence, at, actor, act, subject, payload, previous_hash, hash
                        from ledger where chain = ? and sequence > ? order by sequence
                        fetch first ? rows only""")
                .params(chain.name(), after, limit)
                .query(LedgerRow.class)
                .list();
    }

    List<LedgerRow> about(LedgerChain chain, EnvelopeNumber subject) {
        return jdbc.sql("""
                        select sequence, at, actor, act, subject, payload, previous_hash, hash
                        from ledger where chain = ? and subject = ? order by sequence""")
                .params(chain.name(), subject)
                .query(LedgerRow.class)
                .list();
    }
}
