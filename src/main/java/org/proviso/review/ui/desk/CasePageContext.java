package org.proviso.review.ui.desk;

import java.util.function.Function;
import org.proviso.review.CaseActResult;
import org.proviso.review.CaseKey;
import org.proviso.review.CaseVersion;
import org.proviso.review.file.CaseFile;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.CaseVersionMark;
import org.springframework.dao.OptimisticLockingFailureException;

/** What the parts of a case page share: the case as it is shown, the services, and what happens after an act. */
public final class CasePageContext {

    /** What the page does once an act was recorded or the case turned out to have changed. */
    public interface AfterAct {
        /** The same case is shown again. */
        void again();

        /** The case is now with whoever looks. */
        default void taken() {
            again();
        }

        /** The case is out of the reviewer's hands: the next one comes. */
        void next();
    }

    private final CaseFile file;
    private final ReviewServices acts;
    private final AfterAct after;
    private final boolean reading;

    public CasePageContext(CaseFile file, ReviewServices acts, AfterAct after, boolean reading) {
        this.file = file;
        this.acts = acts;
        this.after = after;
        this.reading = reading;
    }

    CaseFile file() {
        return file;
    }

    ReviewServices acts() {
        return acts;
    }

    CaseKey key() {
        return file.now().key();
    }

    String number() {
        return key().envelopeNo();
    }

    CaseVersionMark mark() {
        return new CaseVersionMark(number(), file.now().version());
    }

    /** Whether whoever looks works on the case now; otherwise the page only shows it. */
    boolean mayWork() {
        return !reading && file.holding().yours();
    }

    /** Whether the page was opened to read only: by the deciding body, or by a second reader. */
    boolean isReading() {
        return reading;
    }

    boolean signatureHidden() {
        return file.work().signatureHidden();
    }

    /** Acts on the case that stood on the screen when it was pressed; another one is left alone. */
    void act(String pressed, RefusalDisplay refusing, String done, Function<CaseVersion, CaseActResult> act) {
        if (isShown(pressed, refusing)) {
            act(refusing, done, act, after::again);
        }
    }

    /** The same for the act with which the work on the case begins. */
    void firstAct(String pressed, RefusalDisplay refusing, String done, Function<CaseVersion, CaseActResult> act) {
        if (isShown(pressed, refusing)) {
            act(refusing, done, act, after::taken);
        }
    }

    /** The same for an act that ends the work on the case. */
    void lastAct(String pressed, RefusalDisplay refusing, String done, Function<CaseVersion, CaseActResult> act) {
        if (isShown(pressed, refusing)) {
            act(refusing, done, act, after::next);
        }
    }

    /** An act from a sheet, which was opened over this very case; whether it was recorded. */
    boolean fromSheet(RefusalDisplay refusing, String done, Function<CaseVersion, CaseActResult> act) {
        return act(refusing, done, act, after::again);
    }

    boolean lastFromSheet(RefusalDisplay refusing, String done, Function<CaseVersion, CaseActResult> act) {
        return act(refusing, done, act, after::next);
    }

    /** Shows the case again as it is now. */
    void again() {
        after.again();
    }

    private boolean isShown(String pressed, RefusalDisplay refusing) {
        if (mark().is(pressed)) {
            return true;
        }
        refusing.refuse("The case changed as you pressed. Nothing was done; look at it and press again.");
        return false;
    }

    private boolean act(RefusalDisplay refusing, String done, Function<CaseVersion, CaseActResult> act, Runnable then) {
        try {
            CaseActResult outcome = act.apply(new CaseVersion(key(), file.now().version()));
            if (outcome instanceof CaseActResult.Refused refused) {
                refusing.refuse(refused.words());
                return false;
            }
        } catch (OptimisticLockingFailureException e) {
            after.again();
            MessageLine.refused("Nothing was recorded. " + e.getMessage() + " It is shown as it is now.");
            return true;
        }
        MessageLine.done(done);
        then.run();
        return true;
    }
}
