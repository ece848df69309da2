package org.proviso.intake.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.intake.ReceivingChoices;
import org.proviso.intake.correction.CorrectEnvelope;
import org.proviso.intake.correction.CorrectableEnvelope;
import org.proviso.intake.correction.EnvelopeCorrectionService;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ChangedMeanwhile;
import org.proviso.ui.field.TypedField;
import org.proviso.ui.frame.WorkingElection;
import org.springframework.dao.OptimisticLockingFailureException;

/** An envelope as it was received and keyed, to be corrected with a reason. */
final class CorrectionForm extends Div {

    private static final int LONGEST_REASON = 1000;

    private final transient EnvelopeCorrectionService corrections;
    private final transient WorkingElection workplace;
    private final transient CorrectableEnvelope seen;
    private final CorrectedCastForm cast;
    private final @Nullable KeyingForm keyed;
    private final TypedField because = new TypedField("because", "Reason").like("the paper says Depot Street");
    private final ChangedMeanwhile changed = new ChangedMeanwhile();
    private final ActButton save = new ActButton("Save correction").first().does(this::save);
    private final Runnable done;

    CorrectionForm(
            EnvelopeCorrectionService corrections,
            WorkingElection workplace,
            ReceivingChoices choices,
            CorrectableEnvelope seen,
            Runnable done) {
        this.corrections = corrections;
        this.workplace = workplace;
        this.seen = seen;
        this.done = done;
        cast = new CorrectedCastForm(seen.envelope().cast(), choices);
        keyed = seen.keyed().isEmpty() ? null : filled();
        save.getElement().setAttribute("data-finish", true);
        save.setEnabled(seen.inTheWay().isEmpty());
        Div why = new Div(new H2("Why"), because, changed);
        Div received = new Div(cast, why);
        received.addClassName("keying");
        received.getElement().setAttribute("data-typing", "go-on");
        add(received);
        if (keyed != null) {
            add(keyed);
        }
    }

    ActButton saving() {
        return save;
    }

    /** The keying form with what the envelope has; what was unlikely and stood is not asked again. */
    private KeyingForm filled() {
        KeyingForm form = new KeyingForm(() -> workplace.now().toLocalDate(), () -> {});
        Map<String, String> boxes = new LinkedHashMap<>();
        seen.keyed().forEach((box, text) -> {
            boxes.put(box, text.text());
            boxes.put(box + KeyingFormReader.STATE, text.state().code());
            boxes.put(box + KeyingFormReader.KEPT, "yes");
        });
        form.fill(boxes);
        return form;
    }

    private void save() {
        changed.nothing();
        boolean possible = cast.isPossible();
        because.problem(reasonProblem());
        @Nullable KeyingFormReader read = null;
        if (keyed != null) {
            read = new KeyingFormReader(keyed.boxes(), workplace.now().toLocalDate());
            keyed.problems(read.problems());
            possible = possible && read.problems().isEmpty();
        }
        if (!possible || because.hasProblem()) {
            MessageLine.refused("Not saved. Check the highlighted fields.");
        } else if (keyed != null && keyed.asks()) {
            MessageLine.refused("Not saved. Answer the question beside the field.");
        } else {
            correct(read);
        }
    }

    private String reasonProblem() {
        if (because.text().isEmpty()) {
            return "Required. Say what the paper shows.";
        }
        return because.text().length() > LONGEST_REASON ? "At most " + LONGEST_REASON + " characters." : "";
    }

    private void correct(@Nullable KeyingFormReader read) {
        ElectionId election = workplace.electionId();
        try {
            ActResult<EnvelopeNumber> result = corrections.correct(new CorrectEnvelope(
                    election,
                    seen.envelope().envelopeNo(),
                    seen.version(),
                    cast.cast(),
                    read == null ? null : read.affirmation(),
                    read == null ? null : read.seen(),
                    because.text()));
            result.refusals().forEach(this::refused);
            if (!result.isRefused()) {
                done.run();
            }
        } catch (OptimisticLockingFailureException e) {
            MessageLine.refused(ChangedMeanwhile.WORDS);
            changed.tell(e);
        }
    }

    private void refused(Refusal refusal) {
        cast.refused(refusal);
        MessageLine.refused("Not saved. " + refusal.words());
    }
}
