package org.proviso.core.adjudication.questions;

import java.util.Set;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;
import org.proviso.core.adjudication.finding.FactReader;

/** A question about one fact: unknown makes it open, every word of the fact has its answer. */
abstract class OneFactQuestion<V extends Enum<V> & FactWord> implements Question {

    private final String key;
    private final QuestionHeading heading;
    private final String asks;
    private final Fact<V> fact;

    OneFactQuestion(String key, QuestionHeading heading, String asks, Fact<V> fact) {
        this.key = key;
        this.heading = heading;
        this.asks = asks;
        this.fact = fact;
    }

    /** The answer when the word is known. */
    abstract Answer answerFor(V word, FactReader facts, QuestionContext setting);

    /** The answer when the fact is unknown. */
    Answer ofUnknown(FactReader facts, QuestionContext setting) {
        return setting.notKnown(fact.meaning());
    }

    @Override
    public final String key() {
        return key;
    }

    @Override
    public final QuestionHeading heading() {
        return heading;
    }

    @Override
    public final String asks() {
        return asks;
    }

    @Override
    public Set<Fact<?>> reads() {
        return Set.of(fact);
    }

    @Override
    public final Answer answer(FactReader facts, QuestionContext setting) {
        V word = facts.one(fact);
        return word == null ? ofUnknown(facts, setting) : answerFor(word, facts, setting);
    }
}
