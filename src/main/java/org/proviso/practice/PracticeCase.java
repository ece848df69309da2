package org.proviso.practice;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.proviso.core.adjudication.finding.CaseFacts;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.judging.ElectionClocks;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.adjudication.questions.QuestionContext;
import org.proviso.core.adjudication.questions.QuestionHeading;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.PackResolver;
import org.proviso.files.packs.FactsYamlReader;
import org.proviso.files.packs.RulePacks;
import org.springframework.context.annotation.Lazy;
import org.springframework.core.io.ClassPathResource;
import org.springframework.stereotype.Component;

/** What the rules say of the practice envelope, by the program's own assessment under the invented example pack. */
@Component
@Lazy
class PracticeCase {

    /** One of the eight questions of the law, and what was found. */
    record Line(String asks, String answer) {}

    private static final LocalDate ELECTION = LocalDate.of(2026, 11, 3);
    private static final LocalDateTime AS_OF = LocalDateTime.of(2026, 11, 9, 10, 0);

    private final List<Line> lines;
    private final String recommendation;

    PracticeCase() {
        Assessment assessment = assessed();
        this.lines = Stream.of(QuestionHeading.values())
                .map(heading -> new Line(heading.asks(), answer(assessment, heading)))
                .toList();
        this.recommendation = assessment.outcome().recommendation().words();
    }

    List<Line> lines() {
        return lines;
    }

    String recommendation() {
        return recommendation;
    }

    private static Assessment assessed() {
        DeadlineBook book =
                DeadlineBook.of(PackResolver.resolve(RulePacks.load("example"), ELECTION, List.of()), Set.of());
        FactsYamlReader file = read();
        CaseFacts facts = file.facts(book);
        return Assessment.assess(
                facts, new QuestionContext(book.pack(), new ElectionClocks(book, AS_OF, file.noticesSent())));
    }

    private static FactsYamlReader read() {
        try (Reader text = new InputStreamReader(
                new ClassPathResource("org/proviso/practice/facts.yaml").getInputStream(), StandardCharsets.UTF_8)) {
            return FactsYamlReader.of("facts.yaml", text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String answer(Assessment assessment, QuestionHeading heading) {
        List<String> wrong = new ArrayList<>();
        assessment.answered().stream()
                .filter(answered -> answered.question().heading() == heading)
                .map(answered -> answered.answer())
                .filter(answer -> !(answer instanceof Answer.Clear || answer instanceof Answer.NotAsked))
                .forEach(answer -> wrong.add(answer.words()));
        return wrong.isEmpty() ? "Clear" : String.join("; ", wrong);
    }
}
