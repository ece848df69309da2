package org.proviso.review.acts;

import jakarta.validation.Valid;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.stream.Collectors;
import org.proviso.access.Permission;
import org.proviso.core.Code;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.UserName;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.core.act.Refusal.Why;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.Link;
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

    SearchService(
            CaseDoor door,
            CaseActSteps steps,
            CaseStore cases,
            LinkStore links,
            PersonStore persons,
            SearchStore searches,
            VoterGroups groups,
            RollService roll) {
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
        SortedSet<EnvelopeKey> touched = groups.others(key);
        if (command.sameVoterAs() != null) {
            touched.add(new EnvelopeKey(key.electionId(), new EnvelopeNumber(command.sameVoterAs())));
        }
        LockedCase act = permitted.lock(key, command.version(), touched).withYou();
        return act.refuse(() -> notComplete(command))
                .refuse(() -> otherNotSettled(command))
                .save(seen -> {
                    UserName by = act.user().userName();
                    searches.insert(key, command.lookedIn(), command.found(), command.note(), by);
                    return command.found() == SearchFound.RECORD ? cases.save(seen) : offRoll(seen, command, by);
                })
                .assessAnew()
                .record("search_recorded", () -> payload(command));
    }

    private EnvelopeCase offRoll(EnvelopeCase seen, RecordSearch command, UserName by) {
        EnvelopeKey key = seen.key();
        Link none = new Link(VoterIdentityFact.NOT_ON_ROLL, null, 0, List.of());
        int snapshot = roll.snapshotInUse(key.electionId(), SnapshotKind.ROLL);
        links.insert(key, none, snapshot, by, command.note());
        String person = command.sameVoterAs() == null
                ? persons.offRoll(key, command.because())
                : groups.person(new EnvelopeKey(key.electionId(), new EnvelopeNumber(command.sameVoterAs())))
                        .orElseThrow();
        return cases.save(seen.of(person));
    }

    private Optional<Refusal> otherNotSettled(RecordSearch command) {
        if (command.sameVoterAs() == null) {
            return Optional.empty();
        }
        EnvelopeKey other = new EnvelopeKey(command.key().electionId(), new EnvelopeNumber(command.sameVoterAs()));
        return groups.person(other).isPresent()
                ? Optional.empty()
                : Optional.of(Refusal.of(
                        Why.LINK_NOT_SETTLED,
                        "First settle who the voter of envelope " + command.sameVoterAs() + " is."));
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

    private Map<String, Object> payload(RecordSearch command) {
        Map<String, Object> payload = new LinkedHashMap<>();
        payload.put("found", command.found().code());
        payload.put(
                "looked_in",
                command.lookedIn().stream().sorted().map(Code::code).toList());
        payload.put("note", steps.hidden(command.key(), command.note()));
        if (command.sameVoterAs() != null) {
            payload.put("same_voter_as", command.sameVoterAs());
        }
        return payload;
    }
}
