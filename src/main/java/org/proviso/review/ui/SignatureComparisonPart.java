package org.proviso.review.ui;

import com.vaadin.flow.component.Component;
import com.vaadin.flow.component.checkbox.CheckboxGroup;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import com.vaadin.flow.component.textfield.TextArea;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Function;
import org.proviso.review.CaseVersion;
import org.proviso.review.facts.SignatureComparison;
import org.proviso.review.file.SignaturesToCompare;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.CaseVersionMark;
import org.proviso.ui.field.ChangedMeanwhile;
import org.springframework.dao.OptimisticLockingFailureException;

/** One signature with all those on file, in one window, and the reviewer's three answers at its foot, none of them preset. */
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

    /** What may explain a difference, for the page to say. */
    static final String EXPLAINED = "Age, illness, haste, the pen or the years can explain differences.";

    private static final int LETTERS = 26;

    /** What the reviewer ticked and typed; it is kept where the case changed meanwhile. */
    record Typed(Set<String> features, String note) {
        static final Typed NOTHING = new Typed(Set.of(), "");
    }

    /** What is said over the envelope's signature and over the row of each voter; empty where nobody may know whose they are. */
    record Captions(
            Optional<Component> ofEnvelope, Function<SignaturesToCompare.OnFile, Optional<Component>> ofVoter) {}

    private final CheckboxGroup<String> features = new CheckboxGroup<>("What differs");
    private final TextArea note = new TextArea("Note");
    private final ChangedMeanwhile changed;

    /** {@code says} takes the mark on the screen and the comparison; empty for a person who may only view. */
    SignatureComparisonPart(
            CaseVersion seen,
            SignaturesToCompare pictures,
            Captions captions,
            Optional<BiConsumer<String, SignatureComparison>> says,
            Runnable load) {
        addClassName("signatures");
        setClassName("several", pictures.voters().size() > 1);
        new CaseVersionMark(seen.key().envelopeNo(), seen.version()).on(this);
        changed = new ChangedMeanwhile(load);
        SignatureFrames frames = new SignatureFrames(seen.key(), pictures);
        List<Component> overlay = frames.overlay();
        Div tools = new Div(SignatureFrames.zoom(this));
        tools.addClassName("tools");
        if (!overlay.isEmpty()) {
            tools.add(SignatureFrames.strength(this));
        }
        captions.ofEnvelope().ifPresent(tools::add);
        Div top = new Div(frames.onEnvelope());
        top.addClassName("compared");
        top.add(overlay);
        says.ifPresent(taker -> top.add(differences()));
        Div rows = new Div();
        rows.addClassName("rows");
        rows(frames, pictures, captions, rows);
        Div work = new Div(tools, top, rows);
        work.addClassName("work");
        add(work);
        says.ifPresent(taker -> add(foot(seen, taker)));
    }

    private static void rows(SignatureFrames frames, SignaturesToCompare pictures, Captions captions, Div rows) {
        List<SignaturesToCompare.OnFile> voters = pictures.voters();
        if (voters.isEmpty()) {
            rows.add(new Span("Nobody is linked to this envelope yet, so there is no signature on file to show."));
        }
        for (int at = 0; at < voters.size(); at++) {
            SignaturesToCompare.OnFile voter = voters.get(at);
            String letter = voters.size() == 1 ? "" : "Record " + (char) ('A' + at % LETTERS);
            Div head = new Div();
            head.addClassName("whose");
            if (!letter.isEmpty()) {
                Span named = new Span(letter + (voter.named() ? ", the one your comparison is about" : ""));
                named.addClassName("strong");
                head.add(named);
            }
            captions.ofVoter().apply(voter).ifPresent(head::add);
            rows.add(frames.row(voter, letter.isEmpty() ? "" : ", " + letter, head));
        }
    }

    private Component differences() {
        features.setItems(FEATURES);
        features.addClassName("in-columns");
        return features;
    }

    private Div foot(CaseVersion seen, BiConsumer<String, SignatureComparison> says) {
        Div acts = new Div(
                new ActButton("Signature agrees", "A")
                        .onCase(pressed -> says.accept(pressed, look(seen, SignatureComparison.Finding.AGREES))),
                new ActButton("Signature differs", "D")
                        .onCase(pressed -> says.accept(pressed, look(seen, SignatureComparison.Finding.DIFFERS))),
                new ActButton("No signature on file")
                        .onCase(pressed -> says.accept(pressed, look(seen, SignatureComparison.Finding.NO_EXEMPLAR))));
        acts.addClassName("acts");
        note.setMaxLength(2_000);
        note.setMinRows(1);
        note.setMaxRows(2);
        Div line = new Div(note, acts);
        line.addClassName("answers");
        Div foot = new Div(changed, line);
        foot.addClassName("signature-foot");
        return foot;
    }

    /** What was ticked and typed so far. */
    Typed typed() {
        return new Typed(Set.copyOf(features.getValue()), note.getValue());
    }

    /** The same again, after the page was loaded anew. */
    SignatureComparisonPart with(Typed typed) {
        features.setValue(typed.features());
        note.setValue(typed.note());
        return this;
    }

    /** Somebody changed the case meanwhile: nothing was saved, and what was typed stays. */
    void tell(OptimisticLockingFailureException stale) {
        changed.tell(stale);
    }

    private SignatureComparison look(CaseVersion seen, SignatureComparison.Finding what) {
        changed.nothing();
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
