package org.proviso.core.matching;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What speaks for and against a pair, one sentence for each field that says something. */
final class Evidence {

    private Evidence() {}

    static List<String> of(Comparison pair) {
        List<String> sentences = new ArrayList<>();
        if (pair.date() == DateGrade.SAME && pair.last4() == NumberGrade.SAME) {
            sentences.add("Same birth date and last four.");
        } else {
            add(sentences, pair.date());
            add(sentences, pair.last4());
        }
        add(sentences, pair.license());
        if (pair.surname() == SurnameGrade.EXACT && pair.given() == GivenGrade.EXACT) {
            sentences.add("Same surname and given name.");
        } else {
            add(sentences, pair.surname());
            add(sentences, pair.given());
        }
        add(sentences, pair.middle());
        add(sentences, pair.suffix());
        if (pair.byFormerAddress()) {
            sentences.add("The former address written is the roll's: "
                    + pair.address().words().toLowerCase(Locale.ROOT));
        } else {
            add(sentences, pair.address());
        }
        return sentences;
    }

    private static void add(List<String> sentences, Grade grade) {
        if (!grade.words().isEmpty()) {
            sentences.add(grade.words());
        }
    }
}
