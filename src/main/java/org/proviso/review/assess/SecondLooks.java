package org.proviso.review.assess;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.access.StaffList;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.rules.Rules;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStore;
import org.proviso.review.facts.AnswerRules;
import org.proviso.review.facts.AnswerStore;
import org.proviso.review.facts.FindingSeenStore;
import org.proviso.review.facts.RecordedAnswer;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/**
 * The second look at a signature is blind: until whoever may look second has looked, a case is to them as if nobody had. Where
 * a page must show the first finding all the same, that they saw it is noted, and their look is not independent any more.
 */
@Service
@BetweenRooms
public class SecondLooks {

    private static final Set<CaseState> IN_REVIEW = Set.of(CaseState.OPEN, CaseState.IN_REVIEW);

    private final AnswerStore answers;
    private final FindingSeenStore seen;
    private final SeenFindingLog log;
    private final CaseStore cases;
    private final CaseActSteps steps;
    private final StaffList staff;
    private final AssessmentService assessments;

    SecondLooks(
            AnswerStore answers,
            FindingSeenStore seen,
            SeenFindingLog log,
            CaseStore cases,
            CaseActSteps steps,
            StaffList staff,
            AssessmentService assessments) {
        this.answers = answers;
        this.seen = seen;
        this.log = log;
        this.cases = cases;
        this.steps = steps;
        this.staff = staff;
        this.assessments = assessments;
    }

    /** Whether the case must not tell that person yet what the first reviewer found. */
    @Transactional(readOnly = true)
    public boolean isBlind(EnvelopeKey key, OfficeUser reader) {
        return cases.find(key)
                .filter(now -> IN_REVIEW.contains(now.state()))
                .flatMap(now -> waitingFor(key, reader))
                .filter(first -> !seen.isSeen(key, first.number(), reader.userName()))
                .isPresent();
    }

    /** The case as the rules see it, as far as that person may know it now. */
    @Transactional(readOnly = true)
    public CaseReport report(EnvelopeKey key, OfficeUser reader) {
        if (isBlind(key, reader)) {
            return assessments.beforeLooks(key);
        }
        shown(key, reader);
        return assessments.now(key);
    }

    /** The whole case, with the first finding, is shown to that person. */
    @Transactional(readOnly = true)
    public void shown(EnvelopeKey key, OfficeUser reader) {
        waitingFor(key, reader)
                .filter(first -> !seen.isSeen(key, first.number(), reader.userName()))
                .filter(first -> steps.closed(key).isEmpty())
                .ifPresent(first -> log.note(key, first.number(), reader));
    }

    /** What the whole ledger of an election shows to somebody who takes it out of the office's pages. */
    @Transactional(readOnly = true)
    public void allShown(ElectionId electionId, OfficeUser reader) {
        if (Permission.ANSWER_QUESTIONS.isOpenTo(reader.roles())) {
            answers.foundDifferentByOne(electionId)
                    .forEach(number -> shown(new EnvelopeKey(electionId, number), reader));
        }
    }

    /** Whether that person saw what the first reviewer found before looking. */
    public boolean isInformed(EnvelopeKey key, RecordedAnswer first, OfficeUser looker) {
        return seen.isSeen(key, first.number(), looker.userName());
    }

    /** Where the law wants two parties to look, a reviewer of the first one's party does not look second. */
    public boolean isOfSameParty(ElectionId electionId, UserName first, OfficeUser looker) {
        return isByTwoParties(electionId) && staff.party(first).equals(looker.party());
    }

    /** Whether the law wants reviewers of two parties to find a signature different. */
    public boolean isByTwoParties(ElectionId electionId) {
        return steps.book(electionId)
                .pack()
                .word(Rules.SIGNATURE_REJECTED_BY)
                .equals("two_reviewers_of_different_parties");
    }

    /** The finding that waits for a second look by that person, whatever they know of it. */
    private Optional<RecordedAnswer> waitingFor(EnvelopeKey key, OfficeUser reader) {
        if (!Permission.ANSWER_QUESTIONS.isOpenTo(reader.roles())) {
            return Optional.empty();
        }
        List<RecordedAnswer> standing = answers.standing(key);
        return AnswerRules.firstLook(standing)
                .filter(first -> !AnswerRules.lookers(standing).contains(reader.userName()))
                .filter(first -> !isOfSameParty(key.electionId(), first.by(), reader));
    }

    /** What persons recorded, as far as somebody may know it to whom a case is blind. */
    public static List<RecordedAnswer> beforeLooks(List<RecordedAnswer> standing) {
        return standing.stream()
                .filter(answer -> !answer.fact().equals(Fact.SIGNATURE_COMPARISON))
                .toList();
    }
}
