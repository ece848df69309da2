package org.proviso.review.mail;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.proviso.core.BetweenRooms;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.Key;
import org.proviso.core.MailBallot;
import org.proviso.core.Voter;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.deciding.MailBallotGivesWay;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.intake.IntakeService;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStore;
import org.proviso.review.Decision;
import org.proviso.review.DecisionStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.facts.AnswerStore;
import org.proviso.review.facts.LinkStore;
import org.proviso.roll.RollService;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Transactional;

/**
 * What the mail-ballot desk is still to be told, and which envelopes wait for its answer. Nothing is remembered for it: it
 * follows from the decisions that stand, the rules, the voter's mail ballots and the lists that were sent.
 */
@Component
@BetweenRooms
public class MailDeskWork {

    private final MailListStore lists;
    private final CaseStore cases;
    private final DecisionStore decisions;
    private final LinkStore links;
    private final AnswerStore answers;
    private final AssessmentService assessments;
    private final CaseActSteps steps;
    private final RollService roll;
    private final IntakeService intake;

    MailDeskWork(
            MailListStore lists,
            CaseStore cases,
            DecisionStore decisions,
            LinkStore links,
            AnswerStore answers,
            AssessmentService assessments,
            CaseActSteps steps,
            RollService roll,
            IntakeService intake) {
        this.lists = lists;
        this.cases = cases;
        this.decisions = decisions;
        this.links = links;
        this.answers = answers;
        this.assessments = assessments;
        this.steps = steps;
        this.roll = roll;
        this.intake = intake;
    }

    /** Whether the rules of this election ask anything of the mail desk. */
    @Transactional(readOnly = true)
    public boolean isAsked(ElectionId electionId) {
        return MailBallotGivesWay.isEverAsked(pack(electionId));
    }

    /**
     * The lines of the next list: withdrawals first, then ballots to refuse, each by envelope number. An envelope has one line
     * on a list: one that counts for another voter now is withdrawn first.
     */
    @Transactional(readOnly = true)
    public List<MailLine> next(ElectionId electionId) {
        return next(asked(electionId), lists.all(electionId));
    }

    /** How many lines the desk was not told yet, or has not answered. */
    @Transactional(readOnly = true)
    public int open(ElectionId electionId) {
        List<SentLine> sent = lists.all(electionId);
        long unanswered = sent.stream().filter(line -> !line.isAnswered()).count();
        return next(asked(electionId), sent).size() + (int) unanswered;
    }

    /** Envelopes decided to count that stay closed until the desk answers, each with what is missing in words. */
    @Transactional(readOnly = true)
    public SortedMap<EnvelopeNumber, String> keptClosed(ElectionId electionId) {
        return keptClosed(electionId, asked(electionId));
    }

    /** The same of one envelope: what is missing until it may be opened, empty where nothing is. */
    @Transactional(readOnly = true)
    public Optional<String> keptClosed(EnvelopeKey key) {
        SortedMap<EnvelopeNumber, Asked> asked =
                asked(key.electionId(), () -> cases.find(key).stream().toList());
        return Optional.ofNullable(keptClosed(key.electionId(), asked).get(key.envelopeNo()));
    }

    private SortedMap<EnvelopeNumber, String> keptClosed(
            ElectionId electionId, SortedMap<EnvelopeNumber, Asked> asked) {
        SortedMap<EnvelopeNumber, String> closed = new TreeMap<>();
        if (asked.isEmpty()) {
            return closed;
        }
        Map<EnvelopeNumber, SentLine> newest = newest(lists.all(electionId));
        asked.forEach((number, found) -> {
            SentLine sent = newest.get(number);
            boolean told = sent != null && sent.asks(found.line());
            if (found.isClosed() && !told) {
                closed.put(number, "the mail desk was not told yet to refuse the voter's mail ballot");
            } else if (found.isClosed() && sent != null && !sent.isAnswered()) {
                closed.put(number, "the mail desk has not answered list " + sent.listNo());
            }
        });
        return closed;
    }

    /** An envelope that counts and whose voter's mail ballot gives way. */
    private record Asked(MailLine line, CaseState state) {

        boolean isClosed() {
            return state == CaseState.DECIDED;
        }
    }

    private static List<MailLine> next(SortedMap<EnvelopeNumber, Asked> asked, List<SentLine> sent) {
        Map<EnvelopeNumber, SentLine> newest = newest(sent);
        List<MailLine> lines = new ArrayList<>();
        newest.forEach((number, line) -> {
            Asked now = asked.get(number);
            boolean sameVoter =
                    now != null && now.line().voterId().equals(line.line().voterId());
            if (line.line().kind() == MailLine.Kind.REFUSE && !sameVoter) {
                lines.add(line.line().withdrawn());
            }
        });
        Set<EnvelopeKey> withdrawn = lines.stream().map(MailLine::key).collect(Collectors.toSet());
        asked.forEach((number, now) -> {
            SentLine line = newest.get(number);
            boolean told = line != null && line.asks(now.line());
            if (!told && !withdrawn.contains(now.line().key())) {
                lines.add(now.line());
            }
        });
        return lines;
    }

    /** The newest line of each envelope. */
    private static SortedMap<EnvelopeNumber, SentLine> newest(List<SentLine> sent) {
        SortedMap<EnvelopeNumber, SentLine> newest = new TreeMap<>();
        sent.forEach(line -> newest.put(line.line().key().envelopeNo(), line));
        return newest;
    }

    private ResolvedPack pack(ElectionId electionId) {
        return steps.book(electionId).pack();
    }

    private SortedMap<EnvelopeNumber, Asked> asked(ElectionId electionId) {
        return asked(electionId, () -> cases.all(electionId));
    }

    private SortedMap<EnvelopeNumber, Asked> asked(ElectionId electionId, Supplier<List<EnvelopeCase>> among) {
        ResolvedPack pack = pack(electionId);
        SortedMap<EnvelopeNumber, Asked> asked = new TreeMap<>();
        if (!MailBallotGivesWay.isEverAsked(pack)) {
            return asked;
        }
        Map<EnvelopeNumber, EnvelopeCase> counting = among.get().stream()
                .filter(found -> found.countedPerson() != null)
                .collect(Collectors.toMap(found -> found.key().envelopeNo(), found -> found));
        Map<EnvelopeNumber, VoterId> voters = voters(electionId, counting.keySet());
        Map<VoterId, List<MailBallot>> ballots = roll.mailBallots(electionId, new HashSet<>(voters.values()));
        Set<EnvelopeKey> toAssess = toAssess(electionId, voters, ballots);
        if (toAssess.isEmpty()) {
            return asked;
        }
        LineWords words = new LineWords(
                voters,
                ballots,
                decisions.standing(electionId, voters.keySet()),
                roll.voters(electionId, new HashSet<>(voters.values())),
                receipts(electionId, voters.keySet()));
        assessments.now(toAssess).forEach((key, report) -> {
            EnvelopeCase found = Objects.requireNonNull(counting.get(key.envelopeNo()), "it is one of them");
            if (MailBallotGivesWay.isAsked(pack, report.settled().facts().all(Fact.MAIL_BALLOTS))) {
                words.line(key).ifPresent(line -> asked.put(key.envelopeNo(), new Asked(line, found.state())));
            }
        });
        return asked;
    }

    /** What the lines are made of, by envelope number and voter. */
    private record LineWords(
            Map<EnvelopeNumber, VoterId> voters,
            Map<VoterId, List<MailBallot>> ballots,
            Map<EnvelopeNumber, Decision> standing,
            Map<VoterId, Voter> named,
            Map<EnvelopeNumber, String> receipts) {

        /** The line of an envelope that counts by a decision that stands. */
        Optional<MailLine> line(EnvelopeKey key) {
            EnvelopeNumber number = key.envelopeNo();
            VoterId voterId = Objects.requireNonNull(voters.get(number), "only cases of a voter are assessed");
            return Optional.ofNullable(standing.get(number))
                    .map(decision -> new MailLine(
                            key,
                            MailLine.Kind.REFUSE,
                            decision.number(),
                            voterId,
                            name(named.get(voterId)),
                            receipts.getOrDefault(number, ""),
                            words(ballots.getOrDefault(voterId, List.of()))));
        }
    }

    /** Only cases whose voter has a mail ballot that is still undecided, or of which a person said something. */
    private Set<EnvelopeKey> toAssess(
            ElectionId electionId, Map<EnvelopeNumber, VoterId> voters, Map<VoterId, List<MailBallot>> ballots) {
        Set<EnvelopeNumber> said = new HashSet<>();
        answers.standing(electionId, voters.keySet())
                .forEach((number, given) -> given.stream()
                        .filter(answer -> answer.fact().equals(Fact.MAIL_BALLOTS))
                        .forEach(answer -> said.add(number)));
        Set<EnvelopeKey> keys = new HashSet<>();
        voters.forEach((number, voterId) -> {
            boolean undecided = ballots.getOrDefault(voterId, List.of()).stream()
                    .anyMatch(ballot -> MailBallotGivesWay.isUndecided(ballot.state()));
            if (undecided || said.contains(number)) {
                keys.add(new EnvelopeKey(electionId, number));
            }
        });
        return keys;
    }

    private Map<EnvelopeNumber, VoterId> voters(ElectionId electionId, Set<EnvelopeNumber> numbers) {
        Map<EnvelopeNumber, VoterId> voters = new HashMap<>();
        links.newest(electionId, numbers).forEach((number, link) -> {
            VoterId voterId = link.voterId();
            if (voterId != null) {
                voters.put(number, voterId);
            }
        });
        return voters;
    }

    private Map<EnvelopeNumber, String> receipts(ElectionId electionId, Set<EnvelopeNumber> numbers) {
        return intake.envelopes(electionId, numbers).stream()
                .collect(Collectors.toMap(
                        Envelope::envelopeNo,
                        envelope -> Objects.requireNonNullElse(Key.text(envelope.receiptNo()), "")));
    }

    private static String name(@Nullable Voter voter) {
        return voter == null ? "" : voter.name().listed();
    }

    /** The ballots that the desk can still refuse: {@code 0007: returned (11/02/2026)}. */
    private static String words(List<MailBallot> ballots) {
        String words = ballots.stream()
                .filter(ballot -> MailBallotGivesWay.isUndecided(ballot.state()))
                .map(MailDeskWork::words)
                .collect(Collectors.joining("; "));
        return words.isEmpty() ? "none on the list as loaded" : words;
    }

    private static String words(MailBallot ballot) {
        String serial = ballot.serial().isEmpty() ? "" : ballot.serial() + ": ";
        String on = ballot.stateOn() == null ? "" : " (" + DateWords.date(ballot.stateOn()) + ")";
        return serial + ballot.state().code().replace('_', ' ') + on;
    }
}
