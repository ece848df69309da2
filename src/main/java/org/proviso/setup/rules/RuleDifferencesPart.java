package org.proviso.setup.rules;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.proviso.core.ElectionId;
import org.proviso.core.adjudication.WhatIf;
import org.proviso.review.assess.WhatIfService.WhatIfResult;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;

/** The cases that would change under other rules: from what to what, and why. */
final class RuleDifferencesPart extends Div {

    private static final int SHOWN = 100;

    /** {@code again} compares anew, for a file. */
    RuleDifferencesPart(WhatIfResult compared, ElectionId election, String with, Supplier<WhatIfResult> again) {
        add(new Paragraph(
                compared.differences().isEmpty()
                        ? "None of " + UsDates.count(compared.cases(), "case") + " would change."
                        : UsDates.count(compared.differences().size(), "case") + " of " + compared.cases()
                                + " would change: " + counted(compared) + "."));
        if (compared.differences().isEmpty()) {
            return;
        }
        List<WhatIf> all = compared.differences();
        add(
                table(all.subList(0, Math.min(SHOWN, all.size()))),
                DownloadLinks.of(
                                "Cases that would change",
                                election,
                                () -> table(again.get().differences()))
                        .narrowed(() -> with));
        if (all.size() > SHOWN) {
            add(new Paragraph("and " + (all.size() - SHOWN) + " more"));
        }
    }

    private static PlainTable table(List<WhatIf> differences) {
        PlainTable table = new PlainTable("Cases that would change", "Envelope", "Now", "Outlook", "Why");
        differences.forEach(whatIf -> table.row(
                whatIf.envelopeNo().value(),
                change(whatIf.before().words(), whatIf.after().words()),
                change(whatIf.outlookBefore().words(), whatIf.outlookAfter().words()),
                String.join(" ", whatIf.because())));
        return table;
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
