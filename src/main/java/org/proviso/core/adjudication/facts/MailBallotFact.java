package org.proviso.core.adjudication.facts;

/** What became of a mail ballot sent to the voter; several may hold, one for each serial. */
public enum MailBallotFact implements FactWord {
    OUTSTANDING("sent, and not back"),
    SURRENDERED("given up at the voting location"),
    RETURNED("came back voted, not yet decided"),
    ACCEPTED("came back and was accepted"),
    REJECTED("came back and was rejected for good"),
    LATE("came back after the deadline"),
    VOID("void: replaced, or no ballot in law"),
    CURE_PENDING("came back with a fault that the voter may still cure"),
    UNDELIVERABLE("the post office brought it back");

    private final String meaning;

    MailBallotFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
