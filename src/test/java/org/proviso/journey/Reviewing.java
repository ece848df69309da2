package org.proviso.journey;

import static org.proviso.journey.Office.accepted;
import static org.proviso.journey.Office.as;

import java.time.LocalDateTime;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.Key;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.facts.ChallengeFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.adjudication.facts.OtherCountyFact;
import org.proviso.core.adjudication.facts.ResidenceFact;
import org.proviso.core.adjudication.facts.SignatureComparisonFact;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.judging.AnsweredQuestion;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseService;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.ProposeOutcome;
import org.proviso.review.acts.AdministrativeEndService;
import org.proviso.review.acts.AnswerService;
import org.proviso.review.acts.CaseAssignmentService;
import org.proviso.review.acts.ConfirmLink;
import org.proviso.review.acts.LinkService;
import org.proviso.review.acts.ProposalService;
import org.proviso.review.acts.RecordAnswer;
import org.proviso.review.acts.RecordSearch;
import org.proviso.review.acts.SearchService;
import org.proviso.review.acts.VoterGroupService;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.facts.LinkStore;
import org.proviso.review.facts.OffRollReason;
import org.proviso.review.facts.PollBookSeen;
import org.proviso.review.facts.SearchFound;
import org.proviso.review.facts.SearchPlace;
import org.proviso.review.facts.SignatureComparison;

/** Two reviewers at work on one case: ada finds out what the truth file says, ben looks a second time; or two others. */
public final class Reviewing {

    private final Office office;
    private final EnvelopeKey key;
    private final Truth truth;
    private final String first;
    private final String second;
    private int lookedAt = -1;
    private @Nullable CaseReport lastReport;

    public Reviewing(Office office, EnvelopeKey key, Truth truth) {
        this(office, key, truth, "ada", "ben");
    }

    /** The same by two reviewers of these names. */
    public Reviewing(Office office, EnvelopeKey key, Truth truth, String first, String second) {
        this.office = office;
        this.key = key;
        this.truth = truth;
        this.first = first;
        this.second = second;
    }

    /** Takes the case, works on it as far as it goes, and proposes what the rules say, else gives it back; an end is confirmed. */
    public Recommendation work() {
        Recommendation says = proposed();
        if (says == Recommendation.SENT_ON || says == Recommendation.ADMINISTRATIVE_END) {
            as(second, () -> accepted(ends().confirm(key, now().version())));
        }
        return says;
    }

    /** The same, and what is proposed to end without a decision still waits for a second person. */
    public Recommendation proposed() {
        EnvelopeCase envelopeCase =
                as(first, () -> accepted(office.the(CaseAssignmentService.class).take(key, now().version())));
        if (report().recommendation() != Recommendation.ADMINISTRATIVE_END) {
            envelopeCase = identify(envelopeCase);
            signature();
            answerWhatIsOpen();
        }
        Recommendation says = report().recommendation();
        as(first, () -> finish(says));
        return says;
    }

    private EnvelopeCase finish(Recommendation says) {
        int version = now().version();
        return switch (says) {
            case COUNT -> propose(DecisionOutcome.COUNT);
            case COUNT_IN_PART -> propose(DecisionOutcome.COUNT_IN_PART);
            case REJECT -> propose(DecisionOutcome.REJECT);
            case SENT_ON -> accepted(ends().proposeToSendOn(key, version, "Birch County"));
            case ADMINISTRATIVE_END -> accepted(ends().proposeToEnd(key, version));
            default -> accepted(office.the(CaseAssignmentService.class).giveBack(key, version));
        };
    }

    private AdministrativeEndService ends() {
        return office.the(AdministrativeEndService.class);
    }

    private EnvelopeCase propose(DecisionOutcome as) {
        List<Reason> reasons = as == DecisionOutcome.COUNT
                ? List.of()
                : report().settled().outcome().reasons();
        String reference = as == DecisionOutcome.REJECT ? reference(reasons.get(0)) : "";
        return accepted(office.the(ProposalService.class)
                .propose(new ProposeOutcome(key, now().version(), as, reasons, reference, "")));
    }

    /** Where the rule that rejects is written. */
    private String reference(Reason reason) {
        return report().settled().answered().stream()
                .map(AnsweredQuestion::answer)
                .filter(answer -> answer instanceof Answer.Defect defect && defect.reason() == reason)
                .map(answer -> answer.restsOn().get(0).reference().words())
                .findFirst()
                .orElse("Example Election Code (invented) 5.3 (2020)");
    }

    private EnvelopeCase identify(EnvelopeCase envelopeCase) {
        Link link = office.the(LinkStore.class).newest(key).orElseThrow();
        if (link.isSettled()) {
            return envelopeCase;
        }
        if (truth.voterId().isEmpty()) {
            return as(first, () -> accepted(office.the(SearchService.class).record(search(envelopeCase))));
        }
        String ground =
                truth.voterId().equals(Key.text(link.voterId())) ? "" : "Birth date and address compared by hand.";
        return as(
                first,
                () -> accepted(office.the(LinkService.class)
                        .confirm(new ConfirmLink(key, envelopeCase.version(), new VoterId(truth.voterId()), ground))));
    }

    private RecordSearch search(EnvelopeCase envelopeCase) {
        SearchFound found = truth.scenario().equals("other_county") ? SearchFound.OTHER_COUNTY : SearchFound.NOTHING;
        return new RecordSearch(
                key,
                envelopeCase.version(),
                EnumSet.allOf(SearchPlace.class),
                found,
                OffRollReason.NOT_ON_THE_ROLL,
                null,
                "");
    }

    private void signature() {
        boolean due = report().settled().facts().one(Fact.SIGNATURE_COMPARISON) == SignatureComparisonFact.NOT_YET
                && isOpen("signature.agrees");
        if (!due) {
            return;
        }
        boolean differs = truth.signature().equals("another_hand");
        look(first, differs);
        if (differs) {
            look(second, true);
        }
    }

    private void look(String who, boolean differs) {
        SignatureComparison.Finding seen =
                differs ? SignatureComparison.Finding.DIFFERS : SignatureComparison.Finding.AGREES;
        as(
                who,
                () -> accepted(office.the(AnswerService.class)
                        .recordSignatureComparison(new SignatureComparison(
                                key, now().version(), seen, differs ? "Slant, joins and size." : ""))));
    }

    private void answerWhatIsOpen() {
        if (isOpen("already_voted.check_in")) {
            boolean voted = truth.scenario().equals("checked_in_elsewhere_voted");
            as(
                    first,
                    () -> accepted(office.the(AnswerService.class)
                            .recordPollBook(new PollBookSeen(
                                    key, now().version(), voted, "Poll book of the other location seen."))));
        }
        if (isOpen("already_voted.other_county")) {
            OtherCountyFact word = truth.counts() ? OtherCountyFact.NOT_THEIRS : OtherCountyFact.VOTED;
            answer(Fact.OTHER_COUNTY, word, "Called the other county.");
        }
        if (isOpen("anything_else.challenge")) {
            answer(Fact.CHALLENGE, ChallengeFact.OVERRULED, "The challenger did not appear.");
        }
        if (isOpen("registration.in_time") && truth.counts()) {
            answer(Fact.RESIDENCE, ResidenceFact.IN_COUNTY, "Asked the assessor's office: the house is in the county.");
        }
        if (isOpen("already_voted.other_envelope") && truth.scenario().endsWith("_first")) {
            as(
                    first,
                    () -> accepted(office.the(VoterGroupService.class)
                            .chooseToCount(key, now().version(), "Cast first; the other one was cast an hour later.")));
        }
    }

    /** What the voter brought to finish a registration is judged by a person. */
    void registrationFinished(LocalDateTime stamp) {
        as(first, () -> accepted(office.the(CaseAssignmentService.class).take(key, now().version())));
        as(
                first,
                () -> accepted(office.the(AnswerService.class)
                        .answer(new RecordAnswer(
                                key,
                                now().version(),
                                Fact.REGISTRATION,
                                Set.of(org.proviso.core.adjudication.facts.RegistrationFact.IN_TIME),
                                "The missing signature of the application was brought.",
                                stamp))));
        as(first, () -> accepted(office.the(CaseAssignmentService.class).giveBack(key, now().version())));
    }

    private void answer(Fact<?> fact, FactWord word, String reason) {
        as(
                first,
                () -> accepted(office.the(AnswerService.class)
                        .answer(new RecordAnswer(key, now().version(), fact, Set.of(word), reason, null))));
    }

    private boolean isOpen(String question) {
        return report().settled().answered().stream()
                .anyMatch(answeredQuestion -> answeredQuestion.question().key().equals(question)
                        && answeredQuestion.answer() instanceof Answer.Open);
    }

    /** What the rules say since the last act on the case. */
    public CaseReport report() {
        int version = now().version();
        if (lastReport == null || version != lookedAt) {
            lastReport = office.the(AssessmentService.class).now(key);
            lookedAt = version;
        }
        return lastReport;
    }

    private EnvelopeCase now() {
        Optional<EnvelopeCase> found = office.the(CaseService.class).find(key);
        return found.orElseThrow();
    }
}
