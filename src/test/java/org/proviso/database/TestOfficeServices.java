package org.proviso.database;

import com.zaxxer.hikari.HikariDataSource;
import java.time.Clock;
import java.time.Instant;
import javax.sql.DataSource;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.FilterType;
import org.springframework.context.annotation.Primary;
import org.springframework.jdbc.core.JdbcTemplate;
import org.springframework.transaction.annotation.EnableTransactionManagement;
import org.springframework.validation.beanvalidation.MethodValidationPostProcessor;

/**
 * The rooms that keep the office's memory, without the web: no page, no sign-in form, a clock that stands still until it
 * is set. Not annotated as a configuration, so that a server started by a test does not find it.
 */
@EnableTransactionManagement(proxyTargetClass = true)
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
                            ".*\\.ui\\..*",
                            ".*\\.WebSecurity",
                            ".*\\.ServerClock",
                            ".*\\.DeadlineTimer",
                            ".*\\.RulesAtStart",
                            ".*\\.StartCheck",
                            ".*Test.*"
                        }))
class TestOfficeServices {

    /** Election night in the samples' county. */
    static final Instant NOW = Instant.parse("2026-11-04T03:00:00Z");

    @Bean
    Clock clock() {
        return new OfficeTime();
    }

    @Bean
    static MethodValidationPostProcessor checkedCommands() {
        MethodValidationPostProcessor checked = new MethodValidationPostProcessor();
        checked.setProxyTargetClass(true);
        return checked;
    }

    /** A test can count what is sent to the database. */
    @Bean
    @Primary
    DataSource counted(HikariDataSource connections) {
        return new CountingDataSource(connections);
    }

    @Bean
    JdbcTemplate template(DataSource connections) {
        return new JdbcTemplate(connections);
    }
}
