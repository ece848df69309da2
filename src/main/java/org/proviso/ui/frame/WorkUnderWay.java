package org.proviso.ui.frame;

import java.util.Optional;

/** Long-running work, shown on every page until it is done. The rooms supply it. */
public interface WorkUnderWay {

    /** What is being done, in a sentence that does not change, and the progress in figures (or empty). */
    record Message(String what, String howFar) {}

    /** Empty when nothing is in progress. */
    Optional<Message> words();
}
