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
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.SignatureComparisonFact;
import org.proviso.review.CaseVersion;
import org.proviso.review.EnvelopeCase;
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

/** The signature of one case at full size, next to all those on file. */
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
        EnvelopeKey key = new EnvelopeKey(workplace.electionId(), new EnvelopeNumber(number));
        CaseFile file = files.open(key)
                .orElseThrow(() -> new NotFoundException("There is no envelope " + number + " in this election."));
        boolean blind = file.work().signatureHidden();
        PageHead head = new PageHead(
                blind ? "Compare signature" : "Signature of envelope " + number,
                (blind ? "You will see the voter's name after you compare. " : "")
                        + "The signatures need not be identical. Similar characteristics with any one on file are enough.");
        head.beside(Links.link(blind ? "Skip for now" : "Back to the case", "review/case/" + number, "B"));
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
            return "View only. The assigned reviewer records the result.";
        }
        SignatureComparisonFact seen = file.report().presumed().facts().one(Fact.SIGNATURE_COMPARISON);
        return seen == null || seen == SignatureComparisonFact.NOT_YET ? "Not compared yet." : "Compared before.";
    }

    private void say(String pressed, SignatureComparison look) {
        if (!new CaseVersionMark(new EnvelopeNumber(number), look.version()).is(pressed)) {
            MessageLine.refused("Not saved. The case changed just now. Check it and try again.");
            return;
        }
        try {
            ActResult<EnvelopeCase> outcome = answers.recordSignatureComparison(look);
            if (outcome instanceof ActResult.Refused<EnvelopeCase> refused) {
                MessageLine.refused(refused.words());
                return;
            }
        } catch (OptimisticLockingFailureException e) {
            MessageLine.refused("Not saved. " + e.getMessage());
            return;
        }
        MessageLine.done("Envelope " + number + ": signature comparison recorded.");
        UI.getCurrent().navigate(CaseView.class, number);
    }
}
