package org.proviso.review;

import org.proviso.core.Code;

/** What a person does to a case. Time and files change no state by themselves. */
public enum CaseAct implements Code {
    KEY("intake finishes keying the affirmation"),
    TAKE("a reviewer takes the case"),
    GIVE_BACK("the reviewer, or a supervisor for one who is away, gives it back"),
    PROPOSE_COUNT("the reviewer proposes to count in full, which nobody reads a second time"),
    PROPOSE_LESS("the reviewer proposes to reject or to count in part"),
    WITHDRAW("the proposer takes the proposal back and has the case again"),
    AGREE("another reviewer reads it and agrees"),
    RETURN("the second reader, or the decider, sends it back with a note"),
    RECALL("a later file or paper changed what the proposal rests on"),
    DECIDE("the decider's vote settles it"),
    ORDER("a court's order settles it"),
    REOPEN("it is opened again with a reason, before closing"),
    SEND_ON("the envelope goes to the voter's home county"),
    END("it ends without a decision: withdrawn, spoiled, or a regular ballot put in by mistake"),
    RELEASE("the release team opens the envelope of a ballot that counts");

    private final String words;

    CaseAct(String words) {
        this.words = words;
    }

    /** Who does what, as the office says it. */
    public String words() {
        return words;
    }

    /** As it is said in a sentence: {@code give back}. */
    public String spoken() {
        return code().replace('_', ' ');
    }
}
