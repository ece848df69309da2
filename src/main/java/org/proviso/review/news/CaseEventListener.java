package org.proviso.review.news;

import java.util.Collection;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.proviso.access.AccessService;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.election.BoardMeetingMoved;
import org.proviso.election.RulesChanged;
import org.proviso.election.orders.CourtOrderRecorded;
import org.proviso.intake.EnvelopeReceived;
import org.proviso.intake.EnvelopesFiled;
import org.proviso.intake.IntakeService;
import org.proviso.intake.cure.CureRecorded;
import org.proviso.intake.cure.CureTakenBack;
import org.proviso.intake.keying.EnvelopeKeyed;
import org.proviso.review.CaseAct;
import org.proviso.review.CaseGraph;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.facts.LinkStore;
import org.proviso.review.facts.VoterGroups;
import org.proviso.roll.RollMatches;
import org.proviso.roll.RollService;
import org.proviso.roll.SnapshotKind;
import org.springframework.context.event.EventListener;
import org.springframework.stereotype.Component;
import org.springframework.transaction.annotation.Propagation;
import org.springframework.transaction.annotation.Transactional;

/** Hears what other rooms recorded about envelopes, in their transaction, and opens or looks again at their cases. */
@Component
class CaseEventListener {

    /** What is decided keeps the time that the voter had. */
    private static final Set<CaseState> UNDECIDED =
            EnumSet.of(CaseState.RECEIVED, CaseState.OPEN, CaseState.IN_REVIEW, CaseState.PROPOSED, CaseState.READY);

    private final CaseRecheck watch;
    private final CaseStore cases;
    private final LinkStore links;
    private final VoterGroups groups;
    private final RollMatches matches;
    private final IntakeService intake;
    private final RollService roll;
    private final AccessService access;
    private final CaseOpening opening;

    CaseEventListener(
            CaseRecheck watch,
            CaseStore cases,
            LinkStore links,
            VoterGroups groups,
            RollMatches matches,
            IntakeService intake,
            RollService roll,
            AccessService access,
            CaseOpening opening) {
        this.watch = watch;
        this.cases = cases;
        this.links = links;
        this.groups = groups;
        this.matches = matches;
        this.intake = intake;
        this.roll = roll;
        this.access = access;
        this.opening = opening;
    }

    /** The voter brought something. */
    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void cureRecorded(CureRecorded news) {
        EnvelopeKey key = new EnvelopeKey(news.electionId(), news.envelopeNo());
        lookAgain(List.of(key), "The voter brought what was asked.");
    }

    /** What was recorded as brought was not this voter's. */
    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void cureTakenBack(CureTakenBack news) {
        EnvelopeKey key = new EnvelopeKey(news.electionId(), news.envelopeNo());
        lookAgain(List.of(key), "Cure evidence was recorded by mistake and taken back.");
    }

    /** A court ordered something about some envelopes, or about all. */
    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void orderRecorded(CourtOrderRecorded news) {
        List<EnvelopeKey> named = news.envelopeNos().stream()
                .map(number -> new EnvelopeKey(news.electionId(), number))
                .filter(key -> cases.find(key).isPresent())
                .toList();
        List<EnvelopeKey> all = cases.all(news.electionId()).stream()
                .filter(envelopeCase -> !envelopeCase.state().isOver())
                .map(EnvelopeCase::key)
                .toList();
        lookAgain(news.envelopeNos().isEmpty() ? all : named, "A court's order was recorded.");
    }

    /** The rules are others than before: every case not over is assessed anew, and what was decided stays. */
    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void rulesChanged(RulesChanged news) {
        lookAgain(
                cases.all(news.electionId()).stream()
                        .filter(envelopeCase -> !envelopeCase.state().isOver())
                        .map(EnvelopeCase::key)
                        .toList(),
                news.because());
    }

    /** The board meets at another time than before: what runs until then runs until another moment. */
    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void meetingMoved(BoardMeetingMoved news) {
        lookAgain(
                cases.all(news.electionId()).stream()
                        .filter(envelopeCase -> UNDECIDED.contains(envelopeCase.state()))
                        .map(EnvelopeCase::key)
                        .toList(),
                news.because());
    }

    /** An envelope came in: its case waits for keying. */
    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void received(EnvelopeReceived news) {
        EnvelopeKey key = new EnvelopeKey(news.electionId(), news.envelopeNo());
        cases.open(List.of(key), CaseState.RECEIVED);
        match(key);
        lookAgain(List.of(key), "");
    }

    /** Envelopes came in as a file: their cases open, and those that claim the same voter are looked at again. */
    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void filed(EnvelopesFiled news) {
        if (news.envelopes().isEmpty()) {
            return;
        }
        opening.open(news.electionId(), news.envelopes());
        links.insertPresumed(
                news.electionId(),
                roll.snapshotInUse(news.electionId(), SnapshotKind.ROLL),
                matches.presumed(news.electionId(), news.envelopes()));
        SortedSet<EnvelopeKey> touched = new TreeSet<>();
        for (Envelope envelope : news.envelopes()) {
            EnvelopeKey key = new EnvelopeKey(news.electionId(), envelope.envelopeNo());
            touched.add(key);
            touched.addAll(groups.others(key));
        }
        touched.forEach(cases::lock);
        lookAgain(touched, "Envelopes came in as a file.");
    }

    /** What an envelope says was keyed: it is matched anew, unless a person settled who the voter is. */
    @EventListener
    @Transactional(propagation = Propagation.MANDATORY)
    public void keyed(EnvelopeKeyed news) {
        EnvelopeKey key = new EnvelopeKey(news.electionId(), news.envelopeNo());
        SortedSet<EnvelopeKey> touched = groups.others(key);
        touched.add(key);
        touched.forEach(cases::lock);
        EnvelopeCase envelopeCase = cases.find(key).orElseThrow();
        CaseGraph.step(envelopeCase.state(), CaseAct.KEY)
                .ifAccepted()
                .ifPresent(keyed -> cases.save(envelopeCase.to(keyed)));
        if (!links.newest(key).map(Link::isSettled).orElse(false)) {
            match(key);
        }
        touched.addAll(groups.others(key));
        lookAgain(touched, "What the envelope says was keyed.");
    }

    private void match(EnvelopeKey key) {
        Envelope envelope = intake.envelope(key.electionId(), key.envelopeNo()).orElseThrow();
        Link link = Objects.requireNonNull(
                matches.presumed(key.electionId(), List.of(envelope)).get(key.envelopeNo()),
                "an envelope that is matched has a link");
        links.insert(key, link, roll.snapshotInUse(key.electionId(), SnapshotKind.ROLL), null, "");
    }

    private void lookAgain(Collection<EnvelopeKey> keys, String because) {
        Map<EnvelopeKey, List<String>> reasons = new LinkedHashMap<>();
        keys.forEach(key -> reasons.put(key, List.of(because)));
        watch.lookAgain(keys, access.signedIn().actor(), reasons);
    }
}
