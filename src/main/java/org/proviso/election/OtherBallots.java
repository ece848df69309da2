package org.proviso.election;

import java.util.List;
import java.util.Optional;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.UserName;
import org.proviso.core.act.Refusal;
import org.proviso.core.deciding.RuleChecks;
import org.proviso.core.rules.InformationRules;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Whether all mail and in-person ballots are counted: under some packs no envelope is decided, or opened, before that. The
 * release team's page records it.
 */
@BetweenRooms
@Component
public class OtherBallots {

    private final OtherBallotsStore others;
    private final RulesService rules;

    OtherBallots(OtherBallotsStore others, RulesService rules) {
        this.others = others;
        this.rules = rules;
    }

    @Transactional(readOnly = true)
    public boolean areCounted(ElectionId electionId) {
        return others.areCounted(electionId);
    }

    @Transactional(propagation = Propagation.MANDATORY)
    public void markCounted(ElectionId electionId, UserName by) {
        others.markCounted(electionId, by);
    }

    /** Holds the word for this transaction, so that nobody takes it back while a batch is begun to open. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void hold(ElectionId electionId) {
        others.hold(electionId);
    }

    /** The word was given too early: it is kept apart, with the reason. */
    @Transactional(propagation = Propagation.MANDATORY)
    public void takeBack(ElectionId electionId, UserName by, String because) {
        others.takeBack(electionId, by, because);
    }

    /** How often the word was taken back, in order. */
    @Transactional(readOnly = true)
    public List<WordTakenBack> takenBack(ElectionId electionId) {
        return others.takenBack(electionId);
    }

    /** Why nothing may be decided yet, where the pack wants all others counted first. */
    @Transactional(readOnly = true)
    public Optional<Refusal> beforeDeciding(ElectionId electionId) {
        return RuleChecks.othersFirst(
                rules.book(electionId).pack(),
                InformationRules.DECISION_AFTER_ALL_OTHERS,
                () -> others.areCounted(electionId),
                "All mail and in-person ballots are counted first. Record on the Release page that all other ballots are"
                        + " counted.");
    }
}
