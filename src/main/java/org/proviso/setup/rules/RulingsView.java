package org.proviso.setup.rules;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.time.Instant;
import java.time.LocalDateTime;
import java.util.List;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.CountyRuling;
import org.proviso.core.Key;
import org.proviso.core.act.ActResult;
import org.proviso.election.rules.RecordedRuling;
import org.proviso.election.rules.RulingService;
import org.proviso.election.rules.RulingService.NamedRuling;
import org.proviso.review.assess.RulingTask;
import org.proviso.review.assess.RulingWorkService;
import org.proviso.ui.Caution;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.MessageLine;
import org.proviso.ui.PageHead;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.frame.ElectionLine;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** County rulings: what the office must still ask counsel, with the envelopes that wait, and what it has signed. */
@Route(value = "set-up/rulings", layout = OfficeFrame.class)
@PageTitle("County rulings · Proviso")
@PermitAll
public final class RulingsView extends Composite<Div> {

    private final transient RulingService rulings;
    private final transient RulingWorkService work;
    private final transient WorkingElection workplace;
    private final Div list = new Div();
    private final RulingForm form;

    RulingsView(RulingService rulings, RulingWorkService work, AccessService access, WorkingElection workplace) {
        access.demand(Permission.SIGN_RULINGS);
        this.rulings = rulings;
        this.work = work;
        this.workplace = workplace;
        this.form = new RulingForm(rulings, workplace.electionId(), this::show);
        Div side = new Div(form);
        side.addClassName("side");
        Div bench = new Div(list, side);
        bench.addClassName("bench");
        getContent().addClassNames("sheet", "intake", "transmittals");
        getContent()
                .add(
                        new PageHead(
                                        "County rulings",
                                        "Values that are from memory or unknown. No ballot is rejected or cut on"
                                                + " such a value until the office signs a ruling for this election.")
                                .beside(
                                        Links.link("Rules in force", "set-up/rules"),
                                        Links.link("Back to Setup", "set-up")),
                        bench,
                        new Caution());
        show();
    }

    private void show() {
        list.removeAll();
        List<RulingTask> tasks = work.tasks(workplace.electionId());
        long waits = tasks.stream().filter(task -> task.waiting() > 0).count();
        list.add(new H2("Questions for counsel"));
        list.add(new Paragraph(
                tasks.isEmpty()
                        ? "Every value a case may depend on has been read or signed. No questions for counsel."
                        : UsDates.count(tasks.size(), "value") + " open; envelopes wait for " + waits + " of them."));
        if (!tasks.isEmpty()) {
            list.add(
                    table(tasks),
                    DownloadLinks.of(
                            "Values to rule on",
                            workplace.electionId(),
                            () -> table(work.tasks(workplace.electionId()))));
        }
        signed();
    }

    private PlainTable table(List<RulingTask> tasks) {
        PlainTable table = new PlainTable("Values to rule on", "Ask counsel", "Rule", "Envelopes waiting", "");
        tasks.forEach(task -> table.row(List.<Component>of(
                new Span(task.question()),
                new Span(RuleValueFields.words(task.given().rule())),
                new Span(waiting(task)),
                new ActButton("Enter ruling").quiet().does(() -> form.rule(task.given())))));
        return table;
    }

    private static String waiting(RulingTask task) {
        if (task.waiting() == 0) {
            return "none";
        }
        String more = task.waiting() > task.first().size() ? " and more" : "";
        return task.waiting() + ": " + Key.join(", ", task.first()) + more;
    }

    private void signed() {
        List<NamedRuling> acts = rulings.acts(workplace.electionId());
        list.add(new H2("Rulings signed"));
        if (acts.isEmpty()) {
            list.add(
                    new Paragraph(
                            "No rulings recorded here yet. Rulings loaded with the election's files are on the Rules in force page."));
            return;
        }
        ElectionLine election = workplace.election().orElseThrow();
        list.add(
                signed(acts, election),
                DownloadLinks.of("Rulings signed", election.id(), () -> signed(rulings.acts(election.id()), election)));
    }

    private PlainTable signed(List<NamedRuling> acts, ElectionLine election) {
        PlainTable table = new PlainTable(
                "Rulings signed", "No.", "Rule", "Ruling", "Signed by", "Based on", "Recorded", "In force");
        acts.forEach(act -> table.row(row(act, election)));
        return table;
    }

    private List<Component> row(NamedRuling act, ElectionLine election) {
        RecordedRuling recorded = act.recorded();
        CountyRuling ruling = recorded.ruling();
        return List.of(
                new Span(String.valueOf(recorded.actNo())),
                new Span(RuleValueFields.words(ruling.rule())),
                new Span(value(ruling)),
                new Span(ruling.signedBy() + ", " + UsDates.digits(ruling.on())),
                new Span(ruling.ground()),
                new Span(act.recordedBy() + ", "
                        + UsDates.moment(LocalDateTime.ofInstant(recorded.recordedAt(), election.zone()))),
                standing(act, election));
    }

    /** In force since when and by whom, taken back, or the two ways on. */
    private Component standing(NamedRuling act, ElectionLine election) {
        RecordedRuling recorded = act.recorded();
        Instant inForceAt = recorded.inForceAt();
        if (inForceAt != null) {
            String by = act.inForceBy() == null ? "" : act.inForceBy() + ", ";
            return new Span(by + UsDates.moment(LocalDateTime.ofInstant(inForceAt, election.zone())));
        }
        if (!recorded.isWaiting()) {
            return new Span("Taken back");
        }
        Div acts = new Div();
        if (act.byYou()) {
            acts.add(new Span("Another supervisor has to put it in force. "));
        } else {
            acts.add(new ActButton("Put ruling in force").quiet().does(() -> putInForce(recorded)));
        }
        acts.add(new ActButton("Take back ruling").quiet().does(() -> takeBack(recorded)));
        return acts;
    }

    private void putInForce(RecordedRuling recorded) {
        done(
                rulings.putInForce(workplace.electionId(), recorded.actNo()),
                "Ruling " + recorded.actNo() + " is in force. Open cases were reassessed.");
    }

    private void takeBack(RecordedRuling recorded) {
        done(
                rulings.takeBack(workplace.electionId(), recorded.actNo()),
                "Ruling " + recorded.actNo() + " was taken back. Nothing changed.");
    }

    private void done(ActResult<Integer> result, String words) {
        show();
        if (result instanceof ActResult.Refused<Integer> refused) {
            MessageLine.refused("Not done. " + refused.words());
        } else {
            MessageLine.done(words);
        }
    }

    private static String value(CountyRuling ruling) {
        return ruling.value().isEmpty()
                ? "confirmed as in the pack"
                : ruling.value().replace('_', ' ');
    }
}
