package org.proviso.core.adjudication.kept;

import java.time.LocalDate;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.proviso.core.chain.CanonicalJson;
import org.proviso.core.chain.CanonicalJsonReader;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.PackResolver;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.ReasonText;
import org.proviso.core.rules.Reference;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RulePack;
import org.proviso.core.rules.SurveyHeading;

/**
 * A rule pack as resolved for an election, as canonical JSON: whoever reads it back has the rules an assessment used,
 * with the same hash, whatever a later version of the program brings.
 */
public final class PackJson {

    private PackJson() {}

    /** Every rule's value with its reference and basis, who ruled, and the sentences the voter reads. */
    public static String write(ResolvedPack resolved) {
        RulePack pack = resolved.pack();
        Map<String, Object> text = new HashMap<>();
        text.put("id", pack.id());
        text.put("name", pack.name());
        text.put("illustrative", pack.illustrative());
        text.put("caution", pack.caution());
        text.put("election_date", resolved.electionDate().toString());
        text.put("given", resolved.all().stream().map(PackJson::given).toList());
        text.put("reasons", reasons(pack.reasons()));
        return CanonicalJson.of(text);
    }

    /**
     * The pack that was written; values for other election dates are not kept. A text that is not one, or that names a
     * rule this version does not have, is an {@link IllegalArgumentException}.
     */
    public static ResolvedPack read(String text) {
        KeptFields fields = new KeptFields(CanonicalJsonReader.object(text));
        RulePack pack = new RulePack(
                fields.text("id"),
                fields.text("name"),
                fields.flag("illustrative"),
                fields.text("caution"),
                Map.of(),
                reasons(fields.object("reasons")));
        List<ResolvedRule> given =
                fields.objects("given").stream().map(PackJson::given).toList();
        return PackResolver.asGiven(pack, LocalDate.parse(fields.text("election_date")), given);
    }

    private static Map<String, Object> given(ResolvedRule given) {
        Map<String, Object> text = new HashMap<>();
        text.put("rule", given.rule().key());
        text.put("value", RuleValueJson.write(given.value()));
        text.put("title", given.reference().title());
        text.put("section", given.reference().section());
        text.put("year", given.reference().year());
        text.put("basis", given.basis().code());
        if (given.signedBy() != null) {
            text.put("signed_by", given.signedBy());
        }
        return text;
    }

    private static ResolvedRule given(KeptFields fields) {
        String key = fields.text("rule");
        return new ResolvedRule(
                Rule.find(key)
                        .orElseThrow(
                                () -> new IllegalArgumentException("\"" + key + "\" is not a rule this version knows")),
                RuleValueJson.read(fields.object("value")),
                new Reference(fields.text("title"), fields.text("section"), (int) fields.number("year")),
                fields.code("basis", Basis.class),
                fields.optional("signed_by", name -> name));
    }

    private static Map<String, Object> reasons(Map<Reason, ReasonText> texts) {
        Map<String, Object> reasons = new HashMap<>();
        texts.forEach((reason, text) ->
                reasons.put(reason.code(), Map.of("survey", text.survey().code(), "notice", text.notice())));
        return reasons;
    }

    private static Map<Reason, ReasonText> reasons(KeptFields fields) {
        Map<Reason, ReasonText> reasons = new EnumMap<>(Reason.class);
        for (String code : fields.names()) {
            KeptFields text = fields.object(code);
            reasons.put(
                    KeptFields.code(Reason.class, code),
                    new ReasonText(text.code("survey", SurveyHeading.class), text.text("notice")));
        }
        return reasons;
    }
}
