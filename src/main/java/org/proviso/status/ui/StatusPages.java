package org.proviso.status.ui;

import java.time.Clock;
import org.proviso.access.PlainPages;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.web.servlet.LocaleResolver;

/** The address of this room's page, its languages, and how often one may ask. */
@Configuration(proxyBeanMethods = false)
class StatusPages {

    @Bean
    PlainPages statusAddresses() {
        return PlainPages.forEveryone(StatusController.STATUS);
    }

    @Bean
    LocaleResolver localeResolver() {
        return new PageLanguage();
    }

    @Bean
    LookUpGuard lookUpGuard(
            Clock clock,
            @Value("${proviso.look-up.from-an-address:60}") int fromAnAddress,
            @Value("${proviso.look-up.for-a-receipt:10}") int forAReceipt) {
        return new LookUpGuard(clock, fromAnAddress, forAReceipt);
    }
}
