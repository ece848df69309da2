package org.proviso.review.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Anchor;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import org.proviso.access.Permission;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.review.file.CaseFile;
import org.proviso.review.file.CaseFileService;
import org.proviso.review.queue.QueueFilterText;
import org.proviso.review.ui.desk.CasePage;
import org.proviso.review.ui.desk.CasePageContext;
import org.proviso.review.ui.desk.ReviewServices;
import org.proviso.ui.AddressedEnvelope;
import org.proviso.ui.Links;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** The case of one envelope, in three parts: what it says, what the records say, what the law asks. */
@Route(value = "review/case", layout = OfficeFrame.class)
@PermitAll
class CaseView extends Composite<Div> implements HasUrlParameter<String>, HasDynamicTitle, CasePageContext.AfterAct {

    /** In the address: the list that the case was opened from. */
    static final String LIST = "list";

    private final CaseFileService files;
    private final ReviewServices acts;
    private final ReviewShift shift;
    private final WorkingElection workplace;
    private String number = "";

    CaseView(CaseFileService files, ReviewServices acts, ReviewShift shift, WorkingElection workplace) {
        this.files = files;
        this.acts = acts;
        this.shift = shift;
        this.workplace = workplace;
        getContent().addClassName("whole");
    }

    @Override
    public void setParameter(BeforeEvent event, String envelopeNo) {
        number = envelopeNo;
        event.getLocation()
                .getQueryParameters()
                .getSingleParameter(LIST)
                .filter(list -> acts.access().isPermitted(Permission.PROPOSE))
                .ifPresent(list -> shift.cameFrom(
                        AddressedEnvelope.number(envelopeNo), QueueFilterText.read(workplace.electionId(), list)));
        show().focusTitle();
    }

    @Override
    public void again() {
        show().focusWork();
    }

    @Override
    public void taken() {
        EnvelopeKey key = new EnvelopeKey(workplace.electionId(), AddressedEnvelope.number(number));
        if (files.signatureComesFirst(key)) {
            shift.open(key);
        } else {
            again();
        }
    }

    @Override
    public void next() {
        shift.goOnFrom(AddressedEnvelope.number(number));
    }

    /** Nobody is handed another case; the list is shown instead. */
    @Override
    public void away() {
        shift.putAway(AddressedEnvelope.number(number));
    }

    @Override
    public String getPageTitle() {
        return "Envelope " + number + " \u00B7 Proviso";
    }

    private static String stays(CaseFile file) {
        return file.holding().yours() ? "Envelope " + file.now().key().envelopeNo() + " stays assigned to you." : "";
    }

    /** The way to the next case, and the list this one was opened from. */
    private Div onward(CaseFile file) {
        EnvelopeNumber envelopeNo = AddressedEnvelope.number(number);
        Div onward = new Div(shift.button(envelopeNo, stays(file)), print());
        shift.listOf(envelopeNo).ifPresent(list -> {
            Div from = new Div(
                    Links.link("Back to the list", QueueView.address(list)),
                    new ActButton("Leave the list").quiet().does(() -> {
                        shift.leaveList(envelopeNo);
                        UI.getCurrent().navigate(CaseView.class, number);
                    }));
            from.addClassName("from-list");
            onward.add(from);
        });
        return onward;
    }

    private Anchor print() {
        Anchor print = Links.link("Print case", "review/print/" + number);
        print.addClassName("print");
        return print;
    }

    /** A decider came from a session or a list and returns there. */
    private static ActButton back() {
        return new ActButton("Back", "B")
                .does(() -> UI.getCurrent().getPage().getHistory().back());
    }

    private CasePage show() {
        boolean reviews = acts.access().isPermitted(Permission.PROPOSE);
        CaseFile file = files.open(new EnvelopeKey(workplace.electionId(), AddressedEnvelope.number(number)))
                .orElseThrow(() -> AddressedEnvelope.missing(number));
        CasePageContext desk = new CasePageContext(file, acts, this, !reviews);
        CasePage page = new CasePage(desk, reviews ? onward(file) : new Div(back(), print()));
        getContent().removeAll();
        getContent().add(page);
        return page;
    }
}
