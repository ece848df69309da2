package org.proviso.cli;

import org.springframework.boot.autoconfigure.ImportAutoConfiguration;
import org.springframework.boot.autoconfigure.context.ConfigurationPropertiesAutoConfiguration;
import org.springframework.boot.autoconfigure.jdbc.DataSourceAutoConfiguration;
import org.springframework.boot.autoconfigure.jdbc.DataSourceTransactionManagerAutoConfiguration;
import org.springframework.boot.autoconfigure.jdbc.JdbcClientAutoConfiguration;
import org.springframework.boot.autoconfigure.jdbc.JdbcTemplateAutoConfiguration;
import org.springframework.boot.autoconfigure.transaction.TransactionAutoConfiguration;
import org.springframework.boot.autoconfigure.transaction.TransactionManagerCustomizationAutoConfiguration;
import org.springframework.boot.autoconfigure.validation.ValidationAutoConfiguration;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.FilterType;

/**
 * The rooms that keep the office's memory, for a verb of the shell: no page, no sign-in, no first start, no migration.
 * Not annotated as a configuration, so that the server does not find it.
 */
@ImportAutoConfiguration({
    ConfigurationPropertiesAutoConfiguration.class,
    DataSourceAutoConfiguration.class,
    JdbcTemplateAutoConfiguration.class,
    JdbcClientAutoConfiguration.class,
    TransactionManagerCustomizationAutoConfiguration.class,
    DataSourceTransactionManagerAutoConfiguration.class,
    TransactionAutoConfiguration.class,
    ValidationAutoConfiguration.class
})
@ComponentScan(
        basePackages = {
            "org.proviso.ledger",
            "org.proviso.access",
            "org.proviso.election",
            "org.proviso.roll",
            "org.proviso.intake",
            "org.proviso.review",
            "org.proviso.board",
            "org.proviso.release",
            "org.proviso.notices",
            "org.proviso.status",
            "org.proviso.canvass"
        },
        excludeFilters =
                @ComponentScan.Filter(
                        type = FilterType.REGEX,
                        pattern = {
                            ".*\\.WebSecurity",
                            ".*\\.FirstAccounts",
                            ".*\\.StartCheck",
                            ".*\\.ui\\..*",
                            ".*Test.*"
                        }))
final class OfficeServices {}
