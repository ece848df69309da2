package org.proviso.practice;

import org.proviso.access.PlainPages;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The addresses of this room's pages. */
@Configuration(proxyBeanMethods = false)
class PracticePages {

    @Bean
    PlainPages practiceAddresses() {
        return PlainPages.forEveryone(
                PracticeController.PRACTICE, PracticeController.ENVELOPE, PracticeController.ON_FILE);
    }
}
