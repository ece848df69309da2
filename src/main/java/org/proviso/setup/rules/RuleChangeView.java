package org.proviso.setup.rules;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.time.LocalDateTime;
import java.util.List;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.rules.ResolvedPack;
import org.proviso.election.RuleChange;
import org.proviso.election.rules.RuleChangeService;
import org.proviso.election.rules.RulesInForceService;
import org.proviso.review.assess.RulingWorkService;
import org.proviso.review.assess.StaleCase;
import org.proviso.review.assess.WhatIfService;
import org.proviso.ui.Caution;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.PageHead;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;
import org.proviso.ui.frame.ElectionLine;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** The office's own rule pack: proved, compared, put in force; who did so, and which cases were decided before. */
@Route(value = "set-up/rules/change", layout = OfficeFrame.class)
@PageTitle("Change rule pack · Proviso")
@PermitAll
public final class RuleChangeView extends Composite<Div> {

    private static final int SHOWN = 50;

    private final transient RuleChangeService changes;
    private final transient RulingWorkService tasks;
    private final transient WorkingElection workplace;
    private final Div list = new Div();

    RuleChangeView(
            RuleChangeService changes,
            WhatIfService whatIf,
            RulingWorkService tasks,
            RulesInForceService rules,
            AccessService access,
            WorkingElection workplace) {
        access.demand(Permission.PUT_RULES_IN_FORCE);
        this.changes = changes;
        this.tasks = tasks;
        this.workplace = workplace;
        PackUpload upload = new PackUpload(changes, whatIf, workplace.electionId(), this::show);
        ResolvedPack inForce = rules.book(workplace.electionId()).pack();
        Div side = new Div(
                new OneRuleForm(
                        inForce.pack().id(),
                        inForce.electionDate(),
                        workplace.now().toLocalDate(),
                        upload::take),
                upload);
        side.addClassName("side");
        Div bench = new Div(new Div(upload.tried(), list), side);
        bench.addClassName("bench");
        getContent().addClassNames("sheet", "intake", "transmittals");
        getContent()
                .add(
                        new PageHead(
                                        "Change rule pack",
                                        "The office's own rule pack builds on the pack it names and replaces it for"
                                                + " this election.")
                                .beside(
                                        Links.link("Rules in force", "set-up/rules"),
                                        Links.link("Back to Setup", "set-up")),
                        bench,
                        new Caution());
        show();
    }

    private void show() {
        list.removeAll();
        list.add(new H2("Rule packs put in force"));
        List<RuleChange> all = changes.changes(workplace.electionId());
        if (all.isEmpty()) {
            list.add(new Paragraph("No changes. The rules are those the election was loaded with."));
        } else {
            list.add(
                    table(all),
                    DownloadLinks.of(
                            "Rule packs put in force",
                            workplace.electionId(),
                            () -> table(changes.changes(workplace.electionId()))));
        }
        stale();
    }

    private PlainTable table(List<RuleChange> all) {
        ElectionLine election = workplace.election().orElseThrow();
        PlainTable table = new PlainTable("Rule packs put in force", "No.", "Rule pack", "Basis", "By", "When");
        all.forEach(change -> table.row(
                String.valueOf(change.changeNo()),
                change.packId() + ", " + change.packHash().substring(0, 12),
                change.isOverride()
                        ? "counsel's override, " + change.counsel() + ": " + change.ground() + ". Proof: "
                                + change.counterexample()
                        : "proof passed",
                change.putBy(),
                UsDates.moment(LocalDateTime.ofInstant(change.putAt(), election.zone()))));
        return table;
    }

    /** Decided cases keep the rules they were decided under. They are marked, and no decision changes. */
    private void stale() {
        List<StaleCase> stale = tasks.staleCases(workplace.electionId());
        list.add(new H2("Decided under other rules"));
        if (stale.isEmpty()) {
            list.add(new Paragraph("No decided case was assessed under rules other than those in force."));
            return;
        }
        list.add(new Paragraph(UsDates.count(stale.size(), "decided case")
                + " stale: assessed under rules no longer in force. They keep those rules until people reopen them."));
        list.add(
                stale(stale.subList(0, Math.min(SHOWN, stale.size()))),
                DownloadLinks.of(
                        "Stale cases", workplace.electionId(), () -> stale(tasks.staleCases(workplace.electionId()))));
    }

    private static PlainTable stale(List<StaleCase> stale) {
        PlainTable table = new PlainTable("Stale cases", "Envelope", "State", "Recommendation then", "Rules then");
        stale.forEach(staleCase -> table.row(
                staleCase.key().envelopeNo().value(),
                staleCase.state().spoken(),
                staleCase.said().words(),
                staleCase.packHash().substring(0, 12)));
        return table;
    }
}
