package org.proviso.core.adjudication.proof;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.proviso.core.adjudication.questions.Question;
import org.proviso.core.adjudication.questions.QuestionList;

/**
 * Every tuple of a question by number, and for each the numbers of the tuples that it becomes once what is unknown in
 * it is known. It depends on the questions only, so one is made for all packs.
 */
@SuppressWarnings("ArrayRecordComponent") // Never compared.
record TupleSpace(Question question, List<Tuple> tuples, int[][] completions, Map<Tuple, Integer> numbers) {

    /** Of every question, in their order; made when first asked for. */
    static List<TupleSpace> all() {
        return Spaces.ALL;
    }

    static TupleSpace of(Question question) {
        List<Tuple> tuples = Tuple.of(question);
        Map<Tuple, Integer> numbers = new HashMap<>();
        for (Tuple tuple : tuples) {
            numbers.put(tuple, numbers.size());
        }
        int[][] completions = new int[tuples.size()][];
        for (int number = 0; number < completions.length; number++) {
            Tuple tuple = tuples.get(number);
            completions[number] = tuple.hasUnknown()
                    ? tuple.completions().stream().mapToInt(numbers::get).toArray()
                    : new int[0];
        }
        return new TupleSpace(question, tuples, completions, numbers);
    }

    int number(Tuple tuple) {
        return Objects.requireNonNull(numbers.get(tuple), "the space has every tuple of its question");
    }

    int size() {
        return tuples.size();
    }

    /** Holder that builds the spaces once. */
    private static final class Spaces {
        static final List<TupleSpace> ALL =
                QuestionList.all().stream().map(TupleSpace::of).toList();
    }
}
