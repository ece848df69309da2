package org.proviso.core.adjudication.proof;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.adjudication.questions.AskStatus;
import org.proviso.core.adjudication.questions.QuestionContext;
import org.proviso.core.rules.ResolvedPack;

/** Every answer to every tuple of every question in every world, under one resolved pack. */
final class AllAnswers {

    private static final List<ProofClocks> WORLDS = ProofClocks.all();

    private final List<Table> tables = new ArrayList<>();

    /** The answers to one question: a row for each world, a column for each tuple. */
    @SuppressWarnings("ArrayRecordComponent") // Never compared.
    record Table(TupleSpace space, Answer[][] answers, AnswerClass[][] classes) {}

    /** One question, one tuple of its facts, one state of the clocks. */
    record QuestionAtTuple(Table table, int world, int number) {

        Answer answer() {
            return table.answers[world][number];
        }

        AnswerClass kind() {
            return table.classes[world][number];
        }

        Tuple tuple() {
            return table.space.tuples().get(number);
        }

        ProofClocks clocks() {
            return WORLDS.get(world);
        }

        /** The same question about another tuple. */
        QuestionAtTuple about(int other) {
            return new QuestionAtTuple(table, world, other);
        }

        /** The same question in another world. */
        QuestionAtTuple in(ProofClocks other) {
            return new QuestionAtTuple(table, WORLDS.indexOf(other), number);
        }

        String sentence() {
            return "\"" + table.space.question().asks() + "\" when " + tuple().sentence() + ", while "
                    + clocks().words() + ": the answer is \"" + answer().words() + "\"";
        }
    }

    static AllAnswers under(ResolvedPack pack) {
        AllAnswers all = new AllAnswers();
        for (TupleSpace space : TupleSpace.all()) {
            Answer[][] answers = new Answer[WORLDS.size()][space.size()];
            AnswerClass[][] classes = new AnswerClass[WORLDS.size()][space.size()];
            for (int world = 0; world < WORLDS.size(); world++) {
                QuestionContext setting = new QuestionContext(pack, WORLDS.get(world));
                for (int number = 0; number < space.size(); number++) {
                    Answer answer = space.question().answer(space.tuples().get(number), setting);
                    answers[world][number] = answer;
                    classes[world][number] = AnswerClass.of(answer);
                }
            }
            all.tables.add(new Table(space, answers, classes));
        }
        return all;
    }

    List<Table> tables() {
        return tables;
    }

    void each(Consumer<QuestionAtTuple> seen) {
        for (Table table : tables) {
            for (int world = 0; world < WORLDS.size(); world++) {
                for (int number = 0; number < table.space.size(); number++) {
                    seen.accept(new QuestionAtTuple(table, world, number));
                }
            }
        }
    }

    Set<AnswerClass> classes() {
        Set<AnswerClass> classes = new LinkedHashSet<>();
        each(asked -> classes.add(asked.kind()));
        return classes;
    }

    /** The world in which asks stand so, and mail ballots as in this one. */
    static ProofClocks with(AskStatus asks, ProofClocks world) {
        return new ProofClocks(asks, world.mailReceiptPassed());
    }
}
