package org.proviso.review.ui.desk;

import java.util.function.Consumer;
import java.util.function.Function;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.review.CaseVersion;
import org.proviso.review.EnvelopeCase;
import org.proviso.review.file.CaseFile;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.CaseVersionMark;
import org.springframework.dao.OptimisticLockingFailureException;

/** What the parts of a case page share: the case as it is shown, the services, and what happens after an act. */
public final class CasePageContext {

    /** What the page does after an act was recorded or the case was found changed. */
    public interface AfterAct {
        /** The same case is shown again. */
        void again();

        /** The case is now assigned to the signed-in person. */
        default void taken() {
            again();
        }

        /** The reviewer is done with the case: the next one comes. */
        void next();

        /** The reviewer put the case away: nobody is handed another one. */
        default void away() {
            next();
        }
    }

    private final CaseFile file;
    private final ReviewServices acts;
    private final AfterAct after;
    private final boolean reading;
    private final boolean paper;

    public CasePageContext(CaseFile file, ReviewServices acts, AfterAct after, boolean reading) {
        this(file, acts, after, reading, false);
    }

    private CasePageContext(CaseFile file, ReviewServices acts, AfterAct after, boolean reading, boolean paper) {
        this.file = file;
        this.acts = acts;
        this.after = after;
        this.reading = reading;
        this.paper = paper;
    }

    /** The case to be printed: nothing on it can be pressed. */
    public static CasePageContext toPrint(CaseFile file, ReviewServices acts, AfterAct after) {
        return new CasePageContext(file, acts, after, true, true);
    }

    CaseFile file() {
        return file;
    }

    ReviewServices acts() {
        return acts;
    }

    EnvelopeKey key() {
        return file.now().key();
    }

    EnvelopeNumber number() {
        return key().envelopeNo();
    }

    CaseVersionMark mark() {
        return new CaseVersionMark(number(), file.now().version());
    }

    /** Whether the case is assigned to the signed-in person; otherwise the page is view only. */
    boolean mayWork() {
        return !reading && file.holding().yours();
    }

    /** Whether the page is view only: for the deciding body or for second review. */
    boolean isReading() {
        return reading;
    }

    /** Whether the page is for paper, without a button or a link. */
    boolean isPaper() {
        return paper;
    }

    boolean signatureHidden() {
        return file.work().signatureHidden();
    }

    /** Acts only on the case that was on the screen when the button was pressed. */
    void act(String pressed, RefusalDisplay refusing, String done, Function<CaseVersion, ActResult<EnvelopeCase>> act) {
        if (isShown(pressed, refusing)) {
            act(refusing, done, act, after::again);
        }
    }

    /** The same for the act that starts work on the case. */
    void firstAct(
            String pressed, RefusalDisplay refusing, String done, Function<CaseVersion, ActResult<EnvelopeCase>> act) {
        if (isShown(pressed, refusing)) {
            act(refusing, done, act, after::taken);
        }
    }

    /** The same for an act that ends work on the case. */
    void lastAct(
            String pressed, RefusalDisplay refusing, String done, Function<CaseVersion, ActResult<EnvelopeCase>> act) {
        if (isShown(pressed, refusing)) {
            act(refusing, done, act, after::next);
        }
    }

    /** The same for an act that puts the case away. */
    void awayAct(
            String pressed, RefusalDisplay refusing, String done, Function<CaseVersion, ActResult<EnvelopeCase>> act) {
        if (isShown(pressed, refusing)) {
            act(refusing, done, act, after::away);
        }
    }

    /**
     * An act from a dialog over this case; returns whether it was recorded. Where the case was changed meanwhile, the dialog
     * says so and keeps what was typed.
     */
    boolean fromSheet(RefusalDisplay refusing, String done, Function<CaseVersion, ActResult<EnvelopeCase>> act) {
        return done(refusing, done, act, after::again);
    }

    boolean lastFromSheet(RefusalDisplay refusing, String done, Function<CaseVersion, ActResult<EnvelopeCase>> act) {
        return done(refusing, done, act, after::next);
    }

    /** The same for an act that puts the case away. */
    boolean awayFromSheet(RefusalDisplay refusing, String done, Function<CaseVersion, ActResult<EnvelopeCase>> act) {
        return done(refusing, done, act, after::away);
    }

    /** The same for sheets of other packages, which say themselves why they stay open. */
    boolean onSheet(Consumer<String> refusing, String done, Function<CaseVersion, ActResult<EnvelopeCase>> act) {
        return fromSheet(refusing::accept, done, act);
    }

    /** The same for an act that ends work on the case. */
    boolean onLastSheet(Consumer<String> refusing, String done, Function<CaseVersion, ActResult<EnvelopeCase>> act) {
        return lastFromSheet(refusing::accept, done, act);
    }

    /** Shows the case again as it is now. */
    void again() {
        after.again();
    }

    private boolean isShown(String pressed, RefusalDisplay refusing) {
        if (mark().is(pressed)) {
            return true;
        }
        refusing.refuse("Not saved. The case changed just now. Check it and try again.");
        return false;
    }

    private void act(
            RefusalDisplay refusing, String done, Function<CaseVersion, ActResult<EnvelopeCase>> act, Runnable then) {
        try {
            boolean unused = done(refusing, done, act, then);
        } catch (OptimisticLockingFailureException e) {
            after.again();
            MessageLine.refused("Not saved. " + e.getMessage() + " The page now shows the current version.");
        }
    }

    private boolean done(
            RefusalDisplay refusing, String done, Function<CaseVersion, ActResult<EnvelopeCase>> act, Runnable then) {
        ActResult<EnvelopeCase> outcome =
                act.apply(new CaseVersion(key(), file.now().version()));
        if (outcome instanceof ActResult.Refused<EnvelopeCase> refused) {
            refusing.refuse(refused.words());
            return false;
        }
        MessageLine.done(done);
        then.run();
        return true;
    }
}
