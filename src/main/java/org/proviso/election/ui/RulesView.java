package org.proviso.election.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.core.ElectionId;
import org.proviso.core.deciding.VotingRules;
import org.proviso.core.rules.Basis;
import org.proviso.core.rules.DatedValue;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.PackCourtOrder;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.RulePack;
import org.proviso.core.rules.RuleType;
import org.proviso.election.RuleChange;
import org.proviso.election.rules.RuleChangeService;
import org.proviso.election.rules.RulesInForceService;
import org.proviso.ui.Caution;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.PageHead;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.frame.ElectionLine;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** The rules in force for the election, as a page to read and to print. */
@Route(value = "set-up/rules", layout = OfficeFrame.class)
@PageTitle("Rules in force · Proviso")
@PermitAll
public final class RulesView extends Composite<Div> {

    private final transient DeadlineBook book;
    private final transient RulesInForceService rules;
    private final transient AccessService access;
    private final ElectionId election;

    RulesView(RulesInForceService rules, RuleChangeService changes, AccessService access, WorkingElection workplace) {
        access.demand(Permission.READ_FIGURES);
        this.rules = rules;
        this.access = access;
        election = workplace.electionId();
        book = rules.book(election);
        RulePack pack = book.pack().pack();
        ActButton print =
                new ActButton("Print").does(() -> UI.getCurrent().getPage().executeJs("window.print()"));
        getContent().addClassNames("sheet", "rules");
        getContent()
                .add(new PageHead(
                                "Rules in force",
                                pack.name() + ", for " + UsDates.day(book.pack().electionDate()) + ".")
                        .beside(Links.link("Back to Setup", "set-up"), print));
        if (!pack.caution().isEmpty()) {
            Paragraph caution = new Paragraph(pack.caution());
            caution.addClassName("warn");
            getContent().add(caution);
        }
        putInForce(changes, workplace);
        byHeading(book)
                .forEach((heading, given) -> getContent()
                        .add(
                                new H2(heading),
                                table(book, heading, given),
                                DownloadLinks.of(heading, election, () -> tableNow(heading))));
        orders();
        Paragraph hash = new Paragraph("Rule pack fingerprint: " + book.pack().hash()
                + ". Every assessment records the fingerprint of the rules it was made under.");
        hash.addClassNames("soft", "small", "hash");
        getContent()
                .add(
                        new Paragraph(
                                "A value from memory, or an unknown value, needs a county ruling. The office's own rule pack"
                                        + " is proved when it is loaded. The supervisor does both in Setup."),
                        hash,
                        new Caution());
    }

    /** Who put the office's own rule pack in force, and whether counsel overrode the proof. */
    private void putInForce(RuleChangeService changes, WorkingElection workplace) {
        List<RuleChange> all = changes.changes(workplace.electionId());
        if (all.isEmpty()) {
            return;
        }
        RuleChange last = all.get(all.size() - 1);
        ElectionLine election = workplace.election().orElseThrow();
        Paragraph line = new Paragraph("Put in force by " + last.putBy() + " on "
                + UsDates.moment(LocalDateTime.ofInstant(last.putAt(), election.zone()))
                + (last.isOverride()
                        ? ", by counsel's override (" + last.counsel() + ": " + last.ground()
                                + "), although the proof failed: " + last.counterexample()
                        : "; the proof passed."));
        if (last.isOverride()) {
            line.addClassName("warn");
        }
        getContent().add(line);
    }

    /** The pack's court orders, including those that change nothing for this election. */
    private void orders() {
        List<PackCourtOrder> orders = book.pack().pack().orders();
        if (orders.isEmpty()) {
            return;
        }
        getContent()
                .add(
                        new H2("Court orders in the rule pack"),
                        orders(orders),
                        DownloadLinks.of(
                                "Court orders in the rule pack",
                                election,
                                () -> orders(now().pack().pack().orders())));
    }

    private DeadlineBook now() {
        access.demand(Permission.READ_FIGURES);
        return rules.book(election);
    }

    private PlainTable tableNow(String heading) {
        DeadlineBook now = now();
        return table(now, heading, byHeading(now).getOrDefault(heading, Map.of()));
    }

    private static PlainTable orders(List<PackCourtOrder> orders) {
        PlainTable table = new PlainTable(
                "Court orders in the rule pack", "Court", "Rule changed", "New value", "Elections", "Status");
        orders.forEach(order -> table.row(
                order.court() + ", " + UsDates.digits(order.on()),
                order.rule().meaning(),
                order.value().value().inWords(),
                UsDates.digits(order.value().from()) + " to " + UsDates.digits(order.to()),
                order.standing().code().replace('_', ' ')));
        return table;
    }

    private static Map<String, Map<Rule, ResolvedRule>> byHeading(DeadlineBook book) {
        Map<String, Map<Rule, ResolvedRule>> headings = new LinkedHashMap<>();
        for (Rule rule : Rule.all()) {
            headings.computeIfAbsent(RuleHeadings.of(rule), any -> new LinkedHashMap<>())
                    .put(rule, book.pack().of(rule));
        }
        return headings;
    }

    private static PlainTable table(DeadlineBook book, String heading, Map<Rule, ResolvedRule> rules) {
        PlainTable table = new PlainTable(heading, "Rule", "Value", "Applies to", "Source", "Basis");
        rules.forEach((rule, given) -> {
            Optional<String> practice = given.isAbsent() ? VotingRules.practice(rule) : Optional.empty();
            if (practice.isPresent()) {
                table.row(List.of(
                        named(rule),
                        new Span(practice.get()),
                        new Span(""),
                        new Span("common practice"),
                        new Span("by default; a county ruling can change it")));
            } else if (!isSilent(rule, given)) {
                table.row(row(book, rule, given));
            }
        });
        return table;
    }

    /** Whether nothing is said and nothing hangs on it: a notice or a consequence that the pack does not know. */
    private static boolean isSilent(Rule rule, ResolvedRule given) {
        return !given.isKnown()
                && given.reference().year() == 0
                && (rule.use() != Rule.Use.NEEDED
                        || rule.key().startsWith("notice")
                        || rule.key().startsWith("consequence."));
    }

    private static List<Component> row(DeadlineBook book, Rule rule, ResolvedRule given) {
        String since = dated(book, rule)
                .map(datedValue -> "elections from " + UsDates.digits(datedValue.from()))
                .orElse("");
        String checked = dated(book, rule)
                .map(datedValue -> ", checked " + UsDates.digits(datedValue.checked()))
                .orElse("");
        Span known = new Span(known(given) + (given.isKnown() ? checked : ""));
        known.setClassName("waits", !given.isFirm());
        return List.of(named(rule), value(book, rule, given), new Span(since), new Span(written(given)), known);
    }

    /** What the rule means, with the key by which packs and rulings know it. */
    private static Component named(Rule rule) {
        Span key = new Span(rule.key());
        key.addClassNames("soft", "small");
        return new Div(new Div(new Span(rule.meaning())), new Div(key));
    }

    private static Optional<DatedValue> dated(DeadlineBook book, Rule rule) {
        return book.pack().pack().inForce(rule, book.pack().electionDate());
    }

    private static Component value(DeadlineBook book, Rule rule, ResolvedRule given) {
        Div value = new Div(new Span(given.isKnown() ? given.value().inWords() : "not known yet"));
        if (rule.type() == RuleType.DEADLINE) {
            book.of(rule).ifPresent(deadline -> {
                Div moment =
                        new Div(new Span(UsDates.weekday(deadline.lastMoment().toLocalDate()) + ", "
                                + UsDates.hour(deadline.lastMoment().toLocalTime())));
                moment.addClassName("moment");
                value.add(moment);
            });
        }
        return value;
    }

    private static String written(ResolvedRule given) {
        return given.isKnown() ? given.reference().words() : "";
    }

    private static String known(ResolvedRule given) {
        String signed = given.signedBy() == null ? "" : " signed by " + given.signedBy();
        return switch (given.basis()) {
            case READ -> "read";
            case MEMORY -> "from memory: no ballot may be rejected or cut on it until the office signs a county ruling";
            case UNKNOWN -> "unknown: the question stays open until the office signs a county ruling";
            case RULED -> "county ruling" + signed;
            case INVENTED -> Basis.INVENTED.code() + ", for the sample";
        };
    }
}
