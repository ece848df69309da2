package org.proviso.cli;

import java.time.LocalDateTime;
import java.util.List;
import org.proviso.core.Code;
import org.proviso.core.adjudication.judging.AnsweredQuestion;
import org.proviso.core.adjudication.judging.Assessment;
import org.proviso.core.adjudication.judging.DueAsk;
import org.proviso.core.adjudication.questions.Answer;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.ResolvedRule;

/** An assessment as YAML: recommendation, outlook, reasons, asks, and each answer with its references. */
final class AssessmentYaml {

    private AssessmentYaml() {}

    static String of(Assessment now, Assessment outlook, ResolvedPack pack, LocalDateTime asOf) {
        YamlWriter yaml = new YamlWriter();
        yaml.key("", "recommendation", now.outcome().recommendation().words());
        yaml.key("", "outlook", outlook.outcome().recommendation().words());
        yaml.list("", "reasons", codes(now.outcome().reasons()));
        yaml.list("", "outlook_reasons", codes(outlook.outcome().reasons()));
        yaml.list("", "contests", List.copyOf(now.outcome().contests()));
        yaml.plain("", "held_apart", now.heldApart() ? "yes" : "no");
        asks(outlook.asks(), yaml);
        yaml.list("", "still_open", now.stillOpen());
        answers(now.answered(), yaml);
        yaml.line("assessed:");
        yaml.key("  ", "as_of", asOf.toString());
        yaml.key("  ", "pack", pack.pack().id());
        yaml.key("  ", "pack_hash", pack.hash());
        yaml.plain("  ", "engine_version", Integer.toString(Assessment.ENGINE_VERSION));
        yaml.key("", "caution", pack.pack().caution());
        return yaml.toString();
    }

    private static void asks(List<DueAsk> asks, YamlWriter yaml) {
        yaml.line(asks.isEmpty() ? "asks: []" : "asks:");
        for (DueAsk ask : asks) {
            yaml.plain("  ", "- ask", ask.ask().code());
            yaml.plain("    ", "because_of", ask.reason().code());
            yaml.plain("    ", "state", ask.clock().code());
            yaml.key(
                    "    ",
                    "until",
                    ask.deadline()
                            .map(deadline -> deadline.lastMoment().toString())
                            .orElse("not known"));
        }
    }

    private static void answers(List<AnsweredQuestion> answered, YamlWriter yaml) {
        yaml.line("answers:");
        for (AnsweredQuestion answeredQuestion : answered) {
            Answer answer = answeredQuestion.answer();
            yaml.plain("  ", "- question", answeredQuestion.question().key());
            yaml.key(
                    "    ",
                    "heading",
                    answeredQuestion.question().heading().number() + " "
                            + answeredQuestion.question().heading().asks());
            yaml.key("    ", "asks", answeredQuestion.question().asks());
            yaml.plain("    ", "kind", kind(answer));
            yaml.key("    ", "answer", answer.words());
            if (answer instanceof Answer.Defect defect) {
                yaml.plain("    ", "reason", defect.reason().code());
                yaml.key("    ", "follows", defect.consequence().spelled());
            }
            if (answer instanceof Answer.Open open && open.expected() != null) {
                yaml.key("    ", "expected", open.expected().words());
            }
            yaml.list(
                    "    ",
                    "references",
                    answer.restsOn().stream().map(AssessmentYaml::reference).toList());
        }
    }

    private static String kind(Answer answer) {
        if (answer instanceof Answer.Clear) {
            return "clear";
        }
        if (answer instanceof Answer.Defect) {
            return "defect";
        }
        return answer instanceof Answer.Open ? "open" : "not_asked";
    }

    private static String reference(ResolvedRule given) {
        return given.rule().key() + ": " + given.reference().words() + ", "
                + given.basis().code();
    }

    private static List<String> codes(List<? extends Code> values) {
        return values.stream().map(Code::code).toList();
    }
}
