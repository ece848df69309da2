package org.proviso.review.facts;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.adjudication.facts.OtherEnvelopeFact;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.core.adjudication.finding.Evidence;
import org.proviso.core.adjudication.finding.EvidenceSource;
import org.proviso.core.adjudication.finding.RecordedFact;
import org.proviso.review.CaseKey;
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

    RecordedFacts(AnswerStore answers, SearchStore searches, VoterGroupStore choices, VoterGroups group) {
        this.answers = answers;
        this.searches = searches;
        this.choices = choices;
        this.group = group;
    }

    /** Everything recorded of a case, the newest last; moments are local to the county. */
    List<RecordedFact> of(CaseKey key, ZoneId county) {
        List<RecordedFact> recorded = new ArrayList<>();
        for (SearchStore.RecordedSearch search : searches.of(key)) {
            if (search.found().registration() != null) {
                recorded.add(new RecordedFact(
                        Fact.REGISTRATION, Set.of(search.found().registration()), searched(search, county)));
            }
        }
        answers.standing(key).forEach(answer -> recorded.add(answered(answer, county)));
        otherEnvelope(key).ifPresent(recorded::add);
        return recorded;
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
    private Optional<RecordedFact> otherEnvelope(CaseKey key) {
        List<EnvelopeCase> others = group.otherCases(key);
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
        return chosen(key)
                ? Optional.of(other(
                        OtherEnvelopeFact.NOT_COUNTED,
                        "A person put this one of the voter's envelopes forward as the one to count."))
                : Optional.empty();
    }

    private boolean chosen(CaseKey key) {
        return group.person(key)
                .flatMap(person -> choices.chosen(key.electionId(), person))
                .filter(key.envelopeNo()::equals)
                .isPresent();
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
