package org.proviso.board.agenda;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.access.StaffList;
import org.proviso.board.BoardClock;
import org.proviso.board.BodyKind;
import org.proviso.board.ProposalForDecision;
import org.proviso.board.ProposalsForDecision;
import org.proviso.core.BallotStyle;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.finding.BallotCatalog;
import org.proviso.core.adjudication.finding.Evidence;
import org.proviso.core.adjudication.judging.AnsweredQuestion;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.deciding.DecisionChecks;
import org.proviso.core.deciding.DecisionOutcome;
import org.proviso.core.rules.Reason;
import org.proviso.election.ElectionService;
import org.proviso.review.CaseProposals;
import org.proviso.review.CaseService;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.ReadyCase;
import org.proviso.review.VoterChoice;
import org.proviso.review.acts.VoterLinks;
import org.proviso.review.assess.SecondLooks;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;

/** What waits for the decider, in groups, and single envelopes explained in a few lines. */
@Service
public class ReadyService {

    private final CaseProposals cases;
    private final CaseService states;
    private final ProposalsForDecision proposals;
    private final SecondLooks looks;
    private final VoterLinks voters;
    private final ElectionService elections;
    private final AccessService access;
    private final StaffList staff;
    private final BoardClock clock;

    ReadyService(
            CaseProposals cases,
            CaseService states,
            ProposalsForDecision proposals,
            SecondLooks looks,
            VoterLinks voters,
            ElectionService elections,
            AccessService access,
            StaffList staff,
            BoardClock clock) {
        this.cases = cases;
        this.states = states;
        this.proposals = proposals;
        this.looks = looks;
        this.voters = voters;
        this.elections = elections;
        this.access = access;
        this.staff = staff;
        this.clock = clock;
    }

    /** Everything that is ready, in the groups that an agenda would have; those that stand alone come last. */
    @Transactional(readOnly = true)
    public List<ReadyGroup> groups(ElectionId electionId) {
        access.demand(Permission.READ_FIGURES);
        Map<String, List<ReadyCase>> groups = new LinkedHashMap<>();
        cases.ready(electionId).stream()
                .sorted(Comparator.comparing(ReadyService::standsAlone)
                        .thenComparing(readyCase -> readyCase.proposal().as())
                        .thenComparing(ReadyService::order))
                .forEach(readyCase -> groups.computeIfAbsent(name(readyCase), any -> new ArrayList<>())
                        .add(readyCase));
        return groups.values().stream().map(ReadyService::group).toList();
    }

    /** The bodies that decide by the rule pack; none while no source says and the office has not ruled on it. */
    @Transactional(readOnly = true)
    public List<BodyKind> bodies(ElectionId electionId) {
        access.demand(Permission.READ_FIGURES);
        return clock.electionAsOfNow(electionId)
                .decider()
                .map(BodyKind::forDecider)
                .orElse(List.of());
    }

    /** Where the law is that envelopes were proposed to be rejected on, each place once. */
    @Transactional(readOnly = true)
    public List<String> references(ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        access.demand(
                access.isPermitted(Permission.SEE_WHOLE_CASE) ? Permission.SEE_WHOLE_CASE : Permission.KEEP_RECORD);
        Set<EnvelopeNumber> wanted = Set.copyOf(envelopeNos);
        return references(cases.ready(electionId).stream()
                .filter(readyCase -> wanted.contains(readyCase.proposal().key().envelopeNo()))
                .toList());
    }

    /** Single envelopes in a few lines each, as the rules see them now; meant for those on the screen. */
    @Transactional(readOnly = true)
    public List<EnvelopeSummary> lines(ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        OfficeUser reader = access.demand(Permission.SEE_WHOLE_CASE);
        BallotCatalog ballots = elections.ballots(electionId);
        return envelopeNos.stream()
                .map(number -> line(new EnvelopeKey(electionId, number), ballots, reader))
                .toList();
    }

    private EnvelopeSummary line(EnvelopeKey key, BallotCatalog ballots, OfficeUser reader) {
        CaseReport report = looks.report(key, reader);
        EnvelopeCase envelopeCase = states.find(key).orElseThrow();
        Optional<ProposalForDecision> proposed = proposals.find(key);
        return new EnvelopeSummary(
                key.envelopeNo(),
                envelopeCase.version(),
                envelopeCase.state(),
                report.envelope().affirmation().name().listed(),
                report.envelope().cast().votingLocation(),
                report.envelope().cast().issueReasons().stream().sorted().toList(),
                report.recommendation(),
                DecisionChecks.isKnownToHaveVoted(report.settled().answered()),
                explained(report),
                proposed.orElse(null),
                proposed.map(found -> name(found.proposedBy())).orElse(""),
                proposed.map(found -> name(found.secondReadBy())).orElse(""),
                voters.choice(key).filter(choice -> !choice.ground().isBlank()).map(choice -> chosen(key, choice)),
                contests(report, ballots));
    }

    private EnvelopeSummary.ChosenVoter chosen(EnvelopeKey key, VoterChoice choice) {
        return new EnvelopeSummary.ChosenVoter(
                name(choice.by()),
                LocalDateTime.ofInstant(choice.at(), elections.zone(key.electionId())),
                choice.ground());
    }

    /** The evidence behind what stands in the way, or is open; empty where nothing does. */
    private static List<String> explained(CaseReport report) {
        Set<String> words = new LinkedHashSet<>();
        for (AnsweredQuestion answeredQuestion : report.settled().answered()) {
            if (answeredQuestion.answer() instanceof Answer.Defect defect) {
                words.add(sentence(defect.reason().words()));
                answeredQuestion.evidence().stream().map(Evidence::words).forEach(words::add);
            }
        }
        report.stillOpen().forEach(open -> words.add("Open: " + open + "."));
        return List.copyOf(words);
    }

    private static String sentence(String words) {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }

    private static Map<String, String> contests(CaseReport report, BallotCatalog ballots) {
        Map<String, String> contests = new TreeMap<>();
        ballots.style(report.envelope().cast().ballotStyle())
                .map(BallotStyle::contestIds)
                .orElse(Set.of())
                .forEach(id -> contests.put(id, ballots.contestTitle(id)));
        return contests;
    }

    private String name(@Nullable UserName userName) {
        return userName == null
                ? ""
                : staff.user(userName).map(OfficeUser::fullName).orElse(userName.value());
    }

    private static ReadyGroup group(List<ReadyCase> together) {
        ReadyCase first = together.get(0);
        Map<EnvelopeNumber, Integer> envelopes = new LinkedHashMap<>();
        together.forEach(readyCase -> envelopes.put(readyCase.proposal().key().envelopeNo(), readyCase.version()));
        return new ReadyGroup(
                first.proposal().as(), reason(first), standsAlone(first), envelopes, references(together));
    }

    private static List<String> references(List<ReadyCase> of) {
        return of.stream()
                .map(readyCase -> readyCase.proposal().grounds().legalReference())
                .filter(reference -> !reference.isBlank())
                .distinct()
                .toList();
    }

    private static String name(ReadyCase readyCase) {
        return standsAlone(readyCase)
                ? readyCase.proposal().key().envelopeNo().value()
                : readyCase.proposal().as() + " " + order(readyCase);
    }

    private static int order(ReadyCase readyCase) {
        Reason reason = reason(readyCase);
        return reason == null ? -1 : reason.ordinal();
    }

    /** All that count in full are one group, whatever is noted beside. */
    private static @Nullable Reason reason(ReadyCase readyCase) {
        List<Reason> reasons = readyCase.proposal().grounds().reasons();
        return reasons.isEmpty() || readyCase.proposal().as() == DecisionOutcome.COUNT ? null : reasons.get(0);
    }

    private static boolean standsAlone(ReadyCase readyCase) {
        return !readyCase.proposal().grounds().departsBecause().isBlank();
    }
}
