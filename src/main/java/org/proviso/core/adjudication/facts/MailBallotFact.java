package org.proviso.core.adjudication.facts;

/** What became of a mail ballot sent to the voter; several may hold, one for each serial. */
public enum MailBallotFact implements FactWord {
    OUTSTANDING("not returned"),
    SURRENDERED("surrendered at the voting location"),
    RETURNED("returned voted, not decided yet"),
    ACCEPTED("returned and accepted"),
    REJECTED("returned and finally rejected"),
    LATE("returned after the deadline"),
    VOID("void: replaced, or not a valid ballot"),
    CURE_PENDING("returned with a defect the voter may still cure"),
    UNDELIVERABLE("returned by the post office as undeliverable");

    private final String meaning;

    MailBallotFact(String meaning) {
        this.meaning = meaning;
    }

    @Override
    public String meaning() {
        return meaning;
    }
}
