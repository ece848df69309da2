package org.proviso.review.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.Optional;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.ActResult;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.SignatureComparisonFact;
import org.proviso.review.CaseVersion;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.acts.AnswerService;
import org.proviso.review.facts.SignatureComparison;
import org.proviso.review.file.CaseFile;
import org.proviso.review.file.CaseFileService;
import org.proviso.review.file.ExemplarService;
import org.proviso.ui.AddressedEnvelope;
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
    private final ExemplarService exemplars;
    private final AnswerService answers;
    private final WorkingElection workplace;
    private String number = "";
    private SignatureComparisonPart.Typed typed = SignatureComparisonPart.Typed.NOTHING;

    SignatureView(CaseFileService files, ExemplarService exemplars, AnswerService answers, WorkingElection workplace) {
        this.files = files;
        this.exemplars = exemplars;
        this.answers = answers;
        this.workplace = workplace;
        getContent().addClassNames("sheet", "signature-page");
    }

    @Override
    public String getPageTitle() {
        return "Signature of envelope " + number + " \u00B7 Proviso";
    }

    @Override
    public void setParameter(BeforeEvent event, String envelopeNo) {
        number = envelopeNo;
        typed = SignatureComparisonPart.Typed.NOTHING;
        show().focusTitle();
    }

    private PageHead show() {
        EnvelopeKey key = new EnvelopeKey(workplace.electionId(), AddressedEnvelope.number(number));
        CaseFile file = files.open(key).orElseThrow(() -> AddressedEnvelope.missing(number));
        boolean blind = file.work().signatureHidden();
        PageHead head = new PageHead(
                blind ? "Compare signature" : "Signature of envelope " + number,
                (blind ? "You will see the voter's name after you compare. " : "")
                        + "Similar characteristics with any one signature on file are enough. "
                        + SignatureComparisonPart.EXPLAINED + " " + standing(file));
        head.beside(Links.link(blind ? "Skip for now" : "Back to the case", "review/case/" + number, "B"));
        getContent().removeAll();
        getContent().add(head, part(key, file, blind));
        return head;
    }

    private SignatureComparisonPart part(EnvelopeKey key, CaseFile file, boolean blind) {
        SignatureComparisonPart[] part = new SignatureComparisonPart[1];
        part[0] = new SignatureComparisonPart(
                new CaseVersion(key, file.now().version()),
                exemplars.toCompare(key),
                blind ? SignatureCaptions.withoutNames() : SignatureCaptions.of(file),
                file.holding().yours() ? Optional.of((pressed, look) -> say(pressed, look, part[0])) : Optional.empty(),
                () -> {
                    typed = part[0].typed();
                    show().focusTitle();
                });
        return part[0].with(typed);
    }

    private static String standing(CaseFile file) {
        if (!file.holding().yours()) {
            return "View only. The assigned reviewer records the result.";
        }
        SignatureComparisonFact seen = file.report().presumed().facts().one(Fact.SIGNATURE_COMPARISON);
        return seen == null || seen == SignatureComparisonFact.NOT_YET ? "Not compared yet." : "Compared before.";
    }

    private void say(String pressed, SignatureComparison look, SignatureComparisonPart part) {
        if (!new CaseVersionMark(AddressedEnvelope.number(number), look.version()).is(pressed)) {
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
            part.tell(e);
            return;
        }
        MessageLine.done("Envelope " + number + ": signature comparison recorded.");
        UI.getCurrent().navigate(CaseView.class, number);
    }
}
