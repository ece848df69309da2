package org.proviso.review.facts;

import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.VoterId;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.review.CaseStore;
import org.proviso.review.EnvelopeCase;
import org.springframework.stereotype.Component;

/** Which envelopes are of one voter: those of the same person, and those linked or presumed linked to the same record. */
@Component
public class VoterGroups {

    private final CaseStore cases;
    private final LinkStore links;

    VoterGroups(CaseStore cases, LinkStore links) {
        this.cases = cases;
        this.links = links;
    }

    /** Several cases and the other envelopes of their voters, as they were read together. */
    public record Found(Map<EnvelopeKey, EnvelopeCase> cases, Map<EnvelopeKey, SortedSet<EnvelopeKey>> others) {

        /** The cases of the other envelopes, in the order of their keys. */
        public List<EnvelopeCase> otherCases(EnvelopeKey key) {
            return others.getOrDefault(key, Collections.emptySortedSet()).stream()
                    .flatMap(other -> Stream.ofNullable(cases.get(other)))
                    .toList();
        }

        Optional<String> person(EnvelopeKey key) {
            return Optional.ofNullable(cases.get(key)).map(EnvelopeCase::personId);
        }

        /** Everybody behind one of the cases who is known. */
        Set<String> persons() {
            return present(cases.values(), EnvelopeCase::personId);
        }
    }

    /** The other envelopes of the voter of a case, as it stands. */
    public SortedSet<EnvelopeKey> others(EnvelopeKey key) {
        return others(List.of(key));
    }

    /** The other envelopes of the voters of several cases of one election: of each case those that are not it. */
    public SortedSet<EnvelopeKey> others(Collection<EnvelopeKey> keys) {
        SortedSet<EnvelopeKey> all = new TreeSet<>();
        for (Set<EnvelopeKey> others : of(keys).others().values()) {
            all.addAll(others);
        }
        return all;
    }

    /** Several cases of one election with the other envelopes of their voters. */
    public Found of(Collection<EnvelopeKey> keys) {
        Map<EnvelopeKey, EnvelopeCase> known = new HashMap<>();
        if (keys.isEmpty()) {
            return new Found(known, Map.of());
        }
        ElectionId electionId = keys.iterator().next().electionId();
        keep(known, cases.find(electionId, numbers(keys)).values());
        Map<EnvelopeKey, SortedSet<EnvelopeKey>> others = others(electionId, keys, known);
        Set<EnvelopeKey> unread = new HashSet<>();
        others.values().forEach(unread::addAll);
        unread.removeAll(known.keySet());
        if (!unread.isEmpty()) {
            keep(known, cases.find(electionId, numbers(unread)).values());
        }
        return new Found(known, others);
    }

    private Map<EnvelopeKey, SortedSet<EnvelopeKey>> others(
            ElectionId electionId, Collection<EnvelopeKey> keys, Map<EnvelopeKey, EnvelopeCase> known) {
        Map<EnvelopeNumber, Link> linked = links.newest(electionId, numbers(keys));
        Map<VoterId, Set<EnvelopeNumber>> ofVoters =
                links.envelopesOf(electionId, present(linked.values(), Link::voterId));
        Map<String, List<EnvelopeCase>> ofPersons =
                cases.ofPersons(electionId, present(known.values(), EnvelopeCase::personId));
        Map<EnvelopeKey, SortedSet<EnvelopeKey>> others = new HashMap<>();
        for (EnvelopeKey key : keys) {
            SortedSet<EnvelopeKey> group = new TreeSet<>();
            Optional.ofNullable(linked.get(key.envelopeNo()))
                    .map(Link::voterId)
                    .map(ofVoters::get)
                    .ifPresent(
                            envelopes -> envelopes.forEach(number -> group.add(new EnvelopeKey(electionId, number))));
            Optional.ofNullable(known.get(key))
                    .map(EnvelopeCase::personId)
                    .map(ofPersons::get)
                    .ifPresent(found -> found.forEach(envelopeCase -> group.add(envelopeCase.key())));
            group.remove(key);
            others.put(key, group);
        }
        return others;
    }

    private static Set<EnvelopeNumber> numbers(Collection<EnvelopeKey> keys) {
        return keys.stream().map(EnvelopeKey::envelopeNo).collect(Collectors.toSet());
    }

    private static <T, K> Set<K> present(Collection<T> all, Function<T, @Nullable K> id) {
        return all.stream().map(id).flatMap(Stream::ofNullable).collect(Collectors.toSet());
    }

    public Optional<String> person(EnvelopeKey key) {
        return cases.find(key).map(EnvelopeCase::personId);
    }

    private static void keep(Map<EnvelopeKey, EnvelopeCase> known, Collection<EnvelopeCase> found) {
        found.forEach(envelopeCase -> known.put(envelopeCase.key(), envelopeCase));
    }

    public SortedSet<EnvelopeKey> ofVoter(ElectionId electionId, VoterId voterId) {
        SortedSet<EnvelopeKey> keys = new TreeSet<>();
        links.envelopesOf(electionId, voterId).forEach(number -> keys.add(new EnvelopeKey(electionId, number)));
        return keys;
    }
}
