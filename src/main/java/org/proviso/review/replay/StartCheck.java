package org.proviso.review.replay;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.election.ElectionService;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;
import org.proviso.ledger.TableComparison;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.autoconfigure.condition.ConditionalOnExpression;
import org.springframework.context.SmartLifecycle;
import org.springframework.stereotype.Component;

/**
 * After a server that was killed, before anything is written: compares every chain with its end and every case with its
 * entries, and says in one line what was found and how to go on. A PostgreSQL server keeps acts whole by itself, and several
 * servers of the office may use it.
 */
@Component
@ConditionalOnExpression("'${spring.datasource.url:}'.startsWith('jdbc:h2:')")
class StartCheck implements SmartLifecycle {

    private static final Logger LOG = LoggerFactory.getLogger(StartCheck.class);

    private final ServerRunStore runs;
    private final ElectionService elections;
    private final LedgerService ledger;
    private final CaseReplay cases;
    private final Clock clock;
    private volatile boolean running;

    StartCheck(ServerRunStore runs, ElectionService elections, LedgerService ledger, CaseReplay cases, Clock clock) {
        this.runs = runs;
        this.elections = elections;
        this.ledger = ledger;
        this.cases = cases;
        this.clock = clock;
    }

    @Override
    public void start() {
        if (runs.begin(clock.instant())) {
            tell(torn());
        }
        running = true;
    }

    private static void tell(List<String> torn) {
        if (torn.isEmpty()) {
            LOG.info("The server was not stopped last time. All chains of the ledger and all cases are whole.");
        } else {
            LOG.error(
                    "The server was killed, and what it was saving is torn: {} Let nobody work. Stop the server, put"
                            + " back the last backup, and enter again what was done since (docs/data.md).",
                    String.join(" ", torn));
        }
    }

    /** What does not fit, in a sentence each; empty where all is whole. */
    List<String> torn() {
        List<String> torn = new ArrayList<>();
        follow(LedgerChain.OFFICE, torn);
        for (ElectionId election : elections.all()) {
            follow(LedgerChain.of(election), torn);
            TableComparison compared = cases.replay(election);
            compared.first().forEach(difference -> torn.add("Election " + election + ": " + difference));
        }
        return torn;
    }

    private void follow(LedgerChain chain, List<String> torn) {
        ledger.verify(chain).fault().ifPresent(fault -> torn.add("Chain " + chain.name() + ": " + fault + "."));
    }

    @Override
    public void stop() {
        runs.end();
        running = false;
    }

    @Override
    public boolean isRunning() {
        return running;
    }

    /** Before the rules that came with the program are put in force, and long before the pages. */
    @Override
    public int getPhase() {
        return -10;
    }
}
