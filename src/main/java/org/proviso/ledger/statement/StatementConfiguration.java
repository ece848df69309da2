package org.proviso.ledger.statement;

import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The client through which every store speaks to the database. */
@Configuration(proxyBeanMethods = false)
class StatementConfiguration {

    @Bean
    JdbcClient statements(JdbcTemplate template) {
        return new OfficeJdbcClient(JdbcClient.create(template));
    }
}
