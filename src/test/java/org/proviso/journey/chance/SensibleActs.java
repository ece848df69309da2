package org.proviso.journey.chance;

import static org.proviso.journey.chance.ChanceOffice.pick;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.proviso.access.Permission;
import org.proviso.board.BoardMotion;
import org.proviso.board.BoardSession;
import org.proviso.board.BodyKind;
import org.proviso.board.MotionKind;
import org.proviso.board.agenda.AgendaLine;
import org.proviso.board.motion.BoardVote;
import org.proviso.board.motion.MotionService;
import org.proviso.core.CourtOrder;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.facts.ChallengeFact;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.OtherCountyFact;
import org.proviso.core.adjudication.facts.ResidenceFact;
import org.proviso.core.adjudication.facts.SignatureComparisonFact;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.deciding.DeciderKind;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.deciding.Vote;
import org.proviso.core.rules.Reason;
import org.proviso.election.RecordedCourtOrder;
import org.proviso.journey.Truth;
import org.proviso.journey.chance.Attempt.Version;
import org.proviso.release.Batch;
import org.proviso.review.CaseState;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.Proposal;
import org.proviso.review.ProposalStore;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.facts.LinkStore;
import org.proviso.review.facts.SearchFound;
import org.proviso.review.facts.SignatureComparison;

/** What people do next who know their work: one step at a time, with the version they see. */
final class SensibleActs {

    private final ChanceOffice office;
    private final ChanceActs acts;

    SensibleActs(ChanceOffice office, ChanceActs acts) {
        this.office = office;
        this.acts = acts;
    }

    private static Version seen(EnvelopeCase found) {
        return new Version(found.version(), false);
    }

    private static String any(Random random, Permission act) {
        return pick(random, ChanceOffice.permitted(act));
    }

    /** The next step on any case that is not over and not before the board. */
    Optional<Attempt<?>> forACase(Random random) {
        List<EnvelopeCase> open = office.cases(one -> !one.state().isOver() && one.state() != CaseState.READY);
        return open.isEmpty() ? Optional.empty() : next(random, pick(random, open), false);
    }

    /** {@code atLast} proposes also where the rules still wait for something. */
    Optional<Attempt<?>> next(Random random, EnvelopeCase found, boolean atLast) {
        return switch (found.state()) {
            case RECEIVED ->
                Optional.of(acts.intake.keyed(
                        any(random, Permission.KEY_ENVELOPES), found.key().envelopeNo(), ""));
            case OPEN -> Optional.of(acts.review.taken(any(random, Permission.PROPOSE), found, seen(found)));
            case IN_REVIEW -> Optional.of(work(random, found, atLast));
            case PROPOSED ->
                Optional.of(acts.review.reviewed(any(random, Permission.SECOND_REVIEW), found, seen(found), true));
            default -> Optional.empty();
        };
    }

    private Attempt<?> work(Random random, EnvelopeCase found, boolean atLast) {
        String who = ReviewActs.holder(found);
        CaseReport report = office.the(AssessmentService.class).now(found.key());
        Recommendation says = report.recommendation();
        if (says == Recommendation.ADMINISTRATIVE_END) {
            return acts.review.ended(who, found, seen(found), false);
        }
        return identify(who, found)
                .or(() -> signature(random, who, found, report))
                .or(() -> question(who, found, report))
                .orElseGet(() -> finish(who, found, says, atLast));
    }

    private Attempt<?> finish(String who, EnvelopeCase found, Recommendation says, boolean atLast) {
        Optional<RecordedCourtOrder> order = acts.other.binding(found);
        if (order.isPresent()) {
            return asOrdered(found, order.get(), atLast);
        }
        if (says == Recommendation.SENT_ON) {
            return acts.review.ended(who, found, seen(found), true);
        }
        Optional<DecisionOutcome> recommended = acts.review.recommended(found.key());
        if (recommended.isPresent() || atLast) {
            return acts.review.proposed(
                    who,
                    found,
                    seen(found),
                    recommended.orElse(DecisionOutcome.REJECT),
                    recommended.isPresent() ? "" : "Nothing more came.");
        }
        return acts.review.givenBack(who, found, seen(found));
    }

    /** Another supervisor enters the order; one that cannot be obeyed is set aside by the court in the end. */
    private Attempt<?> asOrdered(EnvelopeCase found, RecordedCourtOrder order, boolean atLast) {
        List<String> others = ChanceOffice.permitted(Permission.RECORD_ORDERS).stream()
                .filter(name -> !order.recordedBy().contains(new UserName(name)))
                .toList();
        if (atLast || others.isEmpty()) {
            return acts.other.changed(
                    "carl", order, new Attempt.Version(order.version(), false), CourtOrder.Status.SET_ASIDE);
        }
        return acts.other.settled(others.get(0), found, seen(found), order);
    }

    private Optional<Attempt<?>> identify(String who, EnvelopeCase found) {
        Link link = office.the(LinkStore.class).newest(found.key()).orElseThrow();
        if (link.isSettled()) {
            return Optional.empty();
        }
        Truth truth = office.truth(found.key());
        if (truth.voterId().isEmpty()) {
            SearchFound what = truth.scenario().equals("other_county") ? SearchFound.OTHER_COUNTY : SearchFound.NOTHING;
            return Optional.of(acts.review.searched(who, found, seen(found), what, true, null));
        }
        return Optional.of(acts.review.linked(who, found, seen(found), new VoterId(truth.voterId()), true));
    }

    private Optional<Attempt<?>> signature(Random random, String who, EnvelopeCase found, CaseReport report) {
        SignatureComparisonFact compared = report.settled().facts().one(Fact.SIGNATURE_COMPARISON);
        if (!isOpen(report, "signature.agrees") || compared == null) {
            return Optional.empty();
        }
        boolean differs = office.truth(found.key()).signature().equals("another_hand");
        SignatureComparison.Finding finding =
                differs ? SignatureComparison.Finding.DIFFERS : SignatureComparison.Finding.AGREES;
        return switch (compared) {
            case NOT_YET -> Optional.of(acts.review.looked(who, found, seen(found), finding));
            case DIFFERS_BY_ONE ->
                Optional.of(acts.review.looked(any(random, Permission.ANSWER_QUESTIONS), found, seen(found), finding));
            default -> Optional.empty();
        };
    }

    private Optional<Attempt<?>> question(String who, EnvelopeCase found, CaseReport report) {
        Truth truth = office.truth(found.key());
        if (isOpen(report, "already_voted.check_in")) {
            boolean signed = truth.scenario().equals("checked_in_elsewhere_voted");
            return Optional.of(acts.review.sawPollBook(who, found, seen(found), signed));
        }
        if (isOpen(report, "already_voted.other_county")) {
            OtherCountyFact word = truth.counts() ? OtherCountyFact.NOT_THEIRS : OtherCountyFact.VOTED;
            return Optional.of(acts.review.answered(who, found, seen(found), Fact.OTHER_COUNTY, word));
        }
        if (isOpen(report, "anything_else.challenge")) {
            return Optional.of(acts.review.answered(who, found, seen(found), Fact.CHALLENGE, ChallengeFact.OVERRULED));
        }
        boolean resides = report.settled().facts().one(Fact.RESIDENCE) == ResidenceFact.IN_COUNTY;
        if (isOpen(report, "registration.in_time") && truth.counts() && !resides) {
            return Optional.of(acts.review.answered(who, found, seen(found), Fact.RESIDENCE, ResidenceFact.IN_COUNTY));
        }
        if (isOpen(report, "already_voted.other_envelope") && truth.scenario().endsWith("_first")) {
            return Optional.of(acts.review.chosen(who, found, seen(found)));
        }
        return Optional.empty();
    }

    private static boolean isOpen(CaseReport report, String question) {
        return report.settled().answered().stream()
                .anyMatch(answered ->
                        answered.question().key().equals(question) && answered.answer() instanceof Answer.Open);
    }

    /** The next step of a session in which everything ready is voted on as proposed. */
    Optional<Attempt<?>> forTheBoard(Random random) {
        return forTheBoard(random, Set.of());
    }

    /** The same, where some cannot be voted on today. */
    Optional<Attempt<?>> forTheBoard(Random random, Set<EnvelopeNumber> notToday) {
        DeciderKind decider = office.election().decider();
        if (decider == DeciderKind.OFFICIAL) {
            return forTheOfficial(random, notToday);
        }
        List<BodyKind> bodies = BodyKind.forDecider(decider);
        for (BodyKind body : bodies.subList(0, bodies.size() - 1)) {
            if (hasToVote(body, notToday)) {
                return forABody(random, body, notToday);
            }
        }
        return forABody(random, bodies.get(bodies.size() - 1), notToday);
    }

    /** Whether there is something ready that this body did not vote on. */
    private boolean hasToVote(BodyKind body, Set<EnvelopeNumber> notToday) {
        Optional<BoardSession> session = session(body);
        if (session.isEmpty()) {
            return !office.in(CaseState.READY).isEmpty();
        }
        boolean all = acts.board.groups(session.get().key()).stream()
                        .mapToLong(List::size)
                        .sum()
                == office.in(CaseState.READY).size();
        return !session.get().isOpen()
                || !all
                || acts.board.pending(session.get().key()).isPresent()
                || !toVoteOn(session.get(), notToday).isEmpty();
    }

    private Optional<BoardSession> session(BodyKind body) {
        return acts.board.sessions().stream()
                .filter(session -> session.body() == body)
                .findFirst();
    }

    /** What is ready is decided as it is proposed. */
    private Optional<Attempt<?>> forTheOfficial(Random random, Set<EnvelopeNumber> notToday) {
        return office.in(CaseState.READY).stream()
                .filter(found -> !notToday.contains(found.key().envelopeNo()))
                .findFirst()
                .map(found -> {
                    Proposal proposal =
                            office.the(ProposalStore.class).newest(found.key()).orElseThrow();
                    List<Reason> reasons = proposal.grounds().reasons();
                    return acts.board.decidedAlone(
                            any(random, Permission.DECIDE),
                            found,
                            MotionKind.valueOf(proposal.as().name()),
                            reasons.isEmpty() ? Reason.REGISTERED_LATE : reasons.get(0));
                });
    }

    private Optional<Attempt<?>> forABody(Random random, BodyKind body, Set<EnvelopeNumber> notToday) {
        List<String> members = BoardActs.members(body);
        String who = pick(random, members);
        Optional<BoardSession> called = session(body);
        if (called.isEmpty()) {
            return Optional.of(acts.board.called(who, body));
        }
        BoardSession session = called.get();
        Version version = new Version(session.version(), false);
        if (!session.isOpen()) {
            return Optional.of(acts.board.opened(who, session, version));
        }
        List<String> there =
                office
                        .read(
                                "eve",
                                () -> office.the(org.proviso.board.BoardService.class)
                                        .members(session.key()))
                        .stream()
                        .filter(member -> member.isThere())
                        .map(member -> member.userName().value())
                        .toList();
        Optional<String> missing =
                members.stream().filter(member -> !there.contains(member)).findFirst();
        if (missing.isPresent()) {
            return Optional.of(acts.board.arrived(who, session, missing.get()));
        }
        return acts.board
                .pending(session.key())
                .<Attempt<?>>map(motion -> vote(who, members, motion))
                .or(() -> agenda(who, session, notToday));
    }

    private Optional<Attempt<?>> agenda(String who, BoardSession session, Set<EnvelopeNumber> notToday) {
        long ready = office.in(CaseState.READY).size();
        long listed =
                acts.board.groups(session.key()).stream().mapToLong(List::size).sum();
        List<List<AgendaLine>> groups = toVoteOn(session, notToday);
        if (ready > listed) {
            return Optional.of(acts.board.addedAll(who, session.key()));
        }
        if (groups.isEmpty()) {
            return Optional.of(acts.board.closed(who, session, new Version(session.version(), false)));
        }
        List<AgendaLine> group = groups.get(0);
        MotionKind kind = BoardActs.proposed(group).orElse(MotionKind.COUNT);
        return Optional.of(acts.board.moved(who, session.key(), group, kind));
    }

    private List<List<AgendaLine>> toVoteOn(BoardSession session, Set<EnvelopeNumber> notToday) {
        return acts.board.groups(session.key()).stream()
                .filter(group -> group.stream()
                        .noneMatch(line -> notToday.contains(line.item().envelopeNo())))
                .filter(group -> !acts.board.waitsForTheOther(session, group))
                .toList();
    }

    private Attempt<?> vote(String who, List<String> members, BoardMotion motion) {
        Version version = new Version(motion.version(), false);
        if (motion.putAt() == null) {
            return acts.board.put(who, motion, version);
        }
        List<String> voted = office
                .read("eve", () -> office.the(MotionService.class).votes(motion.key()))
                .stream()
                .map(BoardVote::userName)
                .map(name -> name.value())
                .toList();
        return members.stream()
                .filter(member -> !voted.contains(member))
                .findFirst()
                .<Attempt<?>>map(member -> acts.board.voted(who, motion, member, Vote.YES))
                .orElseGet(() -> acts.board.voteClosed(who, motion, version));
    }

    /** The next step on any batch, or a new one of whatever waits. */
    Optional<Attempt<?>> forRelease(Random random) {
        List<Batch> left = acts.release.batches().stream()
                .filter(batch -> batch.handedOffAt() == null && batch.dissolvedAt() == null && batch.envelopes() > 0)
                .toList();
        if (left.isEmpty() || random.nextInt(6) == 0) {
            return random.nextInt(4) == 0
                    ? Optional.of(acts.release.othersDone(any(random, Permission.SET_GATES)))
                    : acts.release.make(random);
        }
        Batch batch = pick(random, left);
        Version version = new Version(batch.version(), false);
        String who = any(random, Permission.OPEN_ENVELOPES);
        if (batch.openedAt() == null) {
            return Optional.of(
                    batch.firstOpener() == null
                            ? acts.release.begun(who, batch, version)
                            : acts.release.opened(who, batch, version, 0));
        }
        return acts.release.sheets(batch).stream()
                .filter(sheet -> sheet.remadeAt() == null)
                .findFirst()
                .<Attempt<?>>map(sheet -> {
                    Version seen = new Version(sheet.version(), false);
                    return sheet.firstCopier() == null
                            ? acts.release.copied(who, sheet, seen)
                            : acts.release.remade(who, sheet, seen);
                })
                .or(() -> Optional.of(acts.release.handedOff(who, batch, version, batch.ballots())));
    }
}
