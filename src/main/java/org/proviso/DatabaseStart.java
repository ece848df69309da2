package org.proviso;

import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.autoconfigure.flyway.FlywayMigrationStrategy;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The tables are brought up to date once, whether somebody was ahead or not. */
@Configuration(proxyBeanMethods = false)
class DatabaseStart {

    @Bean
    FlywayMigrationStrategy afterWhoeverIsAhead(ObjectProvider<DatabaseAhead> ahead) {
        return flyway -> {
            DatabaseAhead somebody = ahead.getIfAvailable();
            if (somebody == null) {
                flyway.migrate();
            } else {
                somebody.then(flyway::migrate);
            }
        };
    }
}
