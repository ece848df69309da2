package org.proviso.ledger.transaction;

import java.time.Duration;
import javax.sql.DataSource;
import org.springframework.boot.jdbc.DatabaseDriver;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.jdbc.support.JdbcTransactionManager;
import org.springframework.jdbc.support.JdbcUtils;
import org.springframework.jdbc.support.MetaDataAccessException;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;

/** The transactions of whichever database the office keeps its memory in. */
@Configuration(proxyBeanMethods = false)
class TransactionConfiguration {

    /** As long as a list of a large county takes to load on H2. */
    private static final Duration PATIENCE = Duration.ofSeconds(60);

    @Bean
    PlatformTransactionManager transactions(DataSource connections) throws MetaDataAccessException {
        String product = JdbcUtils.extractDatabaseMetaData(connections, database -> database.getDatabaseProductName());
        return DatabaseDriver.fromProductName(product) == DatabaseDriver.H2
                ? new OneWriterTransactions(connections, PATIENCE)
                : new JdbcTransactionManager(connections);
    }

    @Bean
    TransactionTemplate transaction(PlatformTransactionManager transactions) {
        return new TransactionTemplate(transactions);
    }
}
