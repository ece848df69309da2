package org.proviso.ui.frame;

import java.util.Optional;

/** Something long that the office does beside its pages, said on each until it is done; the rooms answer. */
public interface WorkUnderWay {

    /** What is done, in a sentence that stays the same while it is, and how far it is, in figures or empty. */
    record Message(String what, String howFar) {}

    /** Empty when nothing is under way. */
    Optional<Message> words();
}
