package org.proviso.review.acts;

import jakarta.validation.Valid;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.stream.Collectors;
import org.proviso.access.Permission;
import org.proviso.core.Code;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.intake.IntakeService;
import org.proviso.review.CaseActSteps;
import org.proviso.review.CaseStore;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.door.CaseDoor;
import org.proviso.review.door.LockedCase;
import org.proviso.review.facts.LinkStore;
import org.proviso.review.facts.PersonStore;
import org.proviso.review.facts.SearchFound;
import org.proviso.review.facts.SearchPlace;
import org.proviso.review.facts.SearchStore;
import org.proviso.review.facts.VoterGroups;
import org.proviso.roll.RollMatches;
import org.proviso.roll.RollService;
import org.proviso.roll.SnapshotKind;
import org.springframework.stereotype.Service;
import org.springframework.transaction.annotation.Transactional;
import org.springframework.validation.annotation.Validated;

/**
 * The search for a voter whom no record fits. "Not found" becomes a fact only here: a missing name is a matter of
 * research, never an answer by itself.
 */
@Service
@Validated
public class SearchService {

    private final CaseDoor door;
    private final CaseActSteps steps;
    private final CaseStore cases;
    private final LinkStore links;
    private final PersonStore persons;
    private final SearchStore searches;
    private final VoterGroups groups;
    private final RollService roll;
    private final VoterFindings findings;
    private final RollMatches matches;
    private final IntakeService intake;

    SearchService(
            CaseDoor door,
            CaseActSteps steps,
            CaseStore cases,
            LinkStore links,
            PersonStore persons,
            SearchStore searches,
            VoterGroups groups,
            RollService roll,
            VoterFindings findings,
            RollMatches matches,
            IntakeService intake) {
        this.findings = findings;
        this.matches = matches;
        this.intake = intake;
        this.door = door;
        this.steps = steps;
        this.cases = cases;
        this.links = links;
        this.persons = persons;
        this.searches = searches;
        this.groups = groups;
        this.roll = roll;
    }

    /**
     * Records a search. Finding nothing settles that the voter is not on the roll, if the whole check list was looked
     * at; finding a record of the roll settles nothing: the envelope is then linked to it.
     */
    @Transactional
    public ActResult<EnvelopeCase> record(@Valid RecordSearch command) {
        CaseDoor.Permitted permitted = door.demand(Permission.SEARCH);
        EnvelopeKey key = command.key();
        Optional<EnvelopeKey> same = sameVoter(command);
        SortedSet<EnvelopeKey> touched = groups.others(key);
        if (same.isPresent()) {
            touched.add(same.get());
        }
        LockedCase act = permitted.lock(key, command.version(), touched).withYou();
        List<Fact<?>> voided = new ArrayList<>();
        return act.refuse(() -> notComplete(command))
                .refuse(() -> noSuchEnvelope(command, same))
                .refuse(() -> same.flatMap(this::otherNotSettled))
                .save(seen -> {
                    UserName by = act.user().userName();
                    searches.insert(key, command.lookedIn(), command.found(), command.note(), by);
                    if (command.found() != SearchFound.RECORD) {
                        voided.addAll(findings.voidedBy(key, null));
                    }
                    return command.found() == SearchFound.RECORD ? cases.save(seen) : offRoll(seen, command, same, by);
                })
                .assessAnew()
                .record("search_recorded", () -> payload(command, voided));
    }

    /**
     * Takes back what a search settled by mistake: the link is what the match says now, and a person settles it again.
     * What was recorded stays readable.
     */
    @Transactional
    public ActResult<EnvelopeCase> takeBack(@Valid TakeBackSearch command) {
        CaseDoor.Permitted permitted = door.demand(Permission.SEARCH);
        EnvelopeKey key = command.key();
        LockedCase act =
                permitted.lock(key, command.version(), groups.others(key)).withYou();
        String because = command.because().strip();
        return act.refuse(() -> nothingToTakeBack(key))
                .save(seen -> {
                    searches.takeBack(key, because);
                    int snapshot = roll.snapshotInUse(key.electionId(), SnapshotKind.ROLL);
                    links.insert(key, matched(key), snapshot, null, because);
                    return cases.save(seen.of(null));
                })
                .assessAnew()
                .record("search_taken_back", () -> Map.of("because", steps.hidden(key, because)));
    }

    private Optional<Refusal> nothingToTakeBack(EnvelopeKey key) {
        return Refusal.when(
                links.newest(key)
                        .filter(link -> link.identity() == VoterIdentityFact.NOT_ON_ROLL)
                        .isEmpty(),
                Why.NOT_IN_THIS_STATE,
                "No search settled that this voter is not on the roll.");
    }

    private Link matched(EnvelopeKey key) {
        Envelope envelope = intake.envelope(key.electionId(), key.envelopeNo()).orElseThrow();
        return Objects.requireNonNull(
                matches.presumed(key.electionId(), List.of(envelope)).get(key.envelopeNo()),
                "an envelope that is matched has a link");
    }

    /** The envelope of the same voter that the search names, if the office has it. */
    private Optional<EnvelopeKey> sameVoter(RecordSearch command) {
        return Optional.ofNullable(command.sameVoterAs())
                .flatMap(EnvelopeNumber::find)
                .map(number -> new EnvelopeKey(command.key().electionId(), number))
                .filter(named -> cases.find(named).isPresent());
    }

    private EnvelopeCase offRoll(EnvelopeCase seen, RecordSearch command, Optional<EnvelopeKey> same, UserName by) {
        EnvelopeKey key = seen.key();
        Link none = new Link(VoterIdentityFact.NOT_ON_ROLL, null, 0, List.of());
        int snapshot = roll.snapshotInUse(key.electionId(), SnapshotKind.ROLL);
        links.insert(key, none, snapshot, by, command.note());
        String person = same.isEmpty()
                ? persons.offRoll(key, command.because())
                : groups.person(same.get()).orElseThrow();
        return cases.save(seen.of(person));
    }

    private static Optional<Refusal> noSuchEnvelope(RecordSearch command, Optional<EnvelopeKey> same) {
        return command.sameVoterAs() == null || same.isPresent()
                ? Optional.empty()
                : Optional.of(Refusal.at(
                        "sameVoterAs",
                        Why.NO_SUCH_ENVELOPE,
                        "This election has no envelope " + command.sameVoterAs() + "."));
    }

    private Optional<Refusal> otherNotSettled(EnvelopeKey other) {
        return groups.person(other).isPresent()
                ? Optional.empty()
                : Optional.of(Refusal.of(
                        Why.LINK_NOT_SETTLED, "First settle who the voter of envelope " + other.envelopeNo() + " is."));
    }

    private static Optional<Refusal> notComplete(RecordSearch command) {
        Set<SearchPlace> missing = EnumSet.allOf(SearchPlace.class);
        missing.removeAll(command.lookedIn());
        return command.found() == SearchFound.NOTHING && !missing.isEmpty()
                ? Optional.of(Refusal.of(
                        Why.SEARCH_NOT_COMPLETE,
                        "Before you record that the voter is not registered, look at: "
                                + missing.stream().map(SearchPlace::words).collect(Collectors.joining(", ")) + "."))
                : Optional.empty();
    }

    private Map<String, Object> payload(RecordSearch command, List<Fact<?>> voided) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("found", command.found().code());
        payload.put(
                "looked_in",
                command.lookedIn().stream().sorted().map(Code::code).toList());
        payload.put("note", steps.hidden(command.key(), command.note()));
        if (command.sameVoterAs() != null) {
            payload.put("same_voter_as", command.sameVoterAs());
        }
        VoterFindings.say(payload, voided);
        return payload;
    }
}
