package org.proviso.sample.cases;

import org.proviso.sample.county.Resident;
import org.proviso.sample.envelope.DraftEnvelope;
import org.proviso.sample.envelope.EnvelopeDesk;
import org.proviso.sample.envelope.TrueOutcome;

/** What only a closed primary with extended hours has. */
final class PrimaryCases {

    private final EnvelopeDesk desk;

    PrimaryCases(EnvelopeDesk desk) {
        this.desk = desk;
    }

    void otherParty(int count) {
        desk.times(
                count,
                () -> wrongParty(desk.take(person ->
                        EnvelopeDesk.ordinary(person) && !person.party().isEmpty())));
    }

    void partyBallotWithoutParty(int count) {
        desk.times(
                count,
                () -> wrongParty(desk.take(person ->
                        EnvelopeDesk.ordinary(person) && person.party().isEmpty())));
    }

    private void wrongParty(Resident person) {
        String cast = desk.dice.pick(desk.plan.parties().stream()
                .filter(party -> !party.isEmpty() && !party.equals(person.party()))
                .toList());
        DraftEnvelope draft = desk.of(person, "wrong_party", TrueOutcome.REJECT).because("party");
        desk.castAs(draft, person.home.part(), cast).set("party_ballot_cast", cast);
        draft.set("party", desk.dice.chance(0.5) ? cast : person.party());
        draft.note("party of record: " + (person.party().isEmpty() ? "none" : person.party()));
    }

    DraftEnvelope extendedHours(TrueOutcome outcome) {
        Resident person = desk.take(this::votesWhereHoursWereExtended);
        return desk.of(person, "extended_hours", outcome)
                .because("court_hours")
                .set("cast_at", desk.plan.at(20, desk.dice.between(14, 58)))
                .set("extended_hours", "yes")
                .set("in_line_at_close", "no");
    }

    void afterExtendedClose() {
        Resident person = desk.take(this::votesWhereHoursWereExtended);
        desk.of(person, "after_extended_close", TrueOutcome.REJECT)
                .because("court_hours")
                .set("cast_at", desk.plan.at(21, 20))
                .set("extended_hours", "yes")
                .set("in_line_at_close", "no")
                .note("cast after the extended close, not in line by then");
    }

    void inLineAtClose(int count) {
        desk.times(count, () -> {
            Resident person =
                    desk.take(candidate -> EnvelopeDesk.ordinary(candidate) && !votesWhereHoursWereExtended(candidate));
            desk.of(person, "in_line_at_close", TrueOutcome.COUNT)
                    .because("not_on_list")
                    .set("cast_at", desk.plan.at(20, desk.dice.between(5, 35)))
                    .set("in_line_at_close", "yes");
        });
    }

    private boolean votesWhereHoursWereExtended(Resident person) {
        return EnvelopeDesk.ordinary(person) && person.home.part().location().equals(desk.plan.lateLocation());
    }
}
