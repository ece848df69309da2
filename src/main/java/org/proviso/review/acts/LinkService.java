package org.proviso.review.acts;

import jakarta.validation.Valid;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeMap;
import org.proviso.access.OfficeUser;
import org.proviso.access.Permission;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.VoterId;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.matching.Candidate;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseState;
import org.proviso.review.CaseStore;
import org.proviso.review.CaseVersion;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.door.CaseDoor;
import org.proviso.review.door.LockedCase;
import org.proviso.review.door.LockedCases;
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

    private final CaseDoor door;
    private final CaseActSteps steps;
    private final CaseStore cases;
    private final LinkStore links;
    private final PersonStore persons;
    private final VoterGroups groups;
    private final RollService roll;
    private final VoterFindings findings;

    LinkService(
            CaseDoor door,
            CaseActSteps steps,
            CaseStore cases,
            LinkStore links,
            PersonStore persons,
            VoterGroups groups,
            RollService roll,
            VoterFindings findings) {
        this.findings = findings;
        this.door = door;
        this.steps = steps;
        this.cases = cases;
        this.links = links;
        this.persons = persons;
        this.groups = groups;
        this.roll = roll;
    }

    /** The voter is this record of the roll: the one the match names, or with a ground another one. */
    @Transactional
    public ActResult<EnvelopeCase> confirm(@Valid ConfirmLink command) {
        CaseDoor.Permitted permitted = door.demand(Permission.CONFIRM_LINK);
        EnvelopeKey key = command.key();
        if (roll.voter(key.electionId(), command.voterId()).isEmpty()) {
            throw new IllegalArgumentException("The roll has no voter " + command.voterId() + ".");
        }
        SortedSet<EnvelopeKey> touched = groups.others(key);
        touched.addAll(groups.ofVoter(key.electionId(), command.voterId()));
        LockedCase act = permitted.lock(key, command.version(), touched).withYou();
        Link presumed = links.presumed(key).orElseThrow();
        boolean first = command.voterId().equals(presumed.voterId());
        List<Fact<?>> voided = new ArrayList<>();
        return act.refuse(() -> groundMissing(command, presumed))
                .save(seen -> {
                    voided.addAll(findings.voidedBy(key, command.voterId()));
                    return confirmed(seen, like(presumed, command.voterId()), act.user(), command.ground());
                })
                .assessAnew()
                .record(first ? "link_confirmed" : "other_voter_chosen", () -> payload(command, voided));
    }

    private Map<String, Object> payload(ConfirmLink command, List<Fact<?>> voided) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("voter", steps.hidden(command.key(), command.voterId().value()));
        payload.put("ground", steps.hidden(command.key(), command.ground()));
        VoterFindings.say(payload, voided);
        return payload;
    }

    /** Confirms several links that the match is sure of, all or none; each is recorded by itself. */
    @Transactional
    public ActResult<List<EnvelopeCase>> confirmTogether(List<CaseVersion> seen) {
        CaseDoor.Permitted permitted = door.demand(Permission.CONFIRM_LINK);
        Map<EnvelopeKey, Integer> versions = new TreeMap<>();
        seen.forEach(known -> versions.put(known.key(), known.version()));
        LockedCases act = permitted.lockAll(versions, List.of());
        return act.refuseAll(() -> act.seen().values().stream()
                        .map(found -> notTogether(found, act.user()))
                        .flatMap(Optional::stream)
                        .toList())
                .save(locked -> locked.values().stream()
                        .map(found -> confirmed(found, links.newest(found.key()).orElseThrow(), act.user(), ""))
                        .toList())
                .assessAnew()
                .record("link_confirmed", () -> confirmedTogether(versions.keySet()));
    }

    private Map<EnvelopeNumber, Map<String, Object>> confirmedTogether(Set<EnvelopeKey> keys) {
        Map<EnvelopeNumber, Map<String, Object>> payloads = new LinkedHashMap<>();
        keys.forEach(key -> payloads.put(
                key.envelopeNo(), Map.of("voter", steps.hidden(key, voterId(key).value()), "together", keys.size())));
        return payloads;
    }

    private Optional<Refusal> notTogether(EnvelopeCase found, OfficeUser user) {
        Link link = links.newest(found.key()).orElseThrow();
        boolean free = found.state() == CaseState.OPEN || found.isWith(user.userName());
        boolean sure = link.identity() == VoterIdentityFact.PRESUMED
                && groups.others(found.key()).isEmpty();
        return free && sure
                ? Optional.empty()
                : Optional.of(Refusal.of(Why.NOT_ONE_GROUP, "Look at this case by itself.")
                        .about(found.key().envelopeNo()));
    }

    private VoterId voterId(EnvelopeKey key) {
        return links.newest(key).map(Link::voterId).orElseThrow();
    }

    private EnvelopeCase confirmed(EnvelopeCase envelopeCase, Link link, OfficeUser user, String ground) {
        EnvelopeKey key = envelopeCase.key();
        VoterId voterId = Objects.requireNonNull(link.voterId(), "a link to confirm names its voter");
        links.insert(key, link.confirmed(), snapshot(key), user.userName(), ground);
        return cases.save(envelopeCase.of(persons.ofVoter(key.electionId(), voterId)));
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
                ? Optional.of(
                        Refusal.of(Why.NO_REASON, "Give a reason for choosing a voter whom the match did not name."))
                : Optional.empty();
    }
}
