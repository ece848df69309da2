package org.proviso.review.facts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
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

    /** The other envelopes of the voter of a case, as it stands. */
    public SortedSet<CaseKey> others(CaseKey key) {
        SortedSet<CaseKey> keys = new TreeSet<>();
        links.newest(key).map(Link::voterId).ifPresent(voter -> keys.addAll(ofVoter(key.electionId(), voter)));
        person(key).ifPresent(person -> cases.ofPerson(key.electionId(), person).forEach(one -> keys.add(one.key())));
        keys.remove(key);
        return keys;
    }

    /** The cases of the other envelopes. */
    public List<EnvelopeCase> otherCases(CaseKey key) {
        List<EnvelopeCase> others = new ArrayList<>();
        others(key).forEach(other -> cases.find(other).ifPresent(others::add));
        return others;
    }

    public SortedSet<CaseKey> ofVoter(String electionId, String voterId) {
        SortedSet<CaseKey> keys = new TreeSet<>();
        links.envelopesOf(electionId, voterId).forEach(number -> keys.add(new CaseKey(electionId, number)));
        return keys;
    }

    public Optional<String> person(CaseKey key) {
        return cases.find(key).map(EnvelopeCase::personId);
    }
}
