package org.proviso.review.ui.desk;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.html.Span;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.Voter;
import org.proviso.review.file.CaseFile;
import org.proviso.review.ui.voters.SignaturePictures;
import org.proviso.ui.Links;
import org.proviso.ui.PageSection;

/** The signature on the envelope next to one on file, small. The full size is on its own page. */
final class SignatureStrip extends PageSection {

    SignatureStrip(CasePageContext desk, boolean hidden) {
        super("signature", "Signature");
        EnvelopeKey key = desk.key();
        if (hidden) {
            add(new Paragraph(
                    "The first comparison is made without the voter's name, so the signature is not shown here."));
            compare(desk, "Compare without the name");
            return;
        }
        CaseFile.Pictures pictures = desk.file().around().pictures();
        Div pair = new Div();
        pair.addClassName("pair");
        if (pictures.ofEnvelope()) {
            pair.add(picture(SignaturePictures.envelope(key), "On this envelope", "The signature on this envelope"));
        } else {
            add(new Paragraph("No scan of this envelope's signature. Look at the envelope itself."));
        }
        if (pictures.onFile() > 0) {
            pair.add(picture(SignaturePictures.onFile(key, 0), registered(desk), "The signature on file"));
        } else if (desk.file().report().voter().isPresent()) {
            add(new Paragraph("No picture of a signature on file."));
        }
        add(pair);
        compare(desk, "Compare at full size");
    }

    private void compare(CasePageContext desk, String words) {
        if (!desk.isPaper()) {
            add(new Paragraph(Links.link(words, "review/signature/" + desk.number(), "S")));
        }
    }

    private static String registered(CasePageContext desk) {
        return desk.file()
                .report()
                .voter()
                .map(Voter::registration)
                .map(Voter.Registration::registeredOn)
                .map(on -> "On file, " + on.getYear())
                .orElse("On file");
    }

    private static Component picture(String address, String caption, String heard) {
        Div figure = new Div(new Image(address, heard), new Span(caption));
        figure.addClassName("crop");
        return figure;
    }
}
