package org.proviso.files.packs;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.proviso.core.contests.ContestPolicy;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Consequence;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RuleValue;
import org.proviso.files.InputException;
import org.proviso.files.yaml.YamlDocument;
import org.proviso.files.yaml.YamlNode;

/** Reads one value of a rule pack, of the kind that its rule takes. */
final class RuleValueReader {

    private RuleValueReader() {}

    static RuleValue read(Rule rule, YamlNode node) {
        if (!node.isMap() && !node.isList() && node.text().equals("unknown")) {
            return new RuleValue.Unknown();
        }
        return switch (rule.type()) {
            case FLAG -> new RuleValue.Flag(node.yes());
            case WORD -> new RuleValue.Word(word(rule, node));
            case WORDS -> new RuleValue.Words(words(rule, node));
            case TEXT -> new RuleValue.Text(node.text());
            case NUMBER -> new RuleValue.Number(node.whole());
            case TIME -> new RuleValue.Time(node.time());
            case DEADLINE -> DeadlineReader.read(rule, node);
            case CONSEQUENCE -> new RuleValue.Follows(consequence(node));
        };
    }

    /** A value written in one line, as a county ruling gives it. */
    static RuleValue readLine(Rule rule, String file, String line) {
        return read(
                rule,
                YamlDocument.read(file, new StringReader("value: " + line)).required("value"));
    }

    private static String word(Rule rule, YamlNode node) {
        if (!rule.words().contains(node.text())) {
            throw node.wrong(InputException.quoted(node.text()) + " is not one of " + String.join(", ", rule.words()));
        }
        return node.text();
    }

    private static List<String> words(Rule rule, YamlNode node) {
        List<String> words = new ArrayList<>();
        for (YamlNode item : node.items()) {
            words.add(word(rule, item));
        }
        return List.copyOf(words);
    }

    private static Consequence consequence(YamlNode node) {
        if (!node.isMap()) {
            Consequence.Effect does = node.code(Consequence.Effect.class);
            return checked(node, new Consequence(does, null, null));
        }
        node.rejectUnknownKeys("does", "policy", "cure");
        return checked(
                node,
                new Consequence(
                        node.required("does").code(Consequence.Effect.class),
                        node.optional("policy")
                                .map(policy -> policy.code(ContestPolicy.class))
                                .orElse(null),
                        node.optional("cure").map(cure -> cure.code(Ask.class)).orElse(null)));
    }

    private static Consequence checked(YamlNode node, Consequence consequence) {
        boolean part = consequence.does() == Consequence.Effect.IN_PART;
        if (part != (consequence.policy() != null)) {
            throw node.wrong(part ? "in_part needs a policy" : "a policy can be used only with in_part");
        }
        if (consequence.cure() != null && !consequence.costsTheVoter()) {
            throw node.wrong("a cure can be used only with reject or in_part");
        }
        return consequence;
    }
}
