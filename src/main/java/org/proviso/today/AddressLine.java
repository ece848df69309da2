package org.proviso.today;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.boot.web.servlet.context.ServletWebServerApplicationContext;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;

/** Says on the console, once the server can be used, where to find it. */
@Component
class AddressLine {

    private static final Logger LOG = LoggerFactory.getLogger(AddressLine.class);

    @EventListener
    void say(ApplicationReadyEvent ready) {
        if (ready.getApplicationContext() instanceof ServletWebServerApplicationContext server) {
            LOG.info(
                    "Proviso is ready: http://localhost:{}/  (Ctrl+C ends it)",
                    server.getWebServer().getPort());
        }
    }
}
