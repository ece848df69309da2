package org.proviso.core.adjudication.proof;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;
import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.AskClock;
import org.proviso.core.adjudication.Setting;
import org.proviso.core.rules.ResolvedPack;

/** Every answer to every tuple of every question in every world, under one resolved pack. */
final class Answers {

    private static final List<World> WORLDS = World.all();

    private final List<Table> tables = new ArrayList<>();

    /** The answers to one question: a row for each world, a column for each tuple. */
    @SuppressWarnings("ArrayRecordComponent") // Never compared.
    record Table(TupleSpace space, Answer[][] answers, AnswerClass[][] classes) {}

    /** One question, one tuple of its facts, one state of the clocks. */
    record Asked(Table table, int world, int number) {

        Answer answer() {
            return table.answers[world][number];
        }

        AnswerClass kind() {
            return table.classes[world][number];
        }

        Tuple tuple() {
            return table.space.tuples().get(number);
        }

        World clocks() {
            return WORLDS.get(world);
        }

        /** The same question about another tuple. */
        Asked about(int other) {
            return new Asked(table, world, other);
        }

        /** The same question in another world. */
        Asked in(World other) {
            return new Asked(table, WORLDS.indexOf(other), number);
        }

        String sentence() {
            return "\"" + table.space.question().asks() + "\" if " + tuple().sentence() + ", while " + clocks().words()
                    + ": the answer is \"" + answer().words() + "\"";
        }
    }

    static Answers under(ResolvedPack pack) {
        Answers all = new Answers();
        for (TupleSpace space : TupleSpace.all()) {
            Answer[][] answers = new Answer[WORLDS.size()][space.size()];
            AnswerClass[][] classes = new AnswerClass[WORLDS.size()][space.size()];
            for (int world = 0; world < WORLDS.size(); world++) {
                Setting setting = new Setting(pack, WORLDS.get(world));
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

    void each(Consumer<Asked> seen) {
        for (Table table : tables) {
            for (int world = 0; world < WORLDS.size(); world++) {
                for (int number = 0; number < table.space.size(); number++) {
                    seen.accept(new Asked(table, world, number));
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
    static World with(AskClock asks, World world) {
        return new World(asks, world.mailReceiptPassed());
    }
}
