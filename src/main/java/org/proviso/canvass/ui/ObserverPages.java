package org.proviso.canvass.ui;

import org.proviso.access.FirstPage;
import org.proviso.access.PlainPages;
import org.proviso.access.Role;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The addresses of the observers' pages: plain, for whoever signed in. */
@Configuration(proxyBeanMethods = false)
class ObserverPages {

    @Bean
    PlainPages observerAddresses() {
        return PlainPages.forSignedIn("/observe", "/observe/**");
    }

    @Bean
    FirstPage observersFirstPage() {
        return new FirstPage(Role.OBSERVER, "/observe");
    }
}
