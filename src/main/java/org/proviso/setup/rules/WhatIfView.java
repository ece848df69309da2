package org.proviso.setup.rules;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.LinkedHashMap;
import java.util.Map;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.act.ActResult;
import org.proviso.files.packs.RulePacks;
import org.proviso.review.assess.WhatIfService;
import org.proviso.ui.Caution;
import org.proviso.ui.Links;
import org.proviso.ui.MessageLine;
import org.proviso.ui.PageHead;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ChoiceField;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** What other rules would change: the cases of the election under another pack, or with one value changed. */
@Route(value = "set-up/what-if", layout = OfficeFrame.class)
@PageTitle("What if · Proviso")
@PermitAll
public final class WhatIfView extends Composite<Div> {

    private final transient WhatIfService whatIf;
    private final ElectionId election;
    private final ChoiceField pack = new ChoiceField("pack", "Rule pack", packs());
    private final RuleValueFields rule = new RuleValueFields("no rule changed", "choose a value");
    private final Div shown = new Div();

    WhatIfView(WhatIfService whatIf, AccessService access, WorkingElection workplace) {
        access.demand(Permission.PUT_RULES_IN_FORCE);
        this.whatIf = whatIf;
        this.election = workplace.electionId();
        shown.getElement().setAttribute("role", "status");
        shown.add(new H2("Compared with the rules in force"), new Paragraph("Not compared yet."));
        ActButton compare = new ActButton("Compare rules").first().does(this::compare);
        compare.getElement().setAttribute("data-finish", true);
        Div side = new Div(
                new H2("Rules to compare"),
                new Paragraph("Every case is assessed under both sets of rules. Nothing is saved and no case changes."),
                pack,
                rule,
                compare);
        side.getElement().setAttribute("data-typing", "go-on");
        side.addClassName("side");
        Div bench = new Div(shown, side);
        bench.addClassName("bench");
        getContent().addClassNames("sheet", "intake", "transmittals");
        getContent()
                .add(
                        new PageHead("What if", "Which cases would change under other rules, how and why.")
                                .beside(
                                        Links.link("Rules in force", "set-up/rules"),
                                        Links.link("Back to Setup", "set-up")),
                        bench,
                        new Caution());
    }

    private static Map<String, String> packs() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("", "the pack in force");
        RulePacks.bundled().forEach(name -> words.put(name, name));
        return words;
    }

    private void compare() {
        if (rule.key().isEmpty() != rule.value().isEmpty()) {
            rule.problem("Choose both a rule and its value, or neither.");
            return;
        }
        rule.problem("");
        Map<String, String> changed = rule.key().isEmpty() ? Map.of() : Map.of(rule.key(), rule.value());
        if (pack.code().isEmpty() && changed.isEmpty()) {
            MessageLine.refused("Choose another rule pack, or a rule to change.");
            return;
        }
        String named = pack.code();
        ActResult<WhatIfService.WhatIfResult> compared = whatIf.compare(election, pack.code(), changed);
        if (compared instanceof ActResult.Refused<WhatIfService.WhatIfResult> refused) {
            rule.problem(refused.words());
        }
        compared.ifAccepted().ifPresent(found -> {
            shown.removeAll();
            shown.add(
                    new H2("Compared with the rules in force"),
                    new RuleDifferencesPart(
                            found,
                            election,
                            "Rule pack: " + packs().get(named) + (changed.isEmpty() ? "" : "; " + changed),
                            () -> whatIf.compare(election, named, changed)
                                    .ifAccepted()
                                    .orElse(found)));
        });
    }
}
