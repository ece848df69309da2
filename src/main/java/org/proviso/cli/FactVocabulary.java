package org.proviso.cli;

import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FactWord;

/** Every fact with its words and their meaning, as YAML that can be read and searched. */
final class FactVocabulary {

    private FactVocabulary() {}

    static String describe() {
        YamlWriter yaml = new YamlWriter();
        yaml.line(
                "# Facts of a case. Under \"facts:\" give each fact one of its values, or unknown. A fact left out is unknown.");
        yaml.line("facts:");
        Fact.all().forEach(fact -> describe(fact, yaml));
        yaml.line("stamped:");
        yaml.line(
                "  # For evidence provided after election day, give its stamp instead; it is then compared with the deadline:");
        yaml.key("  ", "identification", "{value: supplied, received_at: 2026-11-06T15:30}");
        yaml.key("  ", "voter_signature", "{value: signed_later, received_at: 2026-11-06T15:30}");
        yaml.line("contests:");
        yaml.key("  ", "cast", "list of contest IDs on the ballot cast; needed where only some contests may count");
        yaml.key("  ", "right", "list of contest IDs on a ballot the voter was entitled to");
        yaml.key("  ", "federal", "list of the contest IDs for federal office");
        yaml.line("notices_sent:");
        yaml.key(
                "  ",
                "<ask>",
                "when the notice was sent, as 2026-11-04T16:00; asks: identification, signature, "
                        + "signature_difference, affirmation, registration, eligibility");
        yaml.line("rulings:");
        yaml.line("  - {rule: \"a rule's key\", value: \"its value, or empty to confirm\", signed_by: \"who\","
                + " on: 2026-10-01, ground: \"why\"}");
        return yaml.toString();
    }

    private static void describe(Fact<?> fact, YamlWriter yaml) {
        yaml.line("  " + fact.key() + ":");
        yaml.key("    ", "meaning", fact.meaning());
        yaml.plain("    ", "several_may_hold", fact.severalMayHold() ? "yes  # a list; none or [] for nothing" : "no");
        yaml.line("    words:");
        for (FactWord word : fact.words()) {
            yaml.key("      ", word.code(), word.meaning());
        }
    }
}
