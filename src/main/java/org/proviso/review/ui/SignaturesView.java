package org.proviso.review.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.router.PageTitle;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.Optional;
import org.proviso.intake.ImageService;
import org.proviso.review.AnswerService;
import org.proviso.review.CaseService;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.LinkService;
import org.proviso.review.Outcome;
import org.proviso.review.SeenCase;
import org.proviso.review.SignatureLook;
import org.proviso.review.file.CaseFile;
import org.proviso.review.queue.SignatureTurn;
import org.proviso.review.queue.WaitingService;
import org.proviso.ui.ActButton;
import org.proviso.ui.OfficeFrame;
import org.proviso.ui.PageHead;
import org.proviso.ui.Said;
import org.proviso.ui.SeenMark;
import org.proviso.ui.Workplace;
import org.springframework.dao.OptimisticLockingFailureException;

/**
 * Signatures to look at, one after the other, without who the voter is. First looks and second ones come in one row, and
 * nothing on the page tells them apart.
 */
@Route(value = "review/signatures", layout = OfficeFrame.class)
@PageTitle("Signatures \u00B7 Proviso")
@PermitAll
class SignaturesView extends Composite<Div> {

    private final WaitingService waiting;
    private final ImageService images;
    private final LinkService links;
    private final CaseService cases;
    private final AnswerService answers;
    private final String electionId;
    private String after = "";

    SignaturesView(
            WaitingService waiting,
            ImageService images,
            LinkService links,
            CaseService cases,
            AnswerService answers,
            Workplace workplace) {
        this.waiting = waiting;
        this.images = images;
        this.links = links;
        this.cases = cases;
        this.answers = answers;
        this.electionId = workplace.electionId();
        getContent().addClassName("sheet");
        show();
    }

    private void show() {
        PageHead head = new PageHead(
                "Signatures",
                "Voters' names are hidden. Similar characteristics with any one signature on file are enough.");
        Optional<SignatureTurn> turn = waiting.signature(electionId, after);
        getContent().removeAll();
        getContent().add(head);
        if (turn.isEmpty()) {
            getContent()
                    .add(
                            new ReviewLinks(),
                            new Paragraph(
                                    after.isEmpty()
                                            ? "No signatures are waiting for you. They appear here when envelopes with a scan of"
                                                    + " the signature are ready for review."
                                            : "No more signatures are waiting for you."));
            return;
        }
        SeenCase seen = turn.get().seen();
        int onFile = links.link(seen.key())
                .flatMap(link -> Optional.ofNullable(link.voterId()))
                .map(voter -> images.exemplars(electionId, voter).size())
                .orElse(0);
        head.beside(new ActButton("Skip this signature").does(() -> goOn(seen)));
        getContent()
                .add(new SignatureDesk(
                        seen,
                        new CaseFile.Pictures(true, onFile),
                        Optional.of((pressed, look) -> say(pressed, look, turn.get()))));
        head.focusTitle();
    }

    private void goOn(SeenCase seen) {
        after = seen.key().envelopeNo();
        show();
    }

    private void say(String pressed, SignatureLook look, SignatureTurn turn) {
        SeenCase seen = turn.seen();
        if (!new SeenMark(seen.key().envelopeNo(), seen.version()).is(pressed)) {
            Said.refused("Not saved. Another signature is on the screen now. Check it and try again.");
            return;
        }
        try {
            Outcome outcome = turn.toTake() ? takenAndBack(look) : answers.signature(look);
            if (outcome instanceof Outcome.Refused refused) {
                Said.refused(refused.words());
                return;
            }
            Said.done("Signature comparison recorded.");
        } catch (OptimisticLockingFailureException e) {
            Said.refused("Not saved. Someone else took this one. Here is the next signature.");
        }
        goOn(seen);
    }

    /** A first comparison needs the case: it is taken for the comparison and returned for its reviewer. */
    private Outcome takenAndBack(SignatureLook look) {
        Outcome taken = cases.take(look.key(), look.version());
        if (!(taken instanceof Outcome.Accepted accepted)) {
            return taken;
        }
        Outcome seen =
                answers.signature(new SignatureLook(look.key(), accepted.now().version(), look.seen(), look.note()));
        EnvelopeCase now = seen instanceof Outcome.Accepted recorded ? recorded.now() : accepted.now();
        cases.giveBack(now.key(), now.version());
        return seen;
    }
}
