package org.proviso.review.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.NotFoundException;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.Optional;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.SignatureComparisonFact;
import org.proviso.review.CaseActResult;
import org.proviso.review.CaseKey;
import org.proviso.review.CaseVersion;
import org.proviso.review.acts.AnswerService;
import org.proviso.review.facts.SignatureComparison;
import org.proviso.review.file.CaseFile;
import org.proviso.review.file.CaseFileService;
import org.proviso.ui.Links;
import org.proviso.ui.MessageLine;
import org.proviso.ui.PageHead;
import org.proviso.ui.field.CaseVersionMark;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;
import org.springframework.dao.OptimisticLockingFailureException;

/** The signature of one case at full size, beside all those on file. */
@Route(value = "review/signature", layout = OfficeFrame.class)
@PermitAll
class SignatureView extends Composite<Div> implements HasUrlParameter<String>, HasDynamicTitle {

    private final CaseFileService files;
    private final AnswerService answers;
    private final WorkingElection workplace;
    private String number = "";

    SignatureView(CaseFileService files, AnswerService answers, WorkingElection workplace) {
        this.files = files;
        this.answers = answers;
        this.workplace = workplace;
        getContent().addClassName("sheet");
    }

    @Override
    public String getPageTitle() {
        return "Signature \u00B7 Proviso";
    }

    @Override
    public void setParameter(BeforeEvent event, String envelopeNo) {
        number = envelopeNo;
        CaseKey key = new CaseKey(workplace.electionId(), number);
        CaseFile file = files.open(key)
                .orElseThrow(() -> new NotFoundException("There is no envelope " + number + " in this election."));
        boolean blind = file.work().signatureHidden();
        PageHead head = new PageHead(
                blind ? "A signature to look at" : "Signature of envelope " + number,
                (blind ? "Whose it is comes after the look. " : "")
                        + "It need not be the same in every stroke: like characteristics with any one on file are enough.");
        head.beside(Links.link(blind ? "Leave it for now" : "Back to the case", "review/case/" + number, "B"));
        getContent().removeAll();
        getContent()
                .add(
                        head,
                        new SignatureComparisonPart(
                                new CaseVersion(key, file.now().version()),
                                file.around().pictures(),
                                file.holding().yours() ? Optional.of(this::say) : Optional.empty()),
                        new Paragraph(standing(file)));
        head.focusTitle();
    }

    private static String standing(CaseFile file) {
        if (!file.holding().yours()) {
            return "You look only: a word on it is for whoever has the case.";
        }
        SignatureComparisonFact seen = file.report().presumed().facts().one(Fact.SIGNATURE_COMPARISON);
        return seen == null || seen == SignatureComparisonFact.NOT_YET
                ? "Nobody has compared it yet."
                : "It was looked at before.";
    }

    private void say(String pressed, SignatureComparison look) {
        if (!new CaseVersionMark(number, look.version()).is(pressed)) {
            MessageLine.refused("The case changed as you pressed. Nothing was done; look at it and press again.");
            return;
        }
        try {
            CaseActResult outcome = answers.recordSignatureComparison(look);
            if (outcome instanceof CaseActResult.Refused refused) {
                MessageLine.refused(refused.words());
                return;
            }
        } catch (OptimisticLockingFailureException e) {
            MessageLine.refused("Nothing was recorded. " + e.getMessage());
            return;
        }
        MessageLine.done("Envelope " + number + ": what you saw is recorded.");
        UI.getCurrent().navigate(CaseView.class, number);
    }
}
