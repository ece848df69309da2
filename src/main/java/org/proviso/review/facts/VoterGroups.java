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
import org.proviso.core.adjudication.finding.Link;
import org.proviso.review.CaseKey;
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
    public record Found(Map<CaseKey, EnvelopeCase> cases, Map<CaseKey, SortedSet<CaseKey>> others) {

        /** The cases of the other envelopes, in the order of their keys. */
        public List<EnvelopeCase> otherCases(CaseKey key) {
            return others.getOrDefault(key, Collections.emptySortedSet()).stream()
                    .flatMap(other -> Stream.ofNullable(cases.get(other)))
                    .toList();
        }

        Optional<String> person(CaseKey key) {
            return Optional.ofNullable(cases.get(key)).map(EnvelopeCase::personId);
        }

        /** Everybody behind one of the cases who is known. */
        Set<String> persons() {
            return present(cases.values(), EnvelopeCase::personId);
        }
    }

    /** The other envelopes of the voter of a case, as it stands. */
    public SortedSet<CaseKey> others(CaseKey key) {
        return others(List.of(key));
    }

    /** The other envelopes of the voters of several cases of one election: of each case those that are not it. */
    public SortedSet<CaseKey> others(Collection<CaseKey> keys) {
        SortedSet<CaseKey> all = new TreeSet<>();
        of(keys).others().values().forEach(all::addAll);
        return all;
    }

    /** Several cases of one election with the other envelopes of their voters. */
    public Found of(Collection<CaseKey> keys) {
        Map<CaseKey, EnvelopeCase> known = new HashMap<>();
        if (keys.isEmpty()) {
            return new Found(known, Map.of());
        }
        String electionId = keys.iterator().next().electionId();
        keep(known, cases.find(electionId, numbers(keys)).values());
        Map<CaseKey, SortedSet<CaseKey>> others = others(electionId, keys, known);
        Set<CaseKey> unread = new HashSet<>();
        others.values().forEach(unread::addAll);
        unread.removeAll(known.keySet());
        if (!unread.isEmpty()) {
            keep(known, cases.find(electionId, numbers(unread)).values());
        }
        return new Found(known, others);
    }

    private Map<CaseKey, SortedSet<CaseKey>> others(
            String electionId, Collection<CaseKey> keys, Map<CaseKey, EnvelopeCase> known) {
        Map<String, Link> linked = links.newest(electionId, numbers(keys));
        Map<String, Set<String>> ofVoters = links.envelopesOf(electionId, present(linked.values(), Link::voterId));
        Map<String, List<EnvelopeCase>> ofPersons =
                cases.ofPersons(electionId, present(known.values(), EnvelopeCase::personId));
        Map<CaseKey, SortedSet<CaseKey>> others = new HashMap<>();
        for (CaseKey key : keys) {
            SortedSet<CaseKey> group = new TreeSet<>();
            Optional.ofNullable(linked.get(key.envelopeNo()))
                    .map(Link::voterId)
                    .map(ofVoters::get)
                    .ifPresent(envelopes -> envelopes.forEach(number -> group.add(new CaseKey(electionId, number))));
            Optional.ofNullable(known.get(key))
                    .map(EnvelopeCase::personId)
                    .map(ofPersons::get)
                    .ifPresent(found -> found.forEach(one -> group.add(one.key())));
            group.remove(key);
            others.put(key, group);
        }
        return others;
    }

    private static Set<String> numbers(Collection<CaseKey> keys) {
        return keys.stream().map(CaseKey::envelopeNo).collect(Collectors.toSet());
    }

    private static <T> Set<String> present(Collection<T> all, Function<T, @Nullable String> id) {
        return all.stream().map(id).flatMap(Stream::ofNullable).collect(Collectors.toSet());
    }

    public Optional<String> person(CaseKey key) {
        return cases.find(key).map(EnvelopeCase::personId);
    }

    private static void keep(Map<CaseKey, EnvelopeCase> known, Collection<EnvelopeCase> found) {
        found.forEach(one -> known.put(one.key(), one));
    }

    public SortedSet<CaseKey> ofVoter(String electionId, String voterId) {
        SortedSet<CaseKey> keys = new TreeSet<>();
        links.envelopesOf(electionId, voterId).forEach(number -> keys.add(new CaseKey(electionId, number)));
        return keys;
    }
}
