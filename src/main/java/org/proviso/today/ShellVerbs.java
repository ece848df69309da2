package org.proviso.today;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Code;
import com.vaadin.flow.component.html.DescriptionList;
import com.vaadin.flow.component.html.DescriptionList.Description;
import com.vaadin.flow.component.html.DescriptionList.Term;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import org.proviso.ui.PageSection;

/** What works today: the verbs of the command line, each with a line that can be run from the project's folder. */
final class ShellVerbs extends Composite<PageSection> {

    private final DescriptionList verbs = new DescriptionList();

    ShellVerbs() {
        verbs.addClassName("verbs");
        verb(
                "Adjudicate an election folder, with an explanation for every envelope",
                "adjudicate sample-cases/tamarack-general --out target/run");
        verb("Check that the ledger of such a run holds", "verify-ledger target/run/ledger.jsonl");
        verb(
                "Only find each envelope's voter on the roll",
                "match --roll sample-cases/tamarack-general/roll.csv"
                        + " --envelopes sample-cases/tamarack-general/envelopes.csv --out target/links.csv");
        verb("Assess facts written by hand; first see which there are", "assess --describe");
        verb("List an election's deadlines", "deadlines --pack example --election-date 2026-11-03");
        verb("Prove the rule packs that come with it", "check-rules --all");
        verb("Compare the office's tables with its ledger, while the server is stopped", "replay");
        verb(
                "Write the office's own ledger as a file that anybody can check",
                "export-ledger office --out target/office-ledger.jsonl");
        verb("Make the two invented elections again", "make-sample --out target/samples");
    }

    @Override
    protected PageSection initContent() {
        return new PageSection(
                "today",
                "What works today, from the shell",
                new Paragraph("Build the program once with mvn package; then run, from the project's folder:"),
                verbs);
    }

    private void verb(String purpose, String arguments) {
        Span program = new Span("java -jar target/proviso.jar ");
        program.addClassName("program");
        Code line = new Code();
        line.add(program, new Span(arguments));
        verbs.add(new Term(purpose), new Description(line));
    }
}
