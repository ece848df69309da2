package org.proviso.core.adjudication.proof;

import java.util.LinkedHashMap;
import java.util.Map;
import org.proviso.core.adjudication.Answer;
import org.proviso.core.adjudication.Question;
import org.proviso.core.adjudication.Setting;
import org.proviso.core.adjudication.questions.QuestionList;
import org.proviso.core.rules.ResolvedPack;

/** Every answer to every tuple of every question in every world, under one resolved pack. */
final class Answers {

    /** One question, one tuple of its facts, one state of the clocks. */
    record Asked(Question question, World world, Tuple tuple) {
        String sentence() {
            return "if " + tuple.sentence() + " (" + world.words() + ")";
        }
    }

    private final Map<Asked, Answer> answers = new LinkedHashMap<>();

    static Answers under(ResolvedPack pack) {
        Answers all = new Answers();
        for (Question question : QuestionList.all()) {
            for (World world : World.all()) {
                Setting setting = new Setting(pack, world);
                for (Tuple tuple : Tuple.of(question)) {
                    all.answers.put(new Asked(question, world, tuple), question.answer(tuple, setting));
                }
            }
        }
        return all;
    }

    Map<Asked, Answer> all() {
        return answers;
    }

    AnswerClass classOf(Asked asked) {
        return AnswerClass.of(answers.get(asked));
    }
}
