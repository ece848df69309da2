package org.proviso.review.ui.list;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Span;
import java.util.Locale;
import org.proviso.core.adjudication.judging.Recommendation;
import org.proviso.ui.OutcomeMark;

/** What the rules say, in a cell: an outcome of a vote with its mark, anything else in words alone. */
public final class OutlookMark {

    private OutlookMark() {}

    public static Component of(Recommendation says) {
        String words = words(says);
        return switch (says) {
            case COUNT -> new OutcomeMark(OutcomeMark.Shape.COUNT, words);
            case COUNT_IN_PART -> new OutcomeMark(OutcomeMark.Shape.COUNT_IN_PART, words);
            case REJECT -> new OutcomeMark(OutcomeMark.Shape.REJECT, words);
            case RESEARCH, WAIT_FOR_THE_VOTER, SENT_ON, ADMINISTRATIVE_END -> new Span(words);
        };
    }

    /** {@code Count in part}, as it begins a cell. */
    public static String words(Recommendation says) {
        return says.words().substring(0, 1).toUpperCase(Locale.ROOT)
                + says.words().substring(1);
    }
}
