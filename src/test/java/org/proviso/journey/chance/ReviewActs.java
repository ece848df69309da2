package org.proviso.journey.chance;

import static org.proviso.journey.chance.ChanceOffice.key;
import static org.proviso.journey.chance.ChanceOffice.pick;
import static org.proviso.journey.chance.ChanceOffice.seen;
import static org.proviso.journey.chance.ChanceOffice.somebody;

import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.proviso.access.Permission;
import org.proviso.canvass.Figure;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.UserName;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.review.CaseState;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.ProposeOutcome;
import org.proviso.review.acts.AdministrativeEndService;
import org.proviso.review.acts.AnswerService;
import org.proviso.review.acts.CaseAssignmentService;
import org.proviso.review.acts.ClearCaseService;
import org.proviso.review.acts.ConfirmLink;
import org.proviso.review.acts.LinkService;
import org.proviso.review.acts.ProposalService;
import org.proviso.review.acts.RecordAnswer;
import org.proviso.review.acts.RecordSearch;
import org.proviso.review.acts.ResearchService;
import org.proviso.review.acts.SearchService;
import org.proviso.review.acts.VoterGroupService;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.ends.EndProposal;
import org.proviso.review.ends.EndProposalStore;
import org.proviso.review.ends.EndedCaseService;
import org.proviso.review.ends.RecordCountyReceipt;
import org.proviso.review.facts.LinkStore;
import org.proviso.review.facts.OffRollReason;
import org.proviso.review.facts.PollBookSeen;
import org.proviso.review.facts.ResearchStore;
import org.proviso.review.facts.SearchFound;
import org.proviso.review.facts.SearchPlace;
import org.proviso.review.facts.SignatureComparison;
import org.proviso.review.facts.WaitsFor;

/** What reviewers can do with a case, sensible or not. */
final class ReviewActs {

    private final ChanceOffice office;

    ReviewActs(ChanceOffice office) {
        this.office = office;
    }

    /** Mostly a case in this state. */
    private EnvelopeCase aCase(Random random, CaseState state) {
        List<EnvelopeCase> in = office.in(state);
        return in.isEmpty() || random.nextInt(10) == 0 ? pick(random, office.cases()) : pick(random, in);
    }

    /** Mostly whoever has the case. */
    private static String reviewer(Random random, EnvelopeCase found) {
        UserName with = found.takenBy();
        return with == null || ChanceOffice.isOdd(random) ? somebody(random, Permission.PROPOSE) : with.value();
    }

    Optional<Attempt<?>> take(Random random) {
        EnvelopeCase found = aCase(random, CaseState.OPEN);
        return Optional.of(taken(somebody(random, Permission.PROPOSE), found, seen(random, found.version())));
    }

    Attempt<?> taken(String who, EnvelopeCase found, Attempt.Version version) {
        return Attempt.of(
                        who,
                        Permission.PROPOSE,
                        "takes " + found.key().envelopeNo(),
                        () -> office.the(CaseAssignmentService.class).take(found.key(), version.number()))
                .with(version);
    }

    Optional<Attempt<?>> giveBack(Random random) {
        EnvelopeCase found = aCase(random, CaseState.IN_REVIEW);
        return Optional.of(givenBack(reviewer(random, found), found, seen(random, found.version())));
    }

    Attempt<?> givenBack(String who, EnvelopeCase found, Attempt.Version version) {
        return Attempt.of(
                        who,
                        Permission.PROPOSE,
                        "gives back " + found.key().envelopeNo(),
                        () -> office.the(CaseAssignmentService.class).giveBack(found.key(), version.number()))
                .with(version);
    }

    /** By a supervisor, for somebody who is away. */
    Optional<Attempt<?>> release(Random random) {
        EnvelopeCase found = aCase(random, CaseState.IN_REVIEW);
        Attempt.Version version = seen(random, found.version());
        return Optional.of(Attempt.of(
                        somebody(random, Permission.RELEASE_CASES),
                        Permission.RELEASE_CASES,
                        "releases " + found.key().envelopeNo(),
                        () -> office.the(CaseAssignmentService.class)
                                .release(found.key(), version.number(), "The reviewer is away."))
                .with(version));
    }

    /** Any voter of the roll's, mostly one the match names. */
    Optional<Attempt<?>> link(Random random) {
        EnvelopeCase found = aCase(random, CaseState.IN_REVIEW);
        Link link = office.the(LinkStore.class).newest(found.key()).orElseThrow();
        String truth = office.truth(found.key()).voterId();
        List<VoterId> candidates =
                link.candidates().stream().map(candidate -> candidate.voterId()).toList();
        VoterId voter = random.nextInt(4) != 0 && !truth.isEmpty()
                ? new VoterId(truth)
                : candidates.isEmpty() ? someVoter(random) : pick(random, candidates);
        return Optional.of(
                linked(reviewer(random, found), found, seen(random, found.version()), voter, random.nextInt(5) != 0));
    }

    private VoterId someVoter(Random random) {
        return new VoterId(pick(
                random,
                office.election().truths().values().stream()
                        .map(truth -> truth.voterId())
                        .filter(voter -> !voter.isEmpty())
                        .toList()));
    }

    Attempt<?> linked(String who, EnvelopeCase found, Attempt.Version version, VoterId voter, boolean ground) {
        return Attempt.of(
                        who,
                        Permission.CONFIRM_LINK,
                        "links " + found.key().envelopeNo() + " to " + voter,
                        () -> office.the(LinkService.class)
                                .confirm(new ConfirmLink(
                                        found.key(), version.number(), voter, ground ? "Compared by hand." : "")))
                .with(version);
    }

    /** A second envelope of somebody of whom there is one already. */
    Optional<Attempt<?>> linkTwice(Random random) {
        EnvelopeCase found = aCase(random, CaseState.IN_REVIEW);
        return Optional.of(
                linked(reviewer(random, found), found, seen(random, found.version()), someVoter(random), true));
    }

    /** Of two envelopes of one person, one more is proposed to count, whatever the rules say. */
    Optional<Attempt<?>> countTwice(Random random) {
        List<EnvelopeCase> twins = office.cases(one -> one.state() == CaseState.IN_REVIEW
                && one.personId() != null
                && office.cases().stream()
                                .filter(other -> one.personId().equals(other.personId()))
                                .count()
                        > 1);
        if (twins.isEmpty()) {
            return Optional.empty();
        }
        EnvelopeCase found = pick(random, twins);
        return Optional.of(proposed(
                reviewer(random, found),
                found,
                seen(random, found.version()),
                DecisionOutcome.COUNT,
                "It must count."));
    }

    /** Confirms the presumed voter and proposes to count, at once. */
    Optional<Attempt<?>> clear(Random random) {
        EnvelopeCase found = aCase(random, CaseState.IN_REVIEW);
        Attempt.Version version = seen(random, found.version());
        VoterId presumed = office.the(LinkStore.class)
                .newest(found.key())
                .map(Link::voterId)
                .orElse(null);
        return presumed == null
                ? Optional.empty()
                : Optional.of(Attempt.of(
                                reviewer(random, found),
                                Permission.CONFIRM_LINK,
                                "settles " + found.key().envelopeNo() + " as clear",
                                () -> office.the(ClearCaseService.class)
                                        .confirmAndPropose(
                                                new ConfirmLink(found.key(), version.number(), presumed, "")))
                        .with(version));
    }

    Optional<Attempt<?>> search(Random random) {
        EnvelopeCase found = aCase(random, CaseState.IN_REVIEW);
        SearchFound what = pick(random, List.of(SearchFound.values()));
        String same = random.nextInt(5) == 0
                ? pick(random, office.cases()).key().envelopeNo().value()
                : null;
        return Optional.of(searched(
                reviewer(random, found), found, seen(random, found.version()), what, random.nextInt(4) != 0, same));
    }

    Attempt<?> searched(
            String who,
            EnvelopeCase found,
            Attempt.Version version,
            SearchFound what,
            boolean whole,
            @org.jspecify.annotations.Nullable String same) {
        Set<SearchPlace> places = whole ? EnumSet.allOf(SearchPlace.class) : EnumSet.of(SearchPlace.values()[0]);
        return Attempt.of(
                        who,
                        Permission.SEARCH,
                        "searches the voter of " + found.key().envelopeNo() + " (" + what.code() + ")"
                                + (same == null ? "" : ", the same as " + same),
                        () -> office.the(SearchService.class)
                                .record(new RecordSearch(
                                        found.key(),
                                        version.number(),
                                        places,
                                        what,
                                        OffRollReason.NOT_ON_THE_ROLL,
                                        same,
                                        "")))
                .with(version);
    }

    /** Any fact that may be answered, with any of its words. */
    Optional<Attempt<?>> answer(Random random) {
        EnvelopeCase found = aCase(random, CaseState.IN_REVIEW);
        Fact<?> fact = pick(random, Fact.all());
        FactWord word = pick(random, List.<FactWord>copyOf(fact.words()));
        return Optional.of(answered(reviewer(random, found), found, seen(random, found.version()), fact, word));
    }

    Attempt<?> answered(String who, EnvelopeCase found, Attempt.Version version, Fact<?> fact, FactWord word) {
        return Attempt.of(
                        who,
                        Permission.ANSWER_QUESTIONS,
                        "answers " + fact.key() + " of " + found.key().envelopeNo() + " with " + word,
                        () -> office.the(AnswerService.class)
                                .answer(new RecordAnswer(
                                        found.key(),
                                        version.number(),
                                        fact,
                                        Set.of(word),
                                        "Asked by telephone.",
                                        null)))
                .with(version);
    }

    Optional<Attempt<?>> takeBackAnswer(Random random) {
        EnvelopeCase found = aCase(random, CaseState.IN_REVIEW);
        Fact<?> fact = pick(random, Fact.all());
        Attempt.Version version = seen(random, found.version());
        return Optional.of(Attempt.of(
                        reviewer(random, found),
                        Permission.ANSWER_QUESTIONS,
                        "takes back answers on " + fact.key() + " of "
                                + found.key().envelopeNo(),
                        () -> office.the(AnswerService.class).withdrawAnswer(found.key(), version.number(), fact))
                .with(version));
    }

    Optional<Attempt<?>> look(Random random) {
        EnvelopeCase found = aCase(random, CaseState.IN_REVIEW);
        SignatureComparison.Finding finding =
                random.nextInt(4) == 0 ? SignatureComparison.Finding.DIFFERS : SignatureComparison.Finding.AGREES;
        String who = random.nextInt(3) == 0 ? somebody(random, Permission.ANSWER_QUESTIONS) : reviewer(random, found);
        return Optional.of(looked(who, found, seen(random, found.version()), finding));
    }

    Attempt<?> looked(String who, EnvelopeCase found, Attempt.Version version, SignatureComparison.Finding finding) {
        return Attempt.of(
                        who,
                        Permission.ANSWER_QUESTIONS,
                        "finds that the signature of " + found.key().envelopeNo() + " " + finding.code(),
                        () -> office.the(AnswerService.class)
                                .recordSignatureComparison(new SignatureComparison(
                                        found.key(), version.number(), finding, "Slant, joins and size.")))
                .with(version);
    }

    Optional<Attempt<?>> pollBook(Random random) {
        EnvelopeCase found = aCase(random, CaseState.IN_REVIEW);
        return Optional.of(
                sawPollBook(reviewer(random, found), found, seen(random, found.version()), random.nextInt(4) == 0));
    }

    Attempt<?> sawPollBook(String who, EnvelopeCase found, Attempt.Version version, boolean signed) {
        return Attempt.of(
                        who,
                        Permission.ANSWER_QUESTIONS,
                        "sees the poll book for " + found.key().envelopeNo() + ": " + signed,
                        () -> office.the(AnswerService.class)
                                .recordPollBook(new PollBookSeen(
                                        found.key(), version.number(), signed, "The other location's book.")))
                .with(version);
    }

    Optional<Attempt<?>> putForward(Random random) {
        List<EnvelopeCase> twins =
                office.cases(one -> office.truth(one.key()).scenario().startsWith("two_envelopes"));
        EnvelopeCase found =
                twins.isEmpty() || random.nextBoolean() ? aCase(random, CaseState.IN_REVIEW) : pick(random, twins);
        return Optional.of(chosen(reviewer(random, found), found, seen(random, found.version())));
    }

    Attempt<?> chosen(String who, EnvelopeCase found, Attempt.Version version) {
        return Attempt.of(
                        who,
                        Permission.ANSWER_QUESTIONS,
                        "puts " + found.key().envelopeNo() + " forward",
                        () -> office.the(VoterGroupService.class)
                                .chooseToCount(found.key(), version.number(), "It was cast first."))
                .with(version);
    }

    Optional<Attempt<?>> research(Random random) {
        EnvelopeCase found = pick(random, office.cases());
        return Optional.of(Attempt.of(
                somebody(random, Permission.SEARCH),
                Permission.SEARCH,
                "asks about " + found.key().envelopeNo(),
                () -> office.the(ResearchService.class)
                        .ask(found.key(), WaitsFor.ANOTHER_OFFICE, "The clerk", "Is it the same person?")));
    }

    Optional<Attempt<?>> researchAnswer(Random random) {
        EnvelopeKey key = pick(random, office.cases()).key();
        return office.the(ResearchStore.class).of(key).stream()
                .filter(request -> request.found() == null)
                .findFirst()
                .map(request -> {
                    Attempt.Version version = seen(random, request.version());
                    return Attempt.of(
                                    somebody(random, Permission.SEARCH),
                                    Permission.SEARCH,
                                    "notes what came back about " + key.envelopeNo(),
                                    () -> office.the(ResearchService.class)
                                            .recordAnswer(key, request.number(), version.number(), "It is."))
                            .with(version);
                });
    }

    /** Any outcome, mostly as recommended. */
    Optional<Attempt<?>> propose(Random random) {
        EnvelopeCase found = aCase(random, CaseState.IN_REVIEW);
        DecisionOutcome any = pick(random, List.of(DecisionOutcome.values()));
        DecisionOutcome as =
                random.nextInt(3) == 0 ? any : recommended(found.key()).orElse(any);
        return Optional.of(proposed(
                reviewer(random, found),
                found,
                seen(random, found.version()),
                as,
                random.nextInt(5) == 0 ? "" : "Looked at by hand."));
    }

    Optional<DecisionOutcome> recommended(EnvelopeKey key) {
        CaseReport report = office.the(AssessmentService.class).now(key);
        return java.util.Arrays.stream(DecisionOutcome.values())
                .filter(outcome -> outcome.recommendation() == report.recommendation())
                .findFirst();
    }

    Attempt<?> proposed(String who, EnvelopeCase found, Attempt.Version version, DecisionOutcome as, String departs) {
        List<Reason> because = office.the(AssessmentService.class)
                .now(found.key())
                .settled()
                .outcome()
                .reasons();
        List<Reason> reasons =
                as == DecisionOutcome.COUNT ? List.of() : because.isEmpty() ? List.of(Reason.REGISTERED_LATE) : because;
        return Attempt.of(
                        who,
                        Permission.PROPOSE,
                        "proposes to " + as.words() + " " + found.key().envelopeNo(),
                        () -> office.the(ProposalService.class)
                                .propose(new ProposeOutcome(
                                        found.key(),
                                        version.number(),
                                        as,
                                        reasons,
                                        as == DecisionOutcome.REJECT ? "Example Election Code (invented) 5.3" : "",
                                        departs)))
                .with(version);
    }

    Optional<Attempt<?>> withdraw(Random random) {
        EnvelopeCase found = aCase(random, random.nextBoolean() ? CaseState.PROPOSED : CaseState.READY);
        Attempt.Version version = seen(random, found.version());
        return Optional.of(Attempt.of(
                        somebody(random, Permission.PROPOSE),
                        Permission.PROPOSE,
                        "withdraws the proposal for " + found.key().envelopeNo(),
                        () -> office.the(ProposalService.class).withdraw(found.key(), version.number()))
                .with(version));
    }

    Optional<Attempt<?>> second(Random random) {
        EnvelopeCase found = aCase(random, CaseState.PROPOSED);
        return Optional.of(reviewed(
                somebody(random, Permission.SECOND_REVIEW),
                found,
                seen(random, found.version()),
                random.nextInt(4) != 0));
    }

    Attempt<?> reviewed(String who, EnvelopeCase found, Attempt.Version version, boolean agrees) {
        Optional<EndProposal> end = office.the(EndProposalStore.class).standing(found.key());
        return end.isPresent()
                ? endReviewed(who, end.get(), version, agrees)
                : outcomeReviewed(who, found, version, agrees);
    }

    private Attempt<?> endReviewed(String who, EndProposal end, Attempt.Version version, boolean agrees) {
        AdministrativeEndService ends = office.the(AdministrativeEndService.class);
        EnvelopeKey key = end.key();
        Attempt<EnvelopeCase> attempt = Attempt.of(
                        who,
                        Permission.SECOND_REVIEW,
                        (agrees ? "confirms to " : "returns to ") + end.words() + " of " + key.envelopeNo(),
                        () -> agrees
                                ? ends.confirm(key, version.number())
                                : ends.sendBack(key, version.number(), "Look again."))
                .with(version)
                .ofTwoPeople();
        return agrees
                ? attempt.then(now -> office.figures().over(end.sendsOn() ? Figure.SENT_ON : Figure.ENDED))
                : attempt;
    }

    private Attempt<?> outcomeReviewed(String who, EnvelopeCase found, Attempt.Version version, boolean agrees) {
        return Attempt.of(
                        who,
                        Permission.SECOND_REVIEW,
                        (agrees ? "agrees on " : "returns ") + found.key().envelopeNo(),
                        () -> office.the(ProposalService.class)
                                .secondReview(found.key(), version.number(), agrees, agrees ? "" : "Look again."))
                .with(version)
                .ofTwoPeople();
    }

    Optional<Attempt<?>> end(Random random) {
        EnvelopeCase found = aCase(random, CaseState.IN_REVIEW);
        return Optional.of(ended(reviewer(random, found), found, seen(random, found.version()), random.nextBoolean()));
    }

    Attempt<?> ended(String who, EnvelopeCase found, Attempt.Version version, boolean sendOn) {
        AdministrativeEndService ends = office.the(AdministrativeEndService.class);
        return Attempt.of(
                        who,
                        Permission.PROPOSE,
                        (sendOn ? "proposes to send on " : "proposes to end ")
                                + found.key().envelopeNo(),
                        () -> sendOn
                                ? ends.proposeToSendOn(found.key(), version.number(), "Birch County")
                                : ends.proposeToEnd(found.key(), version.number()))
                .with(version);
    }

    /** The other county received an envelope, or is said to have. */
    Optional<Attempt<?>> receipt(Random random) {
        EnvelopeCase found = aCase(random, CaseState.SENT_ON);
        Attempt.Version version = seen(random, found.version());
        return Optional.of(Attempt.of(
                        somebody(random, Permission.PROPOSE),
                        Permission.PROPOSE,
                        "records the receipt for " + found.key().envelopeNo(),
                        () -> office.the(EndedCaseService.class)
                                .recordReceipt(new RecordCountyReceipt(
                                        found.key(),
                                        version.number(),
                                        office.now().toLocalDate(),
                                        "Jane Roe",
                                        "")))
                .with(version));
    }

    /** The case as it is, for whoever has it: null for nobody. */
    static String holder(EnvelopeCase found) {
        return Objects.requireNonNull(found.takenBy(), "somebody has a case in review")
                .value();
    }

    EnvelopeCase again(EnvelopeCase found) {
        return office.now(key(found.key().envelopeNo()));
    }
}
