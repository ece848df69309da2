package org.proviso.canvass.steps;

import org.proviso.core.Code;

/** A kind of work that is left before closing, in the order of the work: what it is, who does it, and on which page. */
public enum ClosingStep implements Code {
    RETURN("voting location without its return", "voting locations without their returns", Desk.INTAKE),
    KEY("envelope to key", "envelopes to key", Desk.KEYING),
    REVIEW("envelope to review, not assigned yet", "envelopes to review, not assigned yet", Desk.REVIEWERS),
    FINISH_REVIEW("case with a reviewer, not proposed yet", "cases with reviewers, not proposed yet", Desk.REVIEWERS),
    SECOND_REVIEW("proposal waiting for second review", "proposals waiting for second review", Desk.SECOND_REVIEWERS),
    OTHER_BALLOTS(
            "statement that all other ballots are counted",
            "statements that all other ballots are counted",
            Desk.OTHER_BALLOTS),
    DECIDE("envelope ready to decide", "envelopes ready to decide", Desk.DECIDER),
    FOLLOW_UP("decision contradicted by a newer record", "decisions contradicted by newer records", Desk.CONTRADICTED),
    KEPT_CLOSED(
            "envelope that counts, kept closed by a court",
            "envelopes that count, kept closed by a court",
            Desk.COURT_ORDERS),
    MAIL_DESK(
            "envelope that counts, kept closed until the mail desk answers",
            "envelopes that count, kept closed until the mail desk answers",
            Desk.MAIL_LISTS),
    BATCH("envelope that counts, in no batch yet", "envelopes that count, in no batch yet", Desk.RELEASE_TEAM),
    OPEN("batch to open", "batches to open", Desk.RELEASE_TEAM),
    COPY("remake sheet to copy", "remake sheets to copy", Desk.RELEASE_TEAM),
    HAND_OFF("open batch to hand off", "open batches to hand off", Desk.RELEASE_TEAM),
    FIGURE("figure to record", "figures to record", Desk.FIGURES),
    TOTAL("total out of balance", "totals out of balance", Desk.CANVASS),
    SIGN("explanation to sign", "explanations to sign", Desk.SECOND_SIGNER),

    HELD("undecided envelope held by a court", "undecided envelopes held by a court", Desk.COURT_ORDERS),
    ASK_LETTER("cure notice not sent", "cure notices not sent", Desk.ASK_LETTERS),
    NOT_TOLD(
            "rejected envelope whose voter was not told what to provide",
            "rejected envelopes whose voters were not told what to provide",
            Desk.DECIDER),
    OUTCOME_LETTER("outcome notice not sent", "outcome notices not sent", Desk.OUTCOME_LETTERS),
    COUNTY_RECEIPT(
            "envelope sent on, without the other county's receipt",
            "envelopes sent on, without the other county's receipt",
            Desk.SENT_ON),
    MAIL_LINE(
            "line for the mail desk, not sent or not answered",
            "lines for the mail desk, not sent or not answered",
            Desk.MAIL_LISTS),
    SET_ASIDE(
            "row of a list in use that could not be read and may hide a voter or a second vote",
            "rows of lists in use that could not be read and may hide a voter or a second vote",
            Desk.ROWS),
    LIST("newer list waiting for a second person", "newer lists waiting for a second person", Desk.LISTS);

    /** Who does something in which part of the office. */
    private enum Desk {
        INTAKE("Intake", "intake/transmittals", "Open Transmittals"),
        KEYING("Intake", "intake", "Open Intake"),
        REVIEWERS("Reviewers", "review", "Open Review"),
        SECOND_REVIEWERS("A different reviewer", "review/second", "Open Second review"),
        DECIDER("The decider", "board", "Open Board"),
        CONTRADICTED("The decider or a supervisor", "board/contradicted", "Open list"),
        COURT_ORDERS("Supervisor", "set-up/orders", "Open Court orders"),
        OTHER_BALLOTS("Supervisor", "release", "Open Release"),
        RELEASE_TEAM("Release team", "release", "Open Release"),
        FIGURES("Supervisor", "canvass/sheet", "Open Sheet of balances"),
        CANVASS("Supervisor", "canvass", "Open Canvass"),
        SECOND_SIGNER("A second supervisor", "canvass", "Open Canvass"),
        ASK_LETTERS("Intake or reviewers", "notices", "Open Notices"),
        OUTCOME_LETTERS("Supervisor", "notices", "Open Notices"),
        SENT_ON("Reviewers", "review/sent-on", "Open Sent on"),
        MAIL_LISTS("Reviewers or a supervisor", "review/mail-desk", "Open Mail desk"),
        ROWS("Supervisor", "set-up", "Open Setup"),
        LISTS("A second supervisor", "set-up", "Open Setup");

        private final String who;
        private final String path;
        private final String link;

        Desk(String who, String path, String link) {
            this.who = who;
            this.path = path;
            this.link = link;
        }
    }

    private final String one;
    private final String many;
    private final Desk desk;

    ClosingStep(String one, String many, Desk desk) {
        this.one = one;
        this.many = many;
        this.desk = desk;
    }

    /** What it is, after its number: {@code envelopes to key}. */
    public String words(int number) {
        return number == 1 ? one : many;
    }

    /** Who does it. */
    public String who() {
        return desk.who;
    }

    /** The page where it is done, without a slash. */
    public String path() {
        return desk.path;
    }

    /** The words of the link to that page. */
    public String link() {
        return desk.link;
    }
}
