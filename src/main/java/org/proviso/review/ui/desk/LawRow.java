package org.proviso.review.ui.desk;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import java.util.Locale;
import java.util.stream.Collectors;
import org.proviso.core.adjudication.explain.LawDetail;
import org.proviso.core.adjudication.explain.LawLine;
import org.proviso.review.facts.AnswerKind;
import org.proviso.review.facts.RecordedAnswer;

/** One question of the law: one line if clear; unfolded with reasons and acts if it needs work. */
final class LawRow extends NativeDetails {

    LawRow(CasePageContext desk, LawLine line, boolean light) {
        addClassNames(
                "question", line.standing().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        setClassName("light", light);
        setSummary(summary(line));
        setContent(inside(desk, line));
        setOpen(line.standing() == LawLine.Status.OPEN || line.standing() == LawLine.Status.DEFECT);
    }

    private static Div summary(LawLine line) {
        Span number = new Span(String.valueOf(line.heading().number()));
        number.addClassName("num");
        Span answer = new Span(line.summary().substring(0, 1).toUpperCase(Locale.ROOT)
                + line.summary().substring(1));
        answer.addClassName("answer");
        Div words = new Div(number, new Span(line.heading().asks()), answer);
        words.addClassName("asked");
        return words;
    }

    private static Div inside(CasePageContext desk, LawLine line) {
        Div why = new Div();
        why.addClassName("why");
        line.unfolded().forEach(detail -> unfold(detail, why));
        if (line.unfolded().isEmpty()) {
            if (!line.evidence().isEmpty()) {
                why.add(new Paragraph(String.join(" ", line.evidence())));
            }
            line.references().forEach(words -> why.add(rule(words)));
        }
        answers(desk, line, why);
        if (desk.mayWork()) {
            why.add(new HeadingActs(desk, line));
        }
        return why;
    }

    private static void unfold(LawDetail detail, Div why) {
        Span words = new Span(detail.words());
        words.addClassName("said-so");
        Paragraph answer = new Paragraph(words);
        String more = (detail.suggests() + " " + String.join(" ", detail.evidence())).strip();
        if (!more.isEmpty()) {
            answer.add(new Span(" " + more));
        }
        why.add(answer);
        rules(detail, why);
    }

    /** The legal references in a line; what each says, on demand. */
    private static void rules(LawDetail detail, Div why) {
        String places = detail.answered().answer().restsOn().stream()
                .map(given -> given.reference().words())
                .distinct()
                .collect(Collectors.joining("; "));
        if (places.isEmpty()) {
            return;
        }
        Div all = new Div();
        detail.references().forEach(reference -> all.add(rule(reference)));
        NativeDetails rules = new NativeDetails(places, all);
        rules.addClassName("rules");
        why.add(rules);
    }

    private static Paragraph rule(String words) {
        Paragraph rule = new Paragraph("Rule: " + words);
        rule.addClassName("rule");
        return rule;
    }

    private static void answers(CasePageContext desk, LawLine line, Div why) {
        for (RecordedAnswer answer : desk.file().work().answers()) {
            boolean here = HeadingActs.facts(desk, line).contains(answer.fact());
            if (here && answer.kind() == AnswerKind.OTHERWISE) {
                String words = answer.words().stream()
                        .map(word -> word.meaning())
                        .reduce((said, other) -> said + "; " + other)
                        .orElse("");
                Paragraph given =
                        new Paragraph("Overridden by a person: " + words + ". \u201C" + answer.reason() + "\u201D");
                given.addClassName("given");
                why.add(given);
            }
        }
    }
}
