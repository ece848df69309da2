package org.proviso.election;

import java.time.Clock;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The one place where the server reads the machine's clock; everything else is handed the clock from here. */
@Configuration(proxyBeanMethods = false)
class ServerClock {

    @Bean
    Clock officeClock() {
        return Clock.systemUTC();
    }
}
