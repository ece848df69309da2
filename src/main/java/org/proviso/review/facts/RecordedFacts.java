package org.proviso.review.facts;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.adjudication.facts.OtherEnvelopeFact;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.adjudication.finding.Evidence;
import org.proviso.core.adjudication.finding.EvidenceSource;
import org.proviso.core.adjudication.finding.Link;
import org.proviso.core.adjudication.finding.RecordedFact;
import org.proviso.review.CaseState;
import org.proviso.review.EnvelopeCase;
import org.springframework.stereotype.Component;

/**
 * What persons recorded of a case, as the fact finder reads it: answers, searches, and what became of the same voter's
 * other envelopes.
 */
@Component
class RecordedFacts {

    private final AnswerStore answers;
    private final SearchStore searches;
    private final VoterGroupStore choices;
    private final VoterGroups group;
    private final LinkStore links;

    RecordedFacts(
            AnswerStore answers, SearchStore searches, VoterGroupStore choices, VoterGroups group, LinkStore links) {
        this.links = links;
        this.answers = answers;
        this.searches = searches;
        this.choices = choices;
        this.group = group;
    }

    /**
     * Everything recorded of each of these cases, by envelope number, the newest last; moments are local to the county. What
     * a search found holds until a record of the roll is confirmed, or a newer roll names a voter who may be the one.
     */
    Map<EnvelopeNumber, List<RecordedFact>> of(
            ElectionId electionId, Collection<EnvelopeNumber> envelopeNos, ZoneId county) {
        Map<EnvelopeNumber, List<SearchStore.RecordedSearch>> searched = searches.of(electionId, envelopeNos);
        Map<EnvelopeNumber, List<RecordedAnswer>> answered = answers.standing(electionId, envelopeNos);
        Map<EnvelopeNumber, Link> linked = links.newest(electionId, envelopeNos);
        Map<EnvelopeNumber, RecordedFact> others = otherEnvelopes(electionId, envelopeNos, linked);
        Map<EnvelopeNumber, List<RecordedFact>> all = new HashMap<>();
        for (EnvelopeNumber number : envelopeNos) {
            List<RecordedFact> recorded = new ArrayList<>();
            boolean offTheRoll = Optional.ofNullable(linked.get(number))
                    .filter(link -> link.identity() == VoterIdentityFact.NOT_ON_ROLL)
                    .isPresent();
            for (SearchStore.RecordedSearch search : searched.getOrDefault(number, List.of())) {
                if (offTheRoll && search.found().registration() != null) {
                    recorded.add(new RecordedFact(
                            Fact.REGISTRATION, Set.of(search.found().registration()), searched(search, county)));
                }
            }
            answered.getOrDefault(number, List.of()).forEach(answer -> recorded.add(answered(answer, county)));
            Stream.ofNullable(others.get(number)).forEach(recorded::add);
            all.put(number, recorded);
        }
        return all;
    }

    private static Evidence searched(SearchStore.RecordedSearch search, ZoneId county) {
        String note = search.note().isBlank() ? "" : " " + search.note();
        return new Evidence(
                EvidenceSource.PERSON,
                "A person searched by the check list on " + on(search.at(), county) + ": "
                        + search.found().words() + "." + note,
                null,
                search.at().atZone(county).toLocalDateTime());
    }

    private static RecordedFact answered(RecordedAnswer answer, ZoneId county) {
        StringBuilder words = new StringBuilder("A person recorded on " + on(answer.at(), county) + ": ");
        String between = "";
        for (FactWord word : answer.words()) {
            words.append(between).append(word.meaning());
            between = "; ";
        }
        words.append('.');
        if (!answer.reason().isBlank()) {
            words.append(' ').append(answer.reason());
        }
        Evidence evidence = new Evidence(
                EvidenceSource.PERSON,
                words.toString(),
                answer.receivedAt(),
                answer.at().atZone(county).toLocalDateTime());
        return new RecordedFact(answer.fact(), answer.words(), evidence);
    }

    private static String on(Instant at, ZoneId county) {
        return DateWords.moment(at.atZone(county).toLocalDateTime());
    }

    /** What became of the voter's other envelopes, once that is known; while none is decided the files tell. */
    private Map<EnvelopeNumber, RecordedFact> otherEnvelopes(
            ElectionId electionId, Collection<EnvelopeNumber> envelopeNos, Map<EnvelopeNumber, Link> linked) {
        List<EnvelopeKey> keys = envelopeNos.stream()
                .map(number -> new EnvelopeKey(electionId, number))
                .toList();
        VoterGroups.Found groups = group.of(keys);
        Map<String, EnvelopeNumber> chosen = choices.chosen(electionId, groups.persons());
        Map<EnvelopeNumber, RecordedFact> recorded = new HashMap<>();
        for (EnvelopeKey key : keys) {
            boolean isChosen = groups.person(key)
                    .map(chosen::get)
                    .filter(key.envelopeNo()::equals)
                    .isPresent();
            otherEnvelope(groups.otherCases(key), isChosen)
                    .or(() -> noOther(Optional.ofNullable(linked.get(key.envelopeNo())), groups.otherCases(key)))
                    .ifPresent(found -> recorded.put(key.envelopeNo(), found));
        }
        return recorded;
    }

    /** A voter who is on no roll is a person of their own: the envelopes found to be theirs are all that the office has. */
    private static Optional<RecordedFact> noOther(Optional<Link> link, List<EnvelopeCase> others) {
        boolean offTheRoll = link.filter(found -> found.identity() == VoterIdentityFact.NOT_ON_ROLL)
                .isPresent();
        return offTheRoll && others.isEmpty()
                ? Optional.of(other(OtherEnvelopeFact.NONE, "The office has no other envelope of this person."))
                : Optional.empty();
    }

    private static Optional<RecordedFact> otherEnvelope(List<EnvelopeCase> others, boolean chosen) {
        Optional<EnvelopeCase> counted =
                others.stream().filter(other -> other.countedPerson() != null).findFirst();
        if (counted.isPresent()) {
            return Optional.of(other(
                    OtherEnvelopeFact.COUNTED,
                    "Envelope " + counted.get().key().envelopeNo() + " of the same voter counts."));
        }
        if (!others.isEmpty() && others.stream().allMatch(RecordedFacts::isOver)) {
            return Optional.of(other(
                    OtherEnvelopeFact.NOT_COUNTED,
                    "Envelope " + others.get(0).key().envelopeNo()
                            + " of the same voter was decided and does not count."));
        }
        return chosen
                ? Optional.of(other(
                        OtherEnvelopeFact.NOT_COUNTED,
                        "A person put this one of the voter's envelopes forward as the one to count."))
                : Optional.empty();
    }

    private static boolean isOver(EnvelopeCase other) {
        return other.state() == CaseState.DECIDED
                || other.state() == CaseState.SENT_ON
                || other.state() == CaseState.ENDED;
    }

    private static RecordedFact other(OtherEnvelopeFact word, String words) {
        return new RecordedFact(Fact.OTHER_ENVELOPE, Set.of(word), Evidence.of(EvidenceSource.OTHER_ENVELOPES, words));
    }
}
