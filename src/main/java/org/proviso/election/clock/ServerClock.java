package org.proviso.election.clock;

import java.time.Clock;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The one place where the server reads the machine's clock; everything else is handed the clock from here. */
@Configuration(proxyBeanMethods = false)
class ServerClock {

    /** Outside a demonstration nothing that was kept moves it. */
    @Bean
    Clock officeClock(OfficeClockStore clocks, @Value("${proviso.demo:false}") boolean demo) {
        OfficeClock clock = new OfficeClock(Clock.systemUTC(), demo);
        if (demo) {
            clocks.find().ifPresent(clock::follow);
        }
        return clock;
    }
}
