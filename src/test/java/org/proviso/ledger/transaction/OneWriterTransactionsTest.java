package org.proviso.ledger.transaction;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.sql.SQLException;
import java.time.Duration;
import java.util.UUID;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import javax.sql.DataSource;
import org.h2.jdbcx.JdbcDataSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.dao.CannotAcquireLockException;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.jdbc.datasource.AbstractDataSource;
import org.springframework.transaction.CannotCreateTransactionException;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;

/** On H2 one writer at a time writes and commits, and readers go on. */
class OneWriterTransactionsTest {

    private static final long SOON = 100;

    private final JdbcDataSource database = new JdbcDataSource();
    private PlatformTransactionManager transactions = patient(Duration.ofSeconds(20));
    private JdbcClient jdbc = JdbcClient.create(database);

    @BeforeEach
    void aTable() {
        database.setURL("jdbc:h2:mem:" + UUID.randomUUID() + ";DB_CLOSE_DELAY=-1");
        jdbc = JdbcClient.create(database);
        jdbc.sql("create table act (name varchar)").update();
    }

    private OneWriterTransactions patient(Duration patience) {
        return new OneWriterTransactions(database, patience);
    }

    private TransactionTemplate one(int propagation, boolean readOnly) {
        TransactionTemplate template = new TransactionTemplate(transactions);
        template.setPropagationBehavior(propagation);
        template.setReadOnly(readOnly);
        return template;
    }

    private TransactionTemplate writer() {
        return one(TransactionDefinition.PROPAGATION_REQUIRED, false);
    }

    private TransactionTemplate reader() {
        return one(TransactionDefinition.PROPAGATION_REQUIRED, true);
    }

    private void write(String name) {
        jdbc.sql("insert into act values (?)").param(name).update();
    }

    private int acts() {
        return jdbc.sql("select count(*) from act").query(Integer.class).single();
    }

    /** An act of somebody else, who began after this one. */
    private CompletableFuture<Void> somebodyElse() {
        return CompletableFuture.runAsync(() -> writer().executeWithoutResult(status -> write("else")));
    }

    @Test
    void a_second_writer_begins_when_the_first_has_committed_and_readers_go_on() throws Exception {
        CompletableFuture<Void> second = writer().execute(status -> {
            write("first");
            CompletableFuture<Void> other = somebodyElse();
            assertThat(other).as("waits").failsWithin(SOON, TimeUnit.MILLISECONDS);
            CompletableFuture<Integer> read = CompletableFuture.supplyAsync(() -> reader().execute(seen -> acts()));
            assertThat(read)
                    .as("reads what was committed")
                    .succeedsWithin(Duration.ofSeconds(10))
                    .isEqualTo(0);
            return other;
        });
        assertThat(second).succeedsWithin(Duration.ofSeconds(10));
        assertThat(acts()).isEqualTo(2);
    }

    @Test
    void transactions_within_one_let_the_next_writer_in_only_with_the_outermost() {
        CompletableFuture<Void> second = writer().execute(status -> {
            one(TransactionDefinition.PROPAGATION_REQUIRES_NEW, false).executeWithoutResult(inner -> write("inner"));
            one(TransactionDefinition.PROPAGATION_REQUIRES_NEW, true).executeWithoutResult(inner -> acts());
            one(TransactionDefinition.PROPAGATION_NESTED, false).executeWithoutResult(inner -> write("nested"));
            CompletableFuture<Void> other = somebodyElse();
            assertThat(other).as("waits").failsWithin(SOON, TimeUnit.MILLISECONDS);
            return other;
        });
        assertThat(second).succeedsWithin(Duration.ofSeconds(10));
        assertThat(acts()).isEqualTo(3);
    }

    @Test
    void an_act_that_is_rolled_back_lets_the_next_writer_in() {
        assertThatThrownBy(() -> writer().executeWithoutResult(status -> {
                    write("first");
                    throw new IllegalArgumentException("refused");
                }))
                .hasMessage("refused");
        assertThat(somebodyElse()).succeedsWithin(Duration.ofSeconds(10));
        assertThat(acts()).isEqualTo(1);
    }

    @Test
    void a_writer_without_a_connection_lets_the_next_one_in() {
        DataSource none = new AbstractDataSource() {
            @Override
            public java.sql.Connection getConnection() throws SQLException {
                throw new SQLException("none left");
            }

            @Override
            public java.sql.Connection getConnection(String user, String password) throws SQLException {
                return getConnection();
            }
        };
        OneWriterTransactions once = patient(Duration.ofMillis(SOON));
        once.setDataSource(none);
        transactions = once;
        assertThatThrownBy(() -> writer().executeWithoutResult(status -> write("first")))
                .isInstanceOf(CannotCreateTransactionException.class);
        once.setDataSource(database);
        assertThat(somebodyElse()).succeedsWithin(Duration.ofSeconds(10));
    }

    @Test
    void a_writer_who_waited_too_long_saves_nothing_and_may_try_again() throws Exception {
        transactions = patient(Duration.ofMillis(SOON));
        CountDownLatch waited = new CountDownLatch(1);
        CountDownLatch writing = new CountDownLatch(1);
        CompletableFuture<Void> first = CompletableFuture.runAsync(() -> writer().executeWithoutResult(status -> {
            write("first");
            writing.countDown();
            await(waited);
        }));
        await(writing);
        assertThatThrownBy(() -> somebodyElse().get())
                .isInstanceOf(ExecutionException.class)
                .hasCauseInstanceOf(CannotAcquireLockException.class);
        waited.countDown();
        assertThat(first).succeedsWithin(Duration.ofSeconds(10));
        assertThat(acts()).isEqualTo(1);
        assertThat(somebodyElse()).succeedsWithin(Duration.ofSeconds(10));
    }

    private static void await(CountDownLatch latch) {
        try {
            assertThat(latch.await(10, TimeUnit.SECONDS)).isTrue();
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }
}
