package org.proviso.release.ui;

import com.vaadin.flow.component.Composite;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import com.vaadin.flow.component.textfield.TextField;
import java.util.List;
import java.util.Objects;
import java.util.function.Supplier;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.release.Batch;
import org.proviso.release.BatchChangeService;
import org.proviso.ui.field.ActButton;

/** What can be done to a batch that is not open: take an envelope out of it, or dissolve it by two. */
final class BatchChangePart extends Composite<Div> {

    private static final int LONGEST_REASON = 1000;
    private static final int LONGEST_NUMBER = 60;

    /** Does an act and shows what came of it. */
    interface Doing {

        /** Says the words when it was done; gives the refusals to whoever can show them at a box, and tells if it did. */
        void take(Supplier<? extends ActResult<?>> act, String done, AtBox atBox);
    }

    /** Shows a refusal at the box that it is about; false where it is about none. */
    interface AtBox {
        boolean shows(Refusal refusal);
    }

    private final transient BatchChangeService changes;
    private final transient Batch batch;
    private final transient Doing doing;

    /** @param stopped why envelopes of the batch must stay closed */
    BatchChangePart(BatchChangeService changes, Batch batch, List<Refusal> stopped, Doing doing, String askedBy) {
        this.changes = changes;
        this.batch = batch;
        this.doing = doing;
        getContent().addClassName("no-print");
        getContent().add(new H2("Change this batch"), takeOut(stopped), dissolve(askedBy));
    }

    private Div takeOut(List<Refusal> stopped) {
        TextField number = field("Envelope to take out");
        number.setMaxLength(LONGEST_NUMBER);
        stopped.stream()
                .map(Refusal::about)
                .filter(Objects::nonNull)
                .findFirst()
                .ifPresent(envelope -> number.setValue(envelope.value()));
        TextField because = reason("Reason to take it out");
        ActButton button = new ActButton("Take envelope out").does(() -> {
            if (number.getValue().isBlank()) {
                refuse(number, "Required. Enter the envelope number.");
                return;
            }
            doing.take(
                    () -> changes.takeOut(
                            batch.electionId(),
                            batch.number(),
                            batch.version(),
                            new EnvelopeNumber(number.getValue().trim()),
                            because.getValue()),
                    number.getValue().trim() + " is out of the batch.",
                    refusal -> at(refusal, "envelopeNo", number) || at(refusal, "because", because));
        });
        return acts(number, because, button);
    }

    private Div dissolve(String askedBy) {
        if (batch.dissolveAskedBy() == null) {
            TextField because = reason("Reason to dissolve the batch");
            return acts(
                    because,
                    new ActButton("Ask to dissolve batch")
                            .does(() -> doing.take(
                                    () -> changes.askToDissolve(
                                            batch.electionId(), batch.number(), batch.version(), because.getValue()),
                                    "Another team member dissolves the batch or keeps it.",
                                    refusal -> at(refusal, "because", because))));
        }
        Div acts = acts(
                new ActButton("Dissolve batch")
                        .does(() -> doing.take(
                                () -> changes.dissolve(batch.electionId(), batch.number(), batch.version()),
                                "The batch is dissolved. Its envelopes wait to be opened again.",
                                refusal -> false)),
                new ActButton("Keep batch")
                        .does(() -> doing.take(
                                () -> changes.keep(batch.electionId(), batch.number(), batch.version()),
                                "The batch stays as it is.",
                                refusal -> false)));
        acts.addComponentAsFirst(new Paragraph(askedBy + " asked to dissolve this batch: " + batch.dissolveBecause()
                + " Another team member dissolves it or keeps it."));
        return acts;
    }

    private static boolean at(Refusal refusal, String name, TextField field) {
        if (!name.equals(refusal.field())) {
            return false;
        }
        refuse(field, refusal.words());
        return true;
    }

    private static void refuse(TextField field, String words) {
        field.setErrorMessage(words);
        field.setInvalid(true);
        field.focus();
    }

    private static TextField field(String label) {
        TextField field = new TextField(label);
        field.setMaxLength(LONGEST_REASON);
        field.addValueChangeListener(changed -> field.setInvalid(false));
        return field;
    }

    private static TextField reason(String label) {
        TextField field = field(label);
        field.setWidth("24rem");
        return field;
    }

    private static Div acts(com.vaadin.flow.component.Component... parts) {
        Div acts = new Div(parts);
        acts.addClassName("acts");
        return acts;
    }
}
