package org.proviso.intake.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.Span;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.intake.Draft;
import org.proviso.intake.FinishKeying;
import org.proviso.intake.IntakeRefusedException;
import org.proviso.intake.KeyingOutcome;
import org.proviso.intake.KeyingService;
import org.proviso.intake.SaveDraft;
import org.proviso.ui.ActButton;
import org.proviso.ui.Said;
import org.proviso.ui.UsDates;
import org.proviso.ui.Workplace;
import org.springframework.dao.OptimisticLockingFailureException;

/** The keying form of one envelope with one's own draft: saved while typing, finished at the end. */
final class KeyDesk extends Div {

    private final transient KeyingService keying;
    private final transient Workplace workplace;
    private final String envelopeNo;
    private final Runnable done;
    private final KeyForm form = new KeyForm(this::save);
    private final Span saved = new Span();
    private final ActButton finish = new ActButton("Finish keying").first().does(this::finish);
    private int version;
    private boolean handedIn;
    private @Nullable Differences differences;
    private @Nullable Integer resolves;

    KeyDesk(KeyingService keying, Workplace workplace, String envelopeNo, Runnable done) {
        this.keying = keying;
        this.workplace = workplace;
        this.envelopeNo = envelopeNo;
        this.done = done;
        addClassName("desk");
        saved.addClassNames("soft", "small", "saved");
        finish.getElement().setAttribute("data-finish", true);
        add(form);
    }

    Span saved() {
        return saved;
    }

    ActButton finishing() {
        return finish;
    }

    /** Shows one's own draft, if there is one. */
    void open() {
        Optional<Draft> draft = keying.draft(workplace.electionId(), envelopeNo);
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
            keep();
        } catch (OptimisticLockingFailureException | IntakeRefusedException e) {
            Said.refused(String.valueOf(e.getMessage()));
        }
    }

    private void keep() {
        version = keying.saveDraft(new SaveDraft(workplace.electionId(), envelopeNo, version, form.boxes()));
        saved.setText("Saved " + UsDates.hour(workplace.now().toLocalTime()));
    }

    private void finish() {
        Map<String, String> boxes = form.boxes();
        if (differences != null) {
            if (!differences.isSettled()) {
                Said.refused("For each field that differs, choose what the envelope says.");
                differences.focus();
                return;
            }
            differences.into(boxes);
            form.fill(boxes);
        }
        ReadBoxes read = new ReadBoxes(boxes, workplace.now().toLocalDate());
        form.problems(read.problems());
        if (!read.problems().isEmpty()) {
            Said.refused("Not saved. Check the highlighted fields ("
                    + count(read.problems().size()) + ").");
            return;
        }
        handIn(read);
    }

    private static String count(int boxes) {
        return boxes == 1 ? "one field" : boxes + " fields";
    }

    private void handIn(ReadBoxes read) {
        try {
            keep();
            KeyingOutcome outcome = keying.finish(
                    new FinishKeying(workplace.electionId(), envelopeNo, version, read.said(), read.seen(), resolves));
            if (outcome instanceof KeyingOutcome.KeyedTwice twice) {
                settle(twice);
            } else {
                handedIn = true;
                done.run();
            }
        } catch (OptimisticLockingFailureException | IntakeRefusedException e) {
            Said.refused(String.valueOf(e.getMessage()));
        }
    }

    private void settle(KeyingOutcome.KeyedTwice twice) {
        resolves = twice.version();
        if (differences != null) {
            remove(differences);
        }
        differences = new Differences(twice.differences());
        addComponentAsFirst(differences);
        finish.setText("Resolve and finish");
        Said.refused("The first keying differs in " + count(twice.differences().size()) + ". Nothing was changed.");
        differences.focus();
    }
}
