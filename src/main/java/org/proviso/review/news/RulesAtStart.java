package org.proviso.review.news;

import org.proviso.core.ElectionId;
import org.proviso.election.ElectionService;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.context.SmartLifecycle;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.stereotype.Component;

/** Before the first page is served: puts the rules that came with this version of the program in force. */
@Component
class RulesAtStart implements SmartLifecycle {

    private static final Logger LOG = LoggerFactory.getLogger(RulesAtStart.class);

    private final ElectionService elections;
    private final ProgramRulesUpdate rules;
    private volatile boolean looked;

    RulesAtStart(ElectionService elections, ProgramRulesUpdate rules) {
        this.elections = elections;
        this.rules = rules;
    }

    @Override
    public void start() {
        for (ElectionId election : elections.all()) {
            int changed = look(election);
            if (changed > 0) {
                LOG.info(
                        "The rules of {} were updated with the program; the outcome of {} cases changes.",
                        election,
                        changed);
            }
        }
        looked = true;
    }

    /** Of several nodes that start together one puts the rules in force; the others find that done. */
    private int look(ElectionId election) {
        try {
            return rules.takeUpNewRules(election).size();
        } catch (DuplicateKeyException e) {
            return rules.takeUpNewRules(election).size();
        }
    }

    @Override
    public void stop() {
        looked = false;
    }

    @Override
    public boolean isRunning() {
        return looked;
    }

    /** Early: the pages come last. */
    @Override
    public int getPhase() {
        return 0;
    }
}
