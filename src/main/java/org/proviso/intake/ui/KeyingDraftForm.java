package org.proviso.intake.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.intake.keying.FinishKeying;
import org.proviso.intake.keying.KeyingDraft;
import org.proviso.intake.keying.KeyingResult;
import org.proviso.intake.keying.KeyingService;
import org.proviso.intake.keying.SaveKeyingDraft;
import org.proviso.ui.MessageLine;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ChangedMeanwhile;
import org.proviso.ui.frame.WorkingElection;
import org.springframework.dao.OptimisticLockingFailureException;

/** The keying form of one envelope with one's own draft: saved while typing, finished at the end. */
final class KeyingDraftForm extends Div {

    private final transient KeyingService keying;
    private final transient WorkingElection workplace;
    private final EnvelopeNumber envelopeNo;
    private final Runnable done;
    private final KeyingForm form;
    private final ChangedMeanwhile changed = new ChangedMeanwhile();
    private final Span saved = new Span();
    private final ActButton finish = new ActButton("Finish keying").first().does(this::finish);
    private int version;
    private boolean handedIn;
    private @Nullable KeyingDifferences differences;
    private @Nullable Integer resolves;

    KeyingDraftForm(KeyingService keying, WorkingElection workplace, EnvelopeNumber envelopeNo, Runnable done) {
        this.keying = keying;
        this.workplace = workplace;
        this.envelopeNo = envelopeNo;
        this.done = done;
        this.form = new KeyingForm(() -> workplace.now().toLocalDate(), this::save);
        addClassName("desk");
        saved.addClassNames("soft", "small", "saved");
        finish.getElement().setAttribute("data-finish", true);
        add(changed, form);
    }

    Span saved() {
        return saved;
    }

    ActButton finishing() {
        return finish;
    }

    /** Shows one's own draft, if there is one. */
    void open() {
        Optional<KeyingDraft> draft = keying.draft(workplace.electionId(), envelopeNo);
        draft.ifPresent(found -> {
            version = found.version();
            handedIn = found.finished();
            form.fill(found.boxes());
            saved.setText("Your saved draft");
        });
        if (handedIn) {
            saved.setText("You finished keying this envelope. A different person does the second keying.");
            finish.setEnabled(false);
        }
        form.focusFirst();
    }

    private void save() {
        if (handedIn) {
            return;
        }
        try {
            boolean unused = keep();
        } catch (OptimisticLockingFailureException e) {
            MessageLine.refused(ChangedMeanwhile.WORDS);
            changed.tell(e);
        }
    }

    /** Saves the draft; false where it was refused, which is then said. */
    private boolean keep() {
        ActResult<Integer> kept =
                keying.saveDraft(new SaveKeyingDraft(workplace.electionId(), envelopeNo, version, form.boxes()));
        if (kept instanceof ActResult.Refused<Integer> refused) {
            MessageLine.refused(refused.words());
            return false;
        }
        kept.ifAccepted().ifPresent(now -> version = now);
        saved.setText("Saved " + UsDates.hour(workplace.now().toLocalTime()));
        return true;
    }

    private void finish() {
        Map<String, String> boxes = form.boxes();
        if (differences != null) {
            if (!differences.isSettled()) {
                MessageLine.refused("For each field that differs, choose what the envelope says.");
                differences.focus();
                return;
            }
            differences.into(boxes);
            form.fill(boxes);
        }
        KeyingFormReader read = new KeyingFormReader(boxes, workplace.now().toLocalDate());
        form.problems(read.problems());
        if (!read.problems().isEmpty()) {
            MessageLine.refused("Not saved. Check the highlighted fields ("
                    + count(read.problems().size()) + ").");
            return;
        }
        if (form.asks()) {
            MessageLine.refused("Not saved. Answer the question beside the field.");
            return;
        }
        handIn(read);
    }

    private static String count(int boxes) {
        return boxes == 1 ? "one field" : boxes + " fields";
    }

    private void handIn(KeyingFormReader read) {
        try {
            if (keep()) {
                ActResult<KeyingResult> result = keying.handIn(new FinishKeying(
                        workplace.electionId(), envelopeNo, version, read.affirmation(), read.seen(), resolves));
                if (result instanceof ActResult.Refused<KeyingResult> refused) {
                    MessageLine.refused(refused.words());
                }
                result.ifAccepted().ifPresent(this::goOn);
            }
        } catch (OptimisticLockingFailureException e) {
            MessageLine.refused(ChangedMeanwhile.WORDS);
            changed.tell(e);
        }
    }

    private void goOn(KeyingResult outcome) {
        if (outcome instanceof KeyingResult.KeyedTwice twice) {
            settle(twice);
        } else {
            handedIn = true;
            done.run();
        }
    }

    private void settle(KeyingResult.KeyedTwice twice) {
        resolves = twice.version();
        if (differences != null) {
            remove(differences);
        }
        differences = new KeyingDifferences(twice.differences());
        addComponentAsFirst(differences);
        finish.setText("Resolve and finish");
        MessageLine.refused(
                "The first keying differs in " + count(twice.differences().size()) + ". Nothing was changed.");
        differences.focus();
    }
}
