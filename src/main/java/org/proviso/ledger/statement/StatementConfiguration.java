package org.proviso.ledger.statement;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.namedparam.NamedParameterJdbcOperations;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The client, and the batches, through which every store speaks to the database. */
@Configuration(proxyBeanMethods = false)
class StatementConfiguration {

    @Bean
    JdbcClient statements(JdbcTemplate template) {
        return new OfficeJdbcClient(JdbcClient.create(template));
    }

    @Bean
    NamedParameterJdbcOperations batches(JdbcTemplate template) {
        return new OfficeBatches(template);
    }
}
