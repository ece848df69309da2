package org.proviso.review.acts;

import jakarta.validation.Valid;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import org.proviso.access.AccessService;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.VoterId;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.CaseReport;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.matching.Candidate;
import org.proviso.review.CaseActResult;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStore;
import org.proviso.review.CaseVersion;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.assess.AssessmentService;
import org.proviso.review.facts.LinkStore;
import org.proviso.review.facts.PersonStore;
import org.proviso.review.facts.VoterGroups;
import org.proviso.roll.RollService;
import org.proviso.roll.SnapshotKind;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/** Who the voter of an envelope is: a person's word, never the match's alone. */
@Service
@Validated
public class LinkService {

    private final CaseActSteps desk;
    private final CaseStore cases;
    private final LinkStore links;
    private final PersonStore persons;
    private final VoterGroups groups;
    private final AssessmentService assessments;
    private final RollService roll;
    private final AccessService access;

    LinkService(
            CaseActSteps desk,
            CaseStore cases,
            LinkStore links,
            PersonStore persons,
            VoterGroups groups,
            AssessmentService assessments,
            RollService roll,
            AccessService access) {
        this.desk = desk;
        this.cases = cases;
        this.links = links;
        this.persons = persons;
        this.groups = groups;
        this.assessments = assessments;
        this.roll = roll;
        this.access = access;
    }

    /** The newest link of a case: presumed by the match, or a person's. */
    @Transactional(readOnly = true)
    public Optional<Link> link(EnvelopeKey key) {
        return links.newest(key);
    }

    /** The newest links of several envelopes, by envelope number. */
    @Transactional(readOnly = true)
    public Map<EnvelopeNumber, Link> links(ElectionId electionId, Collection<EnvelopeNumber> envelopeNos) {
        return links.newest(electionId, envelopeNos);
    }

    /** The voter is this record of the roll: the one the match names, or with a ground another one. */
    @Transactional
    public CaseActResult confirm(@Valid ConfirmLink command) {
        OfficeUser user = access.demand(Permission.CONFIRM_LINK);
        EnvelopeKey key = command.key();
        if (roll.voter(key.electionId(), command.voterId()).isEmpty()) {
            throw new IllegalArgumentException("The roll has no voter " + command.voterId() + ".");
        }
        SortedSet<EnvelopeKey> touched = groups.others(key);
        touched.addAll(groups.ofVoter(key.electionId(), command.voterId()));
        EnvelopeCase one = desk.lockWith(key, command.version(), touched);
        Link presumed = links.presumed(key).orElseThrow();
        Optional<Refusal> refusal =
                desk.closed(key).or(() -> desk.notWith(one, user)).or(() -> groundMissing(command, presumed));
        if (refusal.isPresent()) {
            return CaseActResult.Refused.because(refusal.get());
        }
        EnvelopeCase now = confirmed(one, like(presumed, command.voterId()), user, command.ground());
        boolean first = command.voterId().equals(presumed.voterId());
        return told(now, touched, user, first ? "link_confirmed" : "other_voter_chosen", command);
    }

    /** Confirms several links that the match is sure of, all or none; each is recorded by itself. */
    @Transactional
    public List<EnvelopeCase> confirmTogether(List<CaseVersion> seen) {
        OfficeUser user = access.demand(Permission.CONFIRM_LINK);
        List<CaseVersion> inOrder = seen.stream()
                .sorted((one, other) -> one.key().compareTo(other.key()))
                .toList();
        List<EnvelopeCase> locked =
                inOrder.stream().map(one -> desk.lock(one.key(), one.version())).toList();
        locked.forEach(one -> mayBeConfirmedTogether(one, user));
        List<EnvelopeCase> now = locked.stream()
                .map(one -> confirmed(one, links.newest(one.key()).orElseThrow(), user, ""))
                .toList();
        SortedMap<EnvelopeKey, CaseReport> reports =
                assessments.renew(now.stream().map(EnvelopeCase::key).toList());
        now.forEach(one -> desk.record(
                one.key(),
                user.actor(),
                "link_confirmed",
                Map.of("voter", desk.hidden(one.key(), voterId(one.key()).value()), "together", now.size())));
        assessments.announce(reports);
        return now;
    }

    private void mayBeConfirmedTogether(EnvelopeCase one, OfficeUser user) {
        Link link = links.newest(one.key()).orElseThrow();
        boolean free = one.state() == CaseState.OPEN || one.isWith(user.userName());
        if (desk.closed(one.key()).isPresent()
                || !free
                || link.identity() != VoterIdentityFact.PRESUMED
                || !groups.others(one.key()).isEmpty()) {
            throw new IllegalArgumentException("The case " + one.key().envelopeNo()
                    + " is not one to confirm together with others: look at it by itself.");
        }
    }

    private VoterId voterId(EnvelopeKey key) {
        return links.newest(key).map(Link::voterId).orElseThrow();
    }

    private EnvelopeCase confirmed(EnvelopeCase one, Link link, OfficeUser user, String ground) {
        EnvelopeKey key = one.key();
        VoterId voterId = Objects.requireNonNull(link.voterId(), "a link to confirm names its voter");
        links.insert(key, link.confirmed(), snapshot(key), user.userName(), ground);
        return cases.save(one.of(persons.ofVoter(key.electionId(), voterId)));
    }

    private CaseActResult told(
            EnvelopeCase now, SortedSet<EnvelopeKey> touched, OfficeUser user, String act, ConfirmLink command) {
        touched.add(now.key());
        SortedMap<EnvelopeKey, CaseReport> reports = assessments.renew(touched);
        desk.record(
                now.key(),
                user.actor(),
                act,
                Map.of(
                        "voter", desk.hidden(now.key(), command.voterId().value()),
                        "ground", desk.hidden(now.key(), command.ground())));
        assessments.announce(reports);
        return new CaseActResult.Accepted(now);
    }

    private int snapshot(EnvelopeKey key) {
        return roll.snapshotInUse(key.electionId(), SnapshotKind.ROLL);
    }

    /** What the match says of that voter, where it says anything. */
    private static Link like(Link presumed, VoterId voterId) {
        if (voterId.equals(presumed.voterId())) {
            return presumed;
        }
        return presumed.candidates().stream()
                .filter(candidate -> candidate.voterId().equals(voterId))
                .findFirst()
                .map(LinkService::of)
                .orElseGet(() -> new Link(VoterIdentityFact.PRESUMED, voterId, 0, List.of()));
    }

    private static Link of(Candidate candidate) {
        return new Link(VoterIdentityFact.PRESUMED, candidate.voterId(), candidate.probability(), candidate.evidence());
    }

    private static Optional<Refusal> groundMissing(ConfirmLink command, Link presumed) {
        boolean needed = !command.voterId().equals(presumed.voterId());
        return needed && command.ground().isBlank()
                ? Optional.of(Refusal.of(Why.NO_REASON, "Choosing a voter whom the match did not name needs a ground."))
                : Optional.empty();
    }
}
