package org.proviso.setup.rules;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Collectors;
import org.proviso.core.adjudication.WhatIf;
import org.proviso.review.assess.WhatIfService.WhatIfResult;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;

/** The cases that would change under other rules: from what to what, and why. */
final class RuleDifferencesPart extends Div {

    private static final int SHOWN = 100;

    RuleDifferencesPart(WhatIfResult compared) {
        add(new Paragraph(
                compared.differences().isEmpty()
                        ? "None of " + UsDates.count(compared.cases(), "case") + " would change."
                        : UsDates.count(compared.differences().size(), "case") + " of " + compared.cases()
                                + " would change: " + counted(compared) + "."));
        if (compared.differences().isEmpty()) {
            return;
        }
        PlainTable table = new PlainTable("Cases that would change", "Envelope", "Now", "Outlook", "Why");
        compared.differences().stream()
                .limit(SHOWN)
                .forEach(whatIf -> table.row(
                        whatIf.envelopeNo().value(),
                        change(whatIf.before().words(), whatIf.after().words()),
                        change(
                                whatIf.outlookBefore().words(),
                                whatIf.outlookAfter().words()),
                        String.join(" ", whatIf.because())));
        add(table);
        if (compared.differences().size() > SHOWN) {
            add(new Paragraph("and " + (compared.differences().size() - SHOWN) + " more"));
        }
    }

    private static String counted(WhatIfResult compared) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        for (WhatIf whatIf : compared.differences()) {
            counts.merge(
                    change(whatIf.outlookBefore().words(), whatIf.outlookAfter().words()), 1, Integer::sum);
        }
        return counts.entrySet().stream()
                .map(count -> count.getValue() + " with the outlook " + count.getKey())
                .collect(Collectors.joining(", "));
    }

    private static String change(String before, String after) {
        return before.equals(after) ? before + " (no change)" : before + " \u2192 " + after;
    }
}
