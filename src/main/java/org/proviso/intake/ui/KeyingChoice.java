package org.proviso.intake.ui;

import java.util.LinkedHashMap;
import java.util.Map;
import org.proviso.core.Code;

/** The boxes of an envelope in which one of a few words is chosen, in the order of its paper. */
enum KeyingChoice implements Code {
    ID_SHOWN("ID shown", "unknown=not stated", "yes=yes", "no=no"),
    ID_KIND(
            "Type of ID",
            "=none",
            "drivers_license=driver's license",
            "state_id=state ID",
            "passport=passport",
            "utility_bill=utility bill",
            "student_id=student ID",
            "military_id=military ID",
            "tribal_id=tribal ID",
            "other=other"),
    DECLARATION("Declaration", "=none", "impediment=impediment", "religious=religious objection", "other=other"),
    MAIL_BALLOT_SURRENDERED("Mail ballot surrendered", "unknown=not stated", "yes=yes", "no=no"),
    SENT_HERE_BY_OFFICIAL("Sent here by poll worker", "unknown=not stated", "yes=yes", "no=no"),
    VOTER_SIGNED("Voter signed", "unknown=not stated", "yes=yes", "no=no", "mark=made a mark"),
    MARK_WITNESS("Mark witnessed", "unknown=not stated", "yes=yes", "no=no"),
    OFFICIAL_SIGNED("Poll worker signed", "unknown=not stated", "yes=yes", "no=no"),
    ENVELOPE_CONDITION(
            "Envelope condition",
            "unknown=not stated",
            "sealed=sealed",
            "unsealed=unsealed",
            "torn=torn",
            "feels_empty=feels empty",
            "withdrawn=withdrawn",
            "spoiled=spoiled",
            "regular_ballot_inside=regular ballot inside");

    private final String label;
    private final Map<String, String> choices = new LinkedHashMap<>();

    KeyingChoice(String label, String... choices) {
        this.label = label;
        for (String choice : choices) {
            this.choices.put(choice.substring(0, choice.indexOf('=')), choice.substring(choice.indexOf('=') + 1));
        }
    }

    String label() {
        return label;
    }

    Map<String, String> choices() {
        return choices;
    }
}
