package org.proviso.intake.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.UI;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.router.BeforeEvent;
import com.vaadin.flow.router.HasDynamicTitle;
import com.vaadin.flow.router.HasUrlParameter;
import com.vaadin.flow.router.Route;
import jakarta.annotation.security.PermitAll;
import java.util.Optional;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.act.ActResult;
import org.proviso.intake.ImageService;
import org.proviso.intake.StoredImage;
import org.proviso.intake.desk.EnvelopeListService;
import org.proviso.intake.desk.NextEnvelopeService;
import org.proviso.intake.keying.KeyingService;
import org.proviso.ui.AddressedEnvelope;
import org.proviso.ui.LabeledValues;
import org.proviso.ui.Links;
import org.proviso.ui.MessageLine;
import org.proviso.ui.PageHead;
import org.proviso.ui.UsDates;
import org.proviso.ui.frame.OfficeFrame;
import org.proviso.ui.frame.WorkingElection;

/** Keying one envelope from its paper, a first time or, by somebody else, a second; then comes the next. */
@Route(value = "intake/key", layout = OfficeFrame.class)
@PermitAll
public final class KeyingView extends Composite<Div> implements HasUrlParameter<String>, HasDynamicTitle {

    private final transient KeyingService keying;
    private final transient EnvelopeListService lists;
    private final transient NextEnvelopeService next;
    private final transient ImageService images;
    private final transient WorkingElection workplace;
    private String title = "an envelope";

    KeyingView(
            KeyingService keying,
            EnvelopeListService lists,
            NextEnvelopeService next,
            ImageService images,
            WorkingElection workplace) {
        this.keying = keying;
        this.lists = lists;
        this.next = next;
        this.images = images;
        this.workplace = workplace;
        getContent().addClassNames("sheet", "intake");
    }

    @Override
    public void setParameter(BeforeEvent event, String envelopeNo) {
        title = envelopeNo;
        ElectionId election = workplace.electionId();
        boolean first = lists.line(election, AddressedEnvelope.number(envelopeNo))
                .orElseThrow(() -> AddressedEnvelope.missing(envelopeNo))
                .waits();
        Envelope envelope =
                keying.envelope(election, AddressedEnvelope.number(envelopeNo)).orElseThrow();
        KeyingDraftForm desk = new KeyingDraftForm(
                keying,
                workplace,
                AddressedEnvelope.number(envelopeNo),
                () -> goOn(AddressedEnvelope.number(envelopeNo), first));
        Div side = new Div();
        side.addClassName("side");
        beside(side, election, envelope);
        Div bench = new Div(desk, side);
        bench.addClassName("bench");
        getContent().removeAll();
        getContent()
                .add(
                        new PageHead("Key " + envelopeNo, lead(first))
                                .beside(
                                        desk.saved(),
                                        Links.link("Correct envelope", "intake/correct/" + envelopeNo),
                                        Links.link("Back to Intake", "intake"),
                                        desk.finishing()),
                        bench);
        desk.open();
    }

    @Override
    public String getPageTitle() {
        return "Key " + title + " · Proviso";
    }

    private void beside(Div side, ElectionId election, Envelope envelope) {
        EnvelopeNumber number = envelope.envelopeNo();
        side.removeAll();
        side.add(facts(envelope), new SignaturePicture(images.whileKeying(election, number), (name, content) -> {
            if (images.keepScan(election, number, name, content) instanceof ActResult.Refused<StoredImage> refused) {
                MessageLine.refused("Scan not saved. " + refused.words());
                return;
            }
            MessageLine.done("Scan saved for envelope " + number + ".");
            beside(side, election, envelope);
        }));
    }

    private static String lead(boolean first) {
        String keys = "Enter: next field. Ctrl+Enter: finish. Type - for left blank, ? for illegible, ! for refused.";
        return first ? keys : "Second keying: key every field from the envelope yourself. " + keys;
    }

    private static LabeledValues facts(Envelope envelope) {
        Envelope.Cast cast = envelope.cast();
        return new LabeledValues()
                .number("Receipt", ReceiptNumber.text(envelope.receiptNo()))
                .add("Voting location", cast.votingLocation().isEmpty() ? "none" : cast.votingLocation())
                .add("Cast", UsDates.moment(cast.at()))
                .number("Ballot style", cast.ballotStyle().isEmpty() ? "not given" : cast.ballotStyle());
    }

    private void goOn(EnvelopeNumber envelopeNo, boolean first) {
        ElectionId election = workplace.electionId();
        Optional<String> following = first ? next.first(election) : next.second(election);
        following.ifPresentOrElse(
                number -> {
                    UI.getCurrent().navigate(KeyingView.class, number);
                    MessageLine.done(envelopeNo + " keyed. Next: " + number + ".");
                },
                () -> {
                    UI.getCurrent().navigate("intake");
                    MessageLine.done(envelopeNo + " keyed. No more envelopes to key.");
                });
    }
}
