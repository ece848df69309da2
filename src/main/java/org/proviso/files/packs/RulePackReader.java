package org.proviso.files.packs;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.proviso.core.Code;
import org.proviso.core.CourtOrder;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.DatedValue;
import org.proviso.core.rules.ElectionsCovered;
import org.proviso.core.rules.PackCourtOrder;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.ReasonText;
import org.proviso.core.rules.Reference;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RulePack;
import org.proviso.core.rules.RuleValue;
import org.proviso.core.rules.SurveyHeading;
import org.proviso.files.yaml.YamlNode;

/**
 * Reads one rule pack: every value dated, referenced and marked with how it is known. A key that is not in the
 * vocabulary, a value without a reference, or dates out of order refuse the whole pack.
 */
final class RulePackReader {

    /** A rule pack as in its file, and the pack it is laid over (empty for the floor itself). */
    record LayeredPack(RulePack pack, String over) {}

    private final boolean illustrative;

    private RulePackReader(boolean illustrative) {
        this.illustrative = illustrative;
    }

    static LayeredPack read(YamlNode root) {
        root.rejectUnknownKeys("pack", "name", "over", "illustrative", "caution", "rules", "reasons", "orders");
        boolean illustrative = root.optional("illustrative").map(YamlNode::yes).orElse(false);
        RulePackReader reader = new RulePackReader(illustrative);
        RulePack pack = new RulePack(
                root.required("pack").text(),
                root.required("name").text(),
                illustrative,
                root.required("caution").text(),
                reader.rules(root.required("rules")),
                root.optional("reasons").map(RulePackReader::reasons).orElse(Map.of()),
                reader.orders(root));
        return new LayeredPack(pack, root.optional("over").map(YamlNode::text).orElse(""));
    }

    private Map<Rule, List<DatedValue>> rules(YamlNode node) {
        Map<Rule, List<DatedValue>> rules = new LinkedHashMap<>();
        for (String key : node.keys()) {
            Rule rule = rule(node, key);
            rules.put(rule, values(rule, node.required(key)));
        }
        return rules;
    }

    private List<DatedValue> values(Rule rule, YamlNode node) {
        List<DatedValue> values = new ArrayList<>();
        for (YamlNode item : node.items()) {
            DatedValue value = value(rule, item);
            if (!values.isEmpty() && !isAfter(values.get(values.size() - 1), value)) {
                throw item.required("from").wrong("dates must be in ascending order");
            }
            values.add(value);
        }
        return List.copyOf(values);
    }

    /** Two values may begin on the same day only where each is for other elections. */
    private static boolean isAfter(DatedValue before, DatedValue value) {
        return before.from().isBefore(value.from())
                || (before.from().equals(value.from()) && before.elections() != value.elections());
    }

    /** Court orders, each a dated act that changes one rule for the elections it names. */
    private List<PackCourtOrder> orders(YamlNode root) {
        List<PackCourtOrder> orders = new ArrayList<>();
        for (YamlNode node : root.optional("orders").map(YamlNode::items).orElse(List.of())) {
            orders.add(order(node));
        }
        return List.copyOf(orders);
    }

    private PackCourtOrder order(YamlNode node) {
        node.rejectUnknownKeys(
                "court", "on", "from", "to", "standing", "rule", "value", "reference", "basis", "checked");
        YamlNode key = node.required("rule");
        Rule rule = Rule.find(key.text()).orElseThrow(() -> key.wrong("is not a known rule"));
        PackCourtOrder order = new PackCourtOrder(
                node.required("court").text(),
                node.required("on").date(),
                node.required("to").date(),
                node.required("standing").code(CourtOrder.Status.class),
                rule,
                dated(rule, node));
        if (order.to().isBefore(order.value().from())) {
            throw node.required("to").wrong("the order's last election date is before its first");
        }
        return order;
    }

    private DatedValue value(Rule rule, YamlNode node) {
        node.rejectUnknownKeys("from", "elections", "value", "reference", "basis", "checked");
        return dated(rule, node);
    }

    private DatedValue dated(Rule rule, YamlNode node) {
        LocalDate from = node.required("from").date();
        RuleValue value = RuleValueReader.read(rule, node.required("value"));
        Basis basis = basis(node.required("basis"), value);
        Reference reference = reference(node.required("reference"));
        return new DatedValue(
                from,
                node.optional("elections")
                        .map(which -> which.code(ElectionsCovered.class))
                        .orElse(ElectionsCovered.ALL),
                value,
                reference,
                basis,
                node.required("checked").date());
    }

    private static Rule rule(YamlNode rules, String key) {
        YamlNode values = rules.required(key);
        return Rule.find(key).orElseThrow(() -> values.wrong("is not a known rule"));
    }

    private Basis basis(YamlNode node, RuleValue value) {
        Basis basis = node.code(Basis.class);
        if (basis == Basis.RULED) {
            throw node.wrong("a county ruling is the office's own act and cannot be part of a rule pack");
        }
        if (basis == Basis.INVENTED && !illustrative) {
            throw node.wrong("invented law is allowed only in a rule pack marked illustrative");
        }
        if ((value instanceof RuleValue.Unknown) != (basis == Basis.UNKNOWN)) {
            throw node.wrong("a value of unknown needs a basis of unknown, and the reverse");
        }
        return basis;
    }

    private static Reference reference(YamlNode node) {
        node.rejectUnknownKeys("title", "section", "year");
        return new Reference(
                node.required("title").text(),
                node.optional("section").map(YamlNode::text).orElse(""),
                node.required("year").whole());
    }

    private static Map<Reason, ReasonText> reasons(YamlNode node) {
        Map<Reason, ReasonText> reasons = new LinkedHashMap<>();
        for (String key : node.keys()) {
            YamlNode text = node.required(key).rejectUnknownKeys("survey", "notice");
            Reason reason = Code.find(Reason.class, key).orElseThrow(() -> text.wrong("is not a known reason"));
            reasons.put(
                    reason,
                    new ReasonText(
                            text.required("survey").code(SurveyHeading.class),
                            text.required("notice").text()));
        }
        return reasons;
    }
}
