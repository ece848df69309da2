package org.proviso.core.adjudication.questions;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.adjudication.ClearCase;
import org.proviso.core.adjudication.Spelled;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.adjudication.finding.CaseFacts;
import org.proviso.core.adjudication.finding.FactReader;
import org.proviso.core.rules.ResolvedPack;

/** Puts one question to a clear case with a few facts changed; a read of an undeclared fact is a fault. */
final class Asking {

    /** The facts a question declared, and nothing else. */
    private record Guarded(Question question, CaseFacts facts) implements FactReader {
        @Override
        public <V extends Enum<V> & FactWord> @Nullable Set<V> all(Fact<V> fact) {
            if (!question.reads().contains(fact)) {
                throw new AssertionError(question.key() + " reads " + fact.key() + " and does not declare it");
            }
            return facts.all(fact);
        }
    }

    private Asking() {}

    static String of(String question, String facts, ResolvedPack pack) {
        return of(question, facts, pack, AskStatus.RUNNING);
    }

    static String of(String question, String facts, ResolvedPack pack, AskStatus clock) {
        return Spelled.of(answer(question, facts, new QuestionContext(pack, new FixedClocks(clock, false))));
    }

    static Answer answer(String question, String facts, QuestionContext setting) {
        Question asked = find(question);
        return asked.answer(new Guarded(asked, new ClearCase().with(facts).facts()), setting);
    }

    static Question find(String key) {
        List<Question> found = QuestionList.all().stream()
                .filter(question -> question.key().equals(key))
                .toList();
        return found.get(0);
    }
}
