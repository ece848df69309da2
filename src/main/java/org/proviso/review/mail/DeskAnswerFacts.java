package org.proviso.review.mail;

import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.proviso.access.OfficeUser;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.MailBallotFact;
import org.proviso.core.adjudication.finding.DateWords;
import org.proviso.review.facts.AnswerKind;
import org.proviso.review.facts.AnswerStore;
import org.proviso.review.facts.LinkStore;
import org.proviso.review.facts.RecordedAnswer;
import org.proviso.review.news.CaseRecheck;
import org.springframework.stereotype.Component;

/**
 * What an answer of the mail-ballot desk says of a case: that the voter's mail ballot counted is a fact of it, as long as the
 * case is of that voter. That it was refused, or not seen, leaves what the lists say.
 */
@Component
class DeskAnswerFacts {

    private static final String BECAUSE = "The mail desk answered about the voter's mail ballot.";

    /** Answers that were saved: to which lines, the facts they added in words, and those taken back. */
    record Saved(
            Map<SentLine, GivenAnswer> answers, Map<SentLine, String> added, Set<SentLine> takenBack, OfficeUser by) {}

    private final AnswerStore answers;
    private final LinkStore links;
    private final CaseRecheck watch;
    private final Clock clock;

    DeskAnswerFacts(AnswerStore answers, LinkStore links, CaseRecheck watch, Clock clock) {
        this.answers = answers;
        this.links = links;
        this.watch = watch;
        this.clock = clock;
    }

    Saved save(Map<SentLine, GivenAnswer> given, OfficeUser by) {
        Map<SentLine, String> added = new LinkedHashMap<>();
        Set<SentLine> takenBack = new LinkedHashSet<>();
        given.forEach((line, answer) -> {
            EnvelopeKey key = line.line().key();
            boolean counted = answer.answer() == DeskAnswer.COUNTED;
            boolean hadCounted = Optional.ofNullable(line.given())
                    .filter(before -> before.answer() == DeskAnswer.COUNTED)
                    .isPresent();
            if (hadCounted && !counted && answers.withdraw(key, AnswerKind.OTHER) > 0) {
                takenBack.add(line);
            }
            if (counted && !hadCounted && isOfTheVoter(line)) {
                String words = words(line, answer);
                answers.insert(key, Fact.MAIL_BALLOTS.key(), fact(words, by));
                added.put(line, words);
            }
        });
        return new Saved(given, added, takenBack, by);
    }

    private boolean isOfTheVoter(SentLine line) {
        return links.newest(line.line().key())
                .map(link -> line.line().voterId().equals(link.voterId()))
                .orElse(false);
    }

    private RecordedAnswer fact(String words, OfficeUser by) {
        return new RecordedAnswer(
                0,
                AnswerKind.OTHER,
                Fact.MAIL_BALLOTS,
                Set.of(MailBallotFact.ACCEPTED),
                words,
                null,
                by.userName(),
                clock.instant());
    }

    private static String words(SentLine line, GivenAnswer answer) {
        return "The mail desk answered on " + DateWords.date(answer.answeredOn()) + " (" + answer.answeredBy()
                + ", list " + line.listNo() + "): the voter's mail ballot is already counted.";
    }

    /** Assesses anew what the answers say something new of, before they are recorded in the ledger. */
    void recheck(Saved saved) {
        Set<EnvelopeKey> keys = new TreeSet<>();
        Stream.concat(saved.added().keySet().stream(), saved.takenBack().stream())
                .forEach(line -> keys.add(line.line().key()));
        Map<EnvelopeKey, List<String>> because = new LinkedHashMap<>();
        keys.forEach(key -> because.put(key, List.of(BECAUSE)));
        watch.lookAgain(keys, saved.by().actor(), because);
    }
}
