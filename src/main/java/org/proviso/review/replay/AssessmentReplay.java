package org.proviso.review.replay;

import java.util.List;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.kept.KeptAssessment;
import org.proviso.election.RulesService;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/**
 * Makes every assessment again from its facts, its moment and its rules and compares it with what is kept, to the last
 * letter. It reads and changes nothing.
 */
@Service
@BetweenRooms
public class AssessmentReplay {

    /** So many cases are in memory at once. */
    private static final int PAGE = 50;

    private final KeptAssessmentStore assessments;
    private final RulesService rules;

    AssessmentReplay(KeptAssessmentStore assessments, RulesService rules) {
        this.assessments = assessments;
        this.rules = rules;
    }

    /**
     * Goes over every assessment of an election, each in its three ways. Not in one transaction, since it may take
     * minutes: what is added meanwhile may be seen or not.
     */
    @Transactional(propagation = Propagation.NOT_SUPPORTED)
    public ReplayVerdict replay(ElectionId electionId) {
        ReplayCount count = new ReplayCount();
        StoredRulesCache kept =
                new StoredRulesCache(hash -> rules.book(electionId, hash).pack());
        List<EnvelopeNumber> page = assessments.envelopesAfter(electionId, null, PAGE);
        while (!page.isEmpty()) {
            EnvelopeNumber last = page.get(page.size() - 1);
            for (StoredAssessment stored :
                    assessments.between(electionId, page.get(0).value(), last.value())) {
                count.add(stored, check(stored, kept));
            }
            page = assessments.envelopesAfter(electionId, last, PAGE);
        }
        return count.verdict();
    }

    /** What is wrong with it; empty where nothing is. */
    private static String check(StoredAssessment stored, StoredRulesCache rules) {
        try {
            if (!stored.origins().areOfThisEngine()) {
                return stored.origins().areSaidBy(stored.content())
                        ? ""
                        : "its content says it was made from something else than its row";
            }
            KeptAssessment kept = stored.kept();
            return kept.difference(kept.assessAgain(rules.of(kept.packHash())));
        } catch (RuntimeException e) {
            // Whatever somebody wrote into a row, it is a difference to name and no end of the comparison.
            return "it cannot be made again: " + e.getMessage();
        }
    }
}
