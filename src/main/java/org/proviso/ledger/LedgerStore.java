package org.proviso.ledger;

import java.util.List;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.chain.ChainHead;
import org.proviso.core.chain.LedgerEntry;
import org.springframework.jdbc.core.namedparam.NamedParameterJdbcOperations;
import org.springframework.jdbc.core.namedparam.SqlParameterSourceUtils;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;

/** The tables of the ledger: entries are inserted and selected; only the row that names a chain's end moves. */
@Repository
class LedgerStore {

    /** An entry in its chain. */
    private record Line(String chain, LedgerRow row) {}

    private final JdbcClient jdbc;
    private final NamedParameterJdbcOperations batches;

    LedgerStore(JdbcClient jdbc, NamedParameterJdbcOperations batches) {
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
                .query(ChainHead.class)
                .optional()
                .orElseThrow(() -> new IllegalStateException("there is no chain " + chain.name() + " in the ledger"));
    }

    void moveHead(LedgerChain chain, ChainHead head) {
        jdbc.sql("update ledger_head set sequence = ?, hash = ? where chain = ?")
                .params(head.sequence(), head.hash(), chain.name())
                .update();
    }

    void insert(LedgerChain chain, List<LedgerEntry> entries) {
        List<Line> lines = entries.stream()
                .map(entry -> new Line(chain.name(), LedgerRow.of(entry)))
                .toList();
        batches.batchUpdate("""
                insert into ledger (chain, sequence, at, actor, act, subject, payload, previous_hash, hash)
                values (:chain, :row.sequence, :row.at, :row.actor, :row.act, :row.subject, :row.payload,
                    :row.previousHash, :row.hash)""", SqlParameterSourceUtils.createBatch(lines));
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
