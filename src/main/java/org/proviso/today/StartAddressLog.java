package org.proviso.today;

import java.lang.management.ManagementFactory;
import java.time.Duration;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.boot.web.servlet.context.ServletWebServerApplicationContext;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Says on the console, once the server can be used, where to find it and who can reach it. */
@Component
class StartAddressLog {

    private static final Logger LOG = LoggerFactory.getLogger(StartAddressLog.class);

    private final ListenAddress door;

    StartAddressLog(ListenAddress door) {
        this.door = door;
    }

    /** After everything else that is done at a start. */
    @EventListener
    void say(ApplicationReadyEvent ready) {
        if (ready.getApplicationContext() instanceof ServletWebServerApplicationContext server) {
            LOG.info(
                    "Proviso is ready after {} s: http://localhost:{}/  ({}Ctrl+C ends it)",
                    sinceStart().toSeconds(),
                    server.getWebServer().getPort(),
                    door.isForThisMachineOnly()
                            ? "this machine only, unless --server.address names another address; "
                            : "");
        }
    }

    /** By the clock of the process, so that what Java itself took counts too. */
    private static Duration sinceStart() {
        return Duration.ofMillis(ManagementFactory.getRuntimeMXBean().getUptime());
    }
}
