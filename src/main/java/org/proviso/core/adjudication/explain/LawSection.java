package org.proviso.core.adjudication.explain;

import org.proviso.core.adjudication.CaseReport;

/** What the law asks: eight headings, the clear ones on one line, the others unfolded with evidence and reference. */
final class LawSection {

    private LawSection() {}

    static void write(CaseReport report, TextPage page) {
        page.title("What the law asks");
        LawLine.all(report).forEach(line -> write(line, page));
    }

    private static void write(LawLine line, TextPage page) {
        page.edges("  " + line.heading().number() + "  " + line.heading().asks(), line.summary());
        line.unfolded().forEach(detail -> unfold(detail, page));
        if (line.standing() == LawLine.Status.CLEAR) {
            if (!line.evidence().isEmpty()) {
                page.wrapped("       ", String.join(" ", line.evidence()));
            }
            line.references().forEach(words -> page.wrapped("       Rule: ", words));
        }
    }

    private static void unfold(LawDetail detail, TextPage page) {
        page.wrapped("     ", detail.words());
        if (!detail.suggests().isEmpty()) {
            page.wrapped("       ", detail.suggests());
        }
        if (!detail.evidence().isEmpty()) {
            page.wrapped("       ", String.join(" ", detail.evidence()));
        }
        detail.references().forEach(words -> page.wrapped("       Rule: ", words));
    }
}
