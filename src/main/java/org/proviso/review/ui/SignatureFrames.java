package org.proviso.review.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.Span;
import java.util.ArrayList;
import java.util.List;
import org.proviso.core.EnvelopeKey;
import org.proviso.review.file.SignaturePicture;
import org.proviso.review.file.SignaturesToCompare;
import org.proviso.review.ui.voters.SignaturePictures;
import org.proviso.ui.field.ActButton;

/**
 * The signature on the envelope above, those on file in rows below, all at one scale and zoomed together, and beside it the
 * envelope's laid over one of them.
 */
final class SignatureFrames {

    private static final int FULL = 100;
    private static final int MOST_ZOOM = 400;
    private static final int HALF = 50;

    private final EnvelopeKey key;
    private final SignaturesToCompare pictures;
    private final Div under = new Div();
    private final Span which = new Span();
    private final List<ActButton> choices = new ArrayList<>();

    SignatureFrames(EnvelopeKey key, SignaturesToCompare pictures) {
        this.key = key;
        this.pictures = pictures;
    }

    /** The envelope's own signature. */
    Component onEnvelope() {
        Component picture = pictures.onEnvelope().isPresent()
                ? framed(ofEnvelope(), "The signature on the envelope")
                : new Span("No scan of this envelope's signature. Look at the envelope itself.");
        Div caption = new Div(new Span("on the envelope"));
        caption.addClassName("caption");
        Div figure = new Div(picture, caption);
        figure.addClassName("sign");
        return figure;
    }

    /** The envelope's signature over the one chosen on file; nothing where one of them is missing. */
    List<Component> overlay() {
        boolean two = pictures.onEnvelope().isPresent()
                && pictures.voters().stream()
                        .anyMatch(voter -> !voter.pictures().isEmpty());
        if (!two) {
            return List.of();
        }
        Image over = ofEnvelope();
        over.addClassName("over");
        Div both = new Div(under, over);
        both.addClassName("both");
        Div frame = framed(both, "The signature on the envelope laid over one on file");
        Div figure = new Div(frame, which);
        which.addClassName("caption");
        figure.addClassNames("sign", "overlay");
        return List.of(figure);
    }

    /** Zooms all of them together. */
    static Slider zoom(Component part) {
        return new Slider(
                "Zoom all",
                FULL,
                MOST_ZOOM,
                FULL,
                percent -> part.getElement().getStyle().set("--zoom", String.valueOf(percent / (double) FULL)));
    }

    /** How strong the envelope's signature is over the one on file. */
    static Slider strength(Component part) {
        return new Slider(
                "Envelope's signature over the one on file",
                0,
                FULL,
                HALF,
                percent -> part.getElement().getStyle().set("--over", String.valueOf(percent / (double) FULL)));
    }

    /** The signatures on file of one voter in a row, each of which can be laid under. */
    Component row(SignaturesToCompare.OnFile voter, String whose, Component head) {
        Div row = new Div();
        row.addClassName("on-file");
        row.getElement().setAttribute("tabindex", "0");
        row.getElement().setAttribute("role", "group");
        row.getElement().setAttribute("aria-label", "Signatures on file" + whose);
        int count = voter.pictures().size();
        for (int place = 0; place < count; place++) {
            row.add(onFile(voter, place, (place + 1) + " of " + count + whose));
        }
        if (count == 0) {
            row.add(new Span("No picture of a signature on file. Look at the voter's card, or choose"
                    + " \u201CNo signature on file\u201D."));
        }
        return new Div(head, row);
    }

    private Component onFile(SignaturesToCompare.OnFile voter, int place, String words) {
        SignaturePicture size = voter.pictures().get(place);
        // the named voter's need no record id in their address, which a person comparing may not know yet
        String address = voter.named()
                ? SignaturePictures.onFile(key, place)
                : SignaturePictures.onFile(key, voter.voterId(), place);
        ActButton lay = new ActButton("Overlay").quiet();
        lay.getElement().setAttribute("aria-label", "Overlay: " + words);
        lay.does(() -> choose(lay, address, size, words));
        choices.add(lay);
        if (choices.size() == 1) {
            choose(lay, address, size, words);
        }
        Div caption = new Div(new Span(words), lay);
        caption.addClassNames("caption", "acts");
        Div figure = new Div(
                framed(picture(address, size, "A signature on file"), "A signature on file, " + words), caption);
        figure.addClassName("sign");
        return figure;
    }

    private void choose(ActButton chosen, String address, SignaturePicture size, String words) {
        choices.forEach(button -> button.getElement().setAttribute("aria-pressed", String.valueOf(button == chosen)));
        under.removeAll();
        under.add(picture(address, size, "The signature on file, " + words));
        which.setText("laid over the one on file: " + words);
    }

    private Image ofEnvelope() {
        return picture(
                SignaturePictures.envelope(key),
                pictures.onEnvelope().orElse(new SignaturePicture(0, 0)),
                "The signature on the envelope");
    }

    /** All at one scale: the widest fills its frame, and every other one is as much narrower as it has fewer dots. */
    private Image picture(String address, SignaturePicture size, String heard) {
        Image image = new Image(address, heard);
        double share = size.width() == 0 ? 1 : size.width() / (double) pictures.widest();
        image.getElement().getStyle().set("--share", String.valueOf(share));
        return image;
    }

    private static Div framed(Component content, String heard) {
        Div frame = new Div(content);
        frame.addClassName("zoom");
        frame.getElement().setAttribute("tabindex", "0");
        frame.getElement().setAttribute("role", "group");
        frame.getElement().setAttribute("aria-label", heard);
        return frame;
    }
}
