package org.proviso.election;

import java.util.Optional;
import org.proviso.core.ElectionId;
import org.springframework.jdbc.core.ConnectionCallback;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.stereotype.Repository;
import org.springframework.transaction.support.TransactionSynchronizationManager;

/**
 * Whether an election is closed, so that an act and the closing never miss each other: an act shares the row until it ends,
 * and the closing waits for all of them. On H2 one transaction writes at a time, which is the same.
 */
@Repository
class ElectionLockStore {

    private static final String CLOSED = "select closed_at is not null as closed from election where election_id = ?";

    private final JdbcClient jdbc;
    private final JdbcTemplate template;
    private Optional<Boolean> locksRows = Optional.empty();

    ElectionLockStore(JdbcClient jdbc, JdbcTemplate template) {
        this.jdbc = jdbc;
        this.template = template;
    }

    /** Whether it is closed; in an act nobody closes it before the act ends. One that is not there is not closed. */
    boolean isClosed(ElectionId id) {
        return closed(id, isAct() && locksRows() ? " for share" : "");
    }

    /** Waits until every act on the election has ended, and keeps others from beginning: for the closing. */
    void lock(ElectionId id) {
        closed(id, locksRows() ? " for update" : "");
    }

    private boolean closed(ElectionId id, String lock) {
        return jdbc.sql(CLOSED + lock)
                .param(id)
                .query((row, line) -> row.getBoolean("closed"))
                .optional()
                .orElse(false);
    }

    private static boolean isAct() {
        return TransactionSynchronizationManager.isActualTransactionActive()
                && !TransactionSynchronizationManager.isCurrentTransactionReadOnly();
    }

    private synchronized boolean locksRows() {
        if (locksRows.isEmpty()) {
            ConnectionCallback<String> product =
                    connection -> connection.getMetaData().getDatabaseProductName();
            locksRows = Optional.of("PostgreSQL".equals(template.execute(product)));
        }
        return locksRows.get();
    }
}
