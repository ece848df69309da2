package org.proviso.canvass.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.List;
import java.util.function.Supplier;
import org.proviso.access.AccessService;
import org.proviso.access.Permission;
import org.proviso.canvass.CanvassService;
import org.proviso.canvass.ClosingReport;
import org.proviso.canvass.steps.ClosingLine;
import org.proviso.canvass.steps.ClosingStep;
import org.proviso.core.ElectionId;
import org.proviso.ui.Caution;
import org.proviso.ui.DownloadLinks;
import org.proviso.ui.Links;
import org.proviso.ui.PageHead;
import org.proviso.ui.PlainTable;
import org.proviso.ui.UsDates;
import org.proviso.ui.frame.ElectionLine;
import org.proviso.ui.frame.NoElectionException;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** What is missing until the election can be closed: how much of what, by whom, with the page where it is done. */
@Route(value = "canvass/closing", layout = OfficeFrame.class)
@PageTitle("Before closing · Proviso")
@PermitAll
public final class ClosingView extends Composite<Div> {

    private final transient CanvassService canvass;
    private final transient AccessService access;

    ClosingView(CanvassService canvass, AccessService access, WorkingElection workplace) {
        this.canvass = canvass;
        this.access = access;
        ElectionLine election = workplace.election().orElseThrow(NoElectionException::new);
        access.demand(Permission.CLOSE_ELECTION);
        getContent().addClassNames("sheet", "closing");
        if (election.closed()) {
            getContent().add(new PageHead("Before closing", "The election is closed."));
            return;
        }
        ClosingReport report = canvass.missing(election.id());
        PageHead head = new PageHead("Before closing", lead(report));
        getContent().add(head.beside(Links.link("Open Canvass", "canvass")));
        part(
                "Missing until closing",
                election.id(),
                report.missing(),
                () -> missing(election.id()).missing());
        part(
                "Also open. Closing does not wait for these",
                election.id(),
                report.besides(),
                () -> missing(election.id()).besides());
        getContent().add(new Caution());
    }

    private static String lead(ClosingReport report) {
        if (report.isEmpty()) {
            return "Nothing is missing. The election can be closed.";
        }
        return "The election cannot be closed yet. "
                + UsDates.count(report.missing().size(), "step") + " left, in the order of the work.";
    }

    private ClosingReport missing(ElectionId election) {
        access.demand(Permission.CLOSE_ELECTION);
        return canvass.missing(election);
    }

    private void part(String heading, ElectionId election, List<ClosingLine> lines, Supplier<List<ClosingLine>> again) {
        if (!lines.isEmpty()) {
            getContent()
                    .add(
                            new H2(heading),
                            table(heading, lines),
                            DownloadLinks.of(heading, election, () -> table(heading, again.get())));
        }
    }

    private static PlainTable table(String heading, List<ClosingLine> lines) {
        PlainTable table = new PlainTable(heading, "How many", "What", "By whom", "Where");
        lines.forEach(line -> table.row(row(line)));
        return table.figures("How many");
    }

    private static List<Component> row(ClosingLine line) {
        ClosingStep step = line.step();
        Span number = new Span(String.format(java.util.Locale.US, "%,d", line.number()));
        number.addClassName("num");
        Div what = new Div(new Span(step.words(line.number())));
        line.which().forEach(words -> what.add(detail(words)));
        Anchor link = Links.link(step.link(), step.path());
        link.setAriaLabel(step.link() + ": " + line.words());
        return List.of(number, what, new Span(step.who()), link);
    }

    private static Paragraph detail(String words) {
        Paragraph detail = new Paragraph(words);
        detail.addClassNames("soft", "small");
        return detail;
    }
}
