package org.proviso.review.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.act.ActResult;
import org.proviso.review.CaseVersion;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.acts.AnswerService;
import org.proviso.review.acts.SignaturePileService;
import org.proviso.review.facts.SignatureComparison;
import org.proviso.review.file.ExemplarService;
import org.proviso.review.queue.SecondReviewQueueService;
import org.proviso.review.queue.SignatureToCompare;
import org.proviso.ui.MessageLine;
import org.proviso.ui.PageHead;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.CaseVersionMark;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;
import org.springframework.dao.OptimisticLockingFailureException;

/**
 * Signatures to look at, one after the other, without who the voter is. First looks and second ones come in one row, and
 * nothing on the page tells them apart.
 */
@Route(value = "review/signatures", layout = OfficeFrame.class)
@PageTitle("Signatures \u00B7 Proviso")
@PermitAll
class SignaturesView extends Composite<Div> {

    private final SecondReviewQueueService waiting;
    private final ExemplarService exemplars;
    private final SignaturePileService pile;
    private final AnswerService answers;
    private final ElectionId electionId;
    private String after = "";
    private @Nullable EnvelopeKey typedFor;
    private SignatureComparisonPart.Typed typed = SignatureComparisonPart.Typed.NOTHING;

    SignaturesView(
            SecondReviewQueueService waiting,
            ExemplarService exemplars,
            SignaturePileService pile,
            AnswerService answers,
            WorkingElection workplace) {
        this.waiting = waiting;
        this.exemplars = exemplars;
        this.pile = pile;
        this.answers = answers;
        this.electionId = workplace.electionId();
        getContent().addClassNames("sheet", "signature-page");
        show();
    }

    private void show() {
        PageHead head = new PageHead(
                "Signatures",
                "Voters' names are hidden. Similar characteristics with any one signature on file are enough. "
                        + SignatureComparisonPart.EXPLAINED);
        Optional<SignatureToCompare> turn = waiting.signature(electionId, after);
        getContent().removeAll();
        getContent().add(head);
        if (turn.isEmpty()) {
            getContent()
                    .add(
                            new ReviewNavigation(),
                            new Paragraph(
                                    after.isEmpty()
                                            ? "No signatures are waiting for you. They appear here when envelopes with a scan of"
                                                    + " the signature are ready for review."
                                            : "No more signatures are waiting for you."));
            return;
        }
        CaseVersion seen = turn.get().seen();
        head.beside(new ActButton("Skip this signature").does(() -> goOn(seen)));
        SignatureComparisonPart[] part = new SignatureComparisonPart[1];
        part[0] = new SignatureComparisonPart(
                seen,
                exemplars.toCompare(seen.key()),
                SignatureCaptions.withoutNames(),
                Optional.of((pressed, look) -> say(pressed, look, turn.get(), part[0])),
                () -> again(seen.key(), part[0].typed()));
        getContent().add(part[0]);
        if (seen.key().equals(typedFor)) {
            part[0].with(typed);
        }
        head.focusTitle();
    }

    /** Shows what is next now; what was typed about this signature is there again if it still is the next. */
    private void again(EnvelopeKey key, SignatureComparisonPart.Typed said) {
        typedFor = key;
        typed = said;
        show();
    }

    private void goOn(CaseVersion seen) {
        after = seen.key().envelopeNo().value();
        show();
    }

    private void say(String pressed, SignatureComparison look, SignatureToCompare turn, SignatureComparisonPart part) {
        CaseVersion seen = turn.seen();
        if (!new CaseVersionMark(seen.key().envelopeNo(), seen.version()).is(pressed)) {
            MessageLine.refused("Not saved. Another signature is on the screen now. Check it and try again.");
            return;
        }
        try {
            ActResult<EnvelopeCase> outcome =
                    turn.toTake() ? pile.takeCompareAndGiveBack(look) : answers.recordSignatureComparison(look);
            if (outcome instanceof ActResult.Refused<EnvelopeCase> refused) {
                MessageLine.refused(refused.words());
                return;
            }
            MessageLine.done("Signature comparison recorded.");
        } catch (OptimisticLockingFailureException e) {
            part.tell(e);
            return;
        }
        goOn(seen);
    }
}
