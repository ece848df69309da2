package org.proviso.election;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.stereotype.Component;

/** Says on the console how far a long load is; a small one is done before anybody would read it. */
@Component
class LoadLog {

    private static final Logger LOG = LoggerFactory.getLogger(LoadLog.class);
    private static final long EACH = 100_000;

    LoadLog(LoadWatch watch) {
        watch.hear(LoadLog::say);
    }

    private static void say(LoadStep step) {
        if (step.rows() > 0 && step.rows() % EACH == 0) {
            LOG.info("{}: {}", step.words(), step.figures());
        }
    }
}
