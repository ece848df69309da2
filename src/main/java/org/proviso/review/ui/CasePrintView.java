package org.proviso.review.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import org.proviso.core.EnvelopeKey;
import org.proviso.review.file.CaseFile;
import org.proviso.review.file.CaseFileService;
import org.proviso.review.ui.desk.CasePage;
import org.proviso.review.ui.desk.CasePageContext;
import org.proviso.review.ui.desk.HistoryPart;
import org.proviso.review.ui.desk.ReviewServices;
import org.proviso.ui.AddressedEnvelope;
import org.proviso.ui.Links;
import org.proviso.ui.PageSection;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.frame.ElectionLine;
import org.proviso.ui.frame.NoElectionException;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** A case to print: county, election and time, the case as it stands, and its history. Printing logs nothing. */
@Route(value = "review/print", layout = OfficeFrame.class)
@PermitAll
class CasePrintView extends Composite<Div>
        implements HasUrlParameter<String>, HasDynamicTitle, CasePageContext.AfterAct {

    private final CaseFileService files;
    private final ReviewServices acts;
    private final WorkingElection workplace;
    private String number = "";

    CasePrintView(CaseFileService files, ReviewServices acts, WorkingElection workplace) {
        this.files = files;
        this.acts = acts;
        this.workplace = workplace;
        getContent().addClassNames("whole", "to-print");
    }

    @Override
    public void setParameter(BeforeEvent event, String envelopeNo) {
        number = envelopeNo;
        again();
    }

    @Override
    public String getPageTitle() {
        return "Envelope " + number + ", to print \u00B7 Proviso";
    }

    @Override
    public void again() {
        ElectionLine election = workplace.election().orElseThrow(NoElectionException::new);
        EnvelopeKey key = new EnvelopeKey(election.id(), AddressedEnvelope.number(number));
        CaseFile file = files.open(key).orElseThrow(() -> AddressedEnvelope.missing(number));
        Div head = new Div(
                new Paragraph(election.words()),
                new Paragraph("Envelope " + number + ", printed "
                        + UsDates.day(workplace.now().toLocalDate()) + ", "
                        + UsDates.hour(workplace.now().toLocalTime()) + ", by "
                        + acts.access().signedIn().fullName() + "."),
                new Div(
                        new ActButton("Print")
                                .first()
                                .does(() -> UI.getCurrent().getPage().executeJs("window.print()")),
                        Links.link("Back to the case", "review/case/" + number, "B")));
        head.addClassName("printed");
        PageSection history = new PageSection(
                "past", "History", HistoryPart.list(acts.history().of(key)));
        getContent().removeAll();
        getContent().add(head, new CasePage(CasePageContext.toPrint(file, acts, this)), history);
    }

    /** Nothing is done from here. */
    @Override
    public void next() {
        again();
    }
}
