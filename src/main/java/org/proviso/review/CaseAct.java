package org.proviso.review;

import org.proviso.core.Code;

/** What a person does to a case. Time and files change no state by themselves. */
public enum CaseAct implements Code {
    KEY("intake finishes keying the affirmation"),
    TAKE("a reviewer takes the case"),
    GIVE_BACK("the reviewer returns the case to the queue; a supervisor does so for a reviewer who is away"),
    PROPOSE_COUNT("the reviewer proposes to count in full; no second review"),
    PROPOSE_LESS("the reviewer proposes to reject or to count in part"),
    PROPOSE_AGAINST("the reviewer proposes to count against the rules' answer"),
    PROPOSE_END("the reviewer proposes to send the envelope on, or to close the case without a decision"),
    WITHDRAW("the proposer withdraws the proposal and has the case again"),
    AGREE("a different reviewer does the second review and agrees"),
    RETURN("the second reviewer or the decider sends it back with a note"),
    RECALL("a later file or paper changed what the proposal is based on"),
    DECIDE("the decider's vote settles it"),
    ORDER("a court's order settles it"),
    REOPEN("it is reopened with a reason, before closing"),
    SEND_ON("a different reviewer confirms that the envelope goes to the voter's home county"),
    END(
            "a different reviewer confirms that there is no vote to decide: withdrawn, spoiled, or a regular ballot inside"),
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
