package org.proviso.practice;

import org.jspecify.annotations.Nullable;

/**
 * What somebody answered so far, as it stands in the page's address: nothing of it is kept anywhere. Null where not
 * answered yet.
 */
record PracticeAnswers(
        @Nullable String born,
        @Nullable String voter,
        @Nullable String signature,
        @Nullable String outcome) {

    /** The date of birth on the paper, in the ways in which people write it. */
    private static final String BORN = "0*10[/. -]0*30[/. -](19)?61";

    static final String RIGHT_VOTER = "father";

    boolean isKeyedAsWritten() {
        return born != null && born.strip().matches(BORN);
    }

    boolean isRightVoter() {
        return RIGHT_VOTER.equals(voter);
    }

    /** The step that comes next: everything before it is answered, and answered rightly where there is one right answer. */
    Step next() {
        if (!isKeyedAsWritten()) {
            return Step.KEY;
        }
        if (!isRightVoter()) {
            return Step.VOTER;
        }
        if (signature == null) {
            return Step.SIGNATURE;
        }
        return outcome == null ? Step.PROPOSE : Step.DONE;
    }

    /** The steps in their order. */
    enum Step {
        KEY,
        VOTER,
        SIGNATURE,
        PROPOSE,
        DONE
    }
}
