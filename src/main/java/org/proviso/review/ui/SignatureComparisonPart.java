package org.proviso.review.ui;

import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Image;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.proviso.review.CaseVersion;
import org.proviso.review.facts.SignatureComparison;
import org.proviso.review.file.CaseFile;
import org.proviso.ui.PageSection;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.CaseVersionMark;

/** One signature next to all those on file, at full size, with the reviewer's three answers. */
final class SignatureComparisonPart extends Div {

    /** What to compare. Several plain differences without another explanation make a signature differ. */
    private static final List<String> FEATURES = List.of(
            "slant",
            "printed or cursive",
            "size and proportion",
            "spacing",
            "slope of the line",
            "shape of letters",
            "loops, crossings and dots",
            "beginning and ending strokes",
            "spelling of the name");

    private final CheckboxGroup<String> features = new CheckboxGroup<>("What differs");
    private final TextArea note = new TextArea("Note");

    /** {@code says} takes the mark on the screen and the comparison; empty for a person who may only view. */
    SignatureComparisonPart(
            CaseVersion seen, CaseFile.Pictures pictures, Optional<BiConsumer<String, SignatureComparison>> says) {
        addClassName("signatures");
        CaseVersionMark mark = new CaseVersionMark(seen.key().envelopeNo(), seen.version());
        mark.on(this);
        String images = "/images/" + seen.key().electionId() + "/" + seen.key().envelopeNo();
        Div pair = new Div(
                pictures.ofEnvelope()
                        ? picture(images + "/signature", "on the envelope", "The signature on the envelope")
                        : new Span("No scan of this envelope's signature. Look at the envelope itself."));
        pair.addClassName("full-size");
        Div files = new Div();
        files.addClassName("on-file");
        for (int i = 0; i < pictures.onFile(); i++) {
            String words = pictures.onFile() == 1 ? "on file" : "on file, " + (i + 1) + " of " + pictures.onFile();
            files.add(picture(images + "/on-file/" + i, words, "A signature on file"));
        }
        if (pictures.onFile() == 0) {
            files.add(new Span("No picture of a signature on file. Look at the voter's card, or choose"
                    + " \u201CNo signature on file\u201D."));
        }
        pair.add(files);
        add(pair);
        says.ifPresent(taker -> add(words(seen, taker)));
    }

    private static Div picture(String address, String caption, String heard) {
        Image image = new Image(address, heard);
        Div frame = new Div(image);
        frame.addClassName("zoom");
        frame.getElement().setAttribute("tabindex", "0");
        frame.getElement().setAttribute("role", "group");
        frame.getElement().setAttribute("aria-label", heard);
        ActButton larger = new ActButton("Zoom in").quiet().does(() -> frame.addClassName("larger"));
        ActButton smaller = new ActButton("Zoom out").quiet().does(() -> frame.removeClassName("larger"));
        Div under = new Div(new Span(caption), larger, smaller);
        under.addClassNames("caption", "acts");
        return new Div(frame, under);
    }

    private PageSection words(CaseVersion seen, BiConsumer<String, SignatureComparison> says) {
        features.setItems(FEATURES);
        features.addClassName("in-columns");
        note.setMaxLength(2_000);
        note.setWidthFull();
        note.setHelperText(
                "Age, illness, haste, the pen, the writing surface, a nickname or changes over the years can explain differences.");
        Div acts = new Div(
                new ActButton("Signature agrees", "A")
                        .first()
                        .onCase(pressed -> says.accept(pressed, look(seen, SignatureComparison.Finding.AGREES))),
                new ActButton("Signature differs")
                        .onCase(pressed -> says.accept(pressed, look(seen, SignatureComparison.Finding.DIFFERS))),
                new ActButton("No signature on file")
                        .onCase(pressed -> says.accept(pressed, look(seen, SignatureComparison.Finding.NO_EXEMPLAR))));
        acts.addClassName("acts");
        return new PageSection("look", "Your comparison", features, note, acts);
    }

    private SignatureComparison look(CaseVersion seen, SignatureComparison.Finding what) {
        String differs = String.join(
                ", ", FEATURES.stream().filter(features.getValue()::contains).toList());
        String words = what == SignatureComparison.Finding.DIFFERS
                ? (differs
                        + (differs.isEmpty() || note.getValue().isBlank() ? "" : ". ")
                        + note.getValue().strip())
                : note.getValue().strip();
        return new SignatureComparison(seen.key(), seen.version(), what, words);
    }
}
