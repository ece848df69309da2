package org.proviso.today;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Footer;
import com.vaadin.flow.component.html.H1;
import com.vaadin.flow.component.html.Header;
import com.vaadin.flow.component.html.ListItem;
import com.vaadin.flow.component.html.Main;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.html.UnorderedList;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import com.vaadin.flow.server.auth.AnonymousAllowed;
import org.proviso.ui.OutcomeMark;
import org.proviso.ui.OutcomeMark.Shape;
import org.proviso.ui.PageSection;

/** The start page while the screens are being built: what Proviso is for, what it can do today, what is planned. */
@Route("")
@PageTitle("Proviso: settling provisional ballots")
@AnonymousAllowed
public final class StartView extends Composite<Div> {

    public StartView() {
        getContent().addClassName("page");
        Main main = new Main(opening(), cautions(), new ShellVerbs(), planned());
        getContent().add(banner(), main, closing());
    }

    private static Header banner() {
        Span name = new Span("Proviso");
        name.addClassName("name");
        return new Header(name, soft("version 0.1, first steps"));
    }

    private static Div opening() {
        Paragraph purpose = new Paragraph("Proviso is the workbench with which a county election office settles its"
                + " provisional ballots in the days after an election: who the voter is, whether the ballot counts in"
                + " full, in part or not at all, and why.");
        purpose.addClassName("lead");
        Div opening = new Div(
                new H1("Every provisional ballot, settled with a reason"),
                purpose,
                outcomes(),
                soft("Each outcome has its mark, here and on paper, always beside the word. Until one is reached, an"
                        + " envelope needs research, waits for the voter, or is sent on to the voter's home county."));
        opening.addClassName("opening");
        return opening;
    }

    private static Div outcomes() {
        Div marks = new Div(
                new OutcomeMark(Shape.COUNT, "Count"),
                new OutcomeMark(Shape.COUNT_IN_PART, "Count in part"),
                new OutcomeMark(Shape.REJECT, "Reject"));
        marks.addClassName("outcomes");
        return marks;
    }

    private static Component cautions() {
        return new PageSection(
                "cautions",
                "Before you rely on it",
                list(
                        "People decide. Proviso finds, computes, recommends and explains; it decides no ballot.",
                        "Local law governs. Where the law or your counsel says otherwise, they are right.",
                        "The rules that come with it are illustrative. Check every one with counsel before an election.",
                        "The sample elections are invented: every person, street, signature and county in them."));
    }

    private static Component planned() {
        return new PageSection(
                "planned",
                "Planned, not here yet",
                new Paragraph("The screens for the office's work come next: keying envelopes, reviewing a case, the"
                        + " board's session, opening and remaking, letters to voters, the voter's own look-up, and the"
                        + " canvass. Until then nothing can be entered on this server, and nobody can sign in."));
    }

    private static Footer closing() {
        return new Footer(new Paragraph("Recommendations are not legal advice. The canvass board, or the official whom"
                + " the state names, decides on each ballot."));
    }

    private static UnorderedList list(String... sentences) {
        UnorderedList list = new UnorderedList();
        for (String sentence : sentences) {
            list.add(new ListItem(sentence));
        }
        return list;
    }

    private static Span soft(String words) {
        Span span = new Span(words);
        span.addClassName("soft");
        return span;
    }
}
