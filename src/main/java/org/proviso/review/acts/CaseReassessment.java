package org.proviso.review.acts;

import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeSet;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.rules.Rules;
import org.proviso.review.CaseActResult;
import org.proviso.review.CaseActSteps;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.assess.AssessmentService;
import org.springframework.stereotype.Component;

/** The end of an act that says something new of a case: assess it anew, record the act, tell the later rooms. */
@Component
class CaseReassessment {

    private final CaseActSteps desk;
    private final AssessmentService assessments;
    private final AccessService access;

    CaseReassessment(CaseActSteps desk, AssessmentService assessments, AccessService access) {
        this.desk = desk;
        this.assessments = assessments;
        this.access = access;
    }

    CaseActResult done(EnvelopeCase now, OfficeUser user, String act, Map<String, Object> payload) {
        return done(now, new TreeSet<>(), user, act, payload);
    }

    /** The same where other cases, locked too, are touched. */
    CaseActResult done(
            EnvelopeCase now,
            SortedSet<EnvelopeKey> touched,
            OfficeUser user,
            String act,
            Map<String, Object> payload) {
        SortedSet<EnvelopeKey> all = new TreeSet<>(touched);
        all.add(now.key());
        SortedMap<EnvelopeKey, CaseReport> reports = assessments.renew(all);
        desk.record(now.key(), user.actor(), act, payload);
        assessments.announce(reports);
        return new CaseActResult.Accepted(now);
    }

    /** Where the law wants two parties to look, the second reviewer is of another one than the first. */
    Optional<Refusal> sameParty(EnvelopeKey key, OfficeUser second, UserName firstUserName) {
        boolean wanted = desk.book(key.electionId())
                .pack()
                .word(Rules.SIGNATURE_REJECTED_BY)
                .equals("two_reviewers_of_different_parties");
        return wanted && access.party(firstUserName).equals(second.party())
                ? Optional.of(Refusal.of(Why.OWN_ACT, "A reviewer of another party has to look a second time."))
                : Optional.empty();
    }
}
