package org.proviso.review.ui.desk;

import java.util.function.Function;
import org.proviso.review.CaseKey;
import org.proviso.review.Outcome;
import org.proviso.review.SeenCase;
import org.proviso.review.file.CaseFile;
import org.proviso.ui.Said;
import org.proviso.ui.SeenMark;
import org.springframework.dao.OptimisticLockingFailureException;

/** What the parts of a case page share: the case as it is shown, the services, and what happens after an act. */
public final class Desk {

    /** What the page does after an act was recorded or the case was found changed. */
    public interface After {
        /** The same case is shown again. */
        void again();

        /** The case is now assigned to the signed-in person. */
        default void taken() {
            again();
        }

        /** The reviewer is done with the case: the next one comes. */
        void next();
    }

    private final CaseFile file;
    private final ReviewActs acts;
    private final After after;
    private final boolean reading;

    public Desk(CaseFile file, ReviewActs acts, After after, boolean reading) {
        this.file = file;
        this.acts = acts;
        this.after = after;
        this.reading = reading;
    }

    CaseFile file() {
        return file;
    }

    ReviewActs acts() {
        return acts;
    }

    CaseKey key() {
        return file.now().key();
    }

    String number() {
        return key().envelopeNo();
    }

    SeenMark mark() {
        return new SeenMark(number(), file.now().version());
    }

    /** Whether the case is assigned to the signed-in person; otherwise the page is view only. */
    boolean mayWork() {
        return !reading && file.holding().yours();
    }

    /** Whether the page is view only: for the deciding body or for second review. */
    boolean isReading() {
        return reading;
    }

    boolean signatureHidden() {
        return file.work().signatureHidden();
    }

    /** Acts only on the case that was on the screen when the button was pressed. */
    void act(String pressed, Refusing refusing, String done, Function<SeenCase, Outcome> act) {
        if (isShown(pressed, refusing)) {
            act(refusing, done, act, after::again);
        }
    }

    /** The same for the act that starts work on the case. */
    void firstAct(String pressed, Refusing refusing, String done, Function<SeenCase, Outcome> act) {
        if (isShown(pressed, refusing)) {
            act(refusing, done, act, after::taken);
        }
    }

    /** The same for an act that ends work on the case. */
    void lastAct(String pressed, Refusing refusing, String done, Function<SeenCase, Outcome> act) {
        if (isShown(pressed, refusing)) {
            act(refusing, done, act, after::next);
        }
    }

    /** An act from a dialog over this case; returns whether it was recorded. */
    boolean fromSheet(Refusing refusing, String done, Function<SeenCase, Outcome> act) {
        return act(refusing, done, act, after::again);
    }

    boolean lastFromSheet(Refusing refusing, String done, Function<SeenCase, Outcome> act) {
        return act(refusing, done, act, after::next);
    }

    /** Shows the case again as it is now. */
    void again() {
        after.again();
    }

    private boolean isShown(String pressed, Refusing refusing) {
        if (mark().is(pressed)) {
            return true;
        }
        refusing.refuse("Not saved. The case changed just now. Check it and try again.");
        return false;
    }

    private boolean act(Refusing refusing, String done, Function<SeenCase, Outcome> act, Runnable then) {
        try {
            Outcome outcome = act.apply(new SeenCase(key(), file.now().version()));
            if (outcome instanceof Outcome.Refused refused) {
                refusing.refuse(refused.words());
                return false;
            }
        } catch (OptimisticLockingFailureException e) {
            after.again();
            Said.refused("Not saved. " + e.getMessage() + " The page now shows the current version.");
            return true;
        }
        Said.done(done);
        then.run();
        return true;
    }
}
