package org.proviso.sample.cases;

import java.time.LocalDateTime;
import org.proviso.sample.county.Resident;
import org.proviso.sample.envelope.DraftEnvelope;
import org.proviso.sample.envelope.EnvelopeDesk;
import org.proviso.sample.envelope.Identifier;
import org.proviso.sample.envelope.TrueOutcome;

/** Voters whom a poll book shows at another location. */
final class CheckInCases {

    private final EnvelopeDesk desk;

    CheckInCases(EnvelopeDesk desk) {
        this.desk = desk;
    }

    void reallyVoted(int count) {
        desk.times(count, () -> {
            DraftEnvelope draft = start("checked_in_elsewhere_voted", TrueOutcome.REJECT);
            String there = desk.otherLocation(draft.get("voting_location"));
            desk.checkIn(draft.person, there, before(draft), "regular", "yes");
            draft.note("the poll-book signature at " + there + " is the voter's");
        });
    }

    /** The clerk there ticked this voter's line for somebody of the same name. */
    void wrongLineTicked(int count) {
        desk.times(count, () -> {
            DraftEnvelope draft = start("checked_in_elsewhere_wrong_line", TrueOutcome.COUNT);
            Resident namesake = namesake(draft.person);
            String there = namesake.home.part().location();
            desk.checkIn(draft.person, there, before(draft), "regular", "yes");
            draft.note("the poll-book signature at " + there + " is of voter " + namesake.voterId());
            draft.only(Identifier.ADDRESS);
        });
    }

    private Resident namesake(Resident of) {
        Resident other = desk.take(candidate -> EnvelopeDesk.ordinary(candidate)
                && candidate.woman == of.woman
                && !candidate.home.part().location().equals(of.home.part().location()));
        other.last = of.last;
        other.first = of.first;
        other.middle = of.middle.startsWith("A") ? "R" : "A";
        Resident.alike(of, Resident.Kin.LIKE_NAME, other, Resident.Kin.LIKE_NAME);
        return other;
    }

    void cancelled(int count) {
        desk.times(count, () -> {
            DraftEnvelope draft = start("check_in_cancelled", TrueOutcome.COUNT);
            LocalDateTime at = before(draft);
            desk.checkIn(draft.person, desk.otherLocation(draft.get("voting_location")), at, "regular", "no")
                    .set("cancelled_at", at.plusMinutes(desk.dice.between(2, 9)));
        });
    }

    private DraftEnvelope start(String scenario, TrueOutcome outcome) {
        return desk.ordinary(scenario, outcome)
                .because("already_checked_in")
                .set("cast_at", desk.plan.at(desk.dice.between(14, 19), desk.dice.between(2, 57)));
    }

    private LocalDateTime before(DraftEnvelope draft) {
        return draft.castAt().minusMinutes(desk.dice.between(60, 380));
    }
}
