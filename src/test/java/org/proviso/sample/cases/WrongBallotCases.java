package org.proviso.sample.cases;

import java.util.List;
import java.util.function.Predicate;
import org.proviso.sample.county.CountyPart;
import org.proviso.sample.county.Resident;
import org.proviso.sample.envelope.DraftEnvelope;
import org.proviso.sample.envelope.EnvelopeDesk;
import org.proviso.sample.envelope.TrueOutcome;

/** Voters who were given a ballot of another place in the same county. */
final class WrongBallotCases {

    private final EnvelopeDesk desk;

    WrongBallotCases(EnvelopeDesk desk) {
        this.desk = desk;
    }

    /** States that the contests the cast ballot shares with the right one count. */
    static void inPart(EnvelopeDesk desk, DraftEnvelope draft, String right) {
        draft.contests = desk.county.ballots.common(draft.get("ballot_style_cast"), right);
        draft.note("right style " + right);
    }

    void wrongPlace(int count) {
        desk.times(count, () -> {
            DraftEnvelope draft = desk.ordinary("wrong_style", TrueOutcome.PART).because("wrong_place");
            miscast(draft, part -> true);
            if (desk.dice.chance(0.35)) {
                draft.set("sent_here_by_official", "yes");
                draft.set("official_note", "Voter was sent here by the official at the other table.");
            }
        });
    }

    /** The voter lives in one split and got the ballot of the other split of the same precinct. */
    void otherSplit(int count) {
        desk.times(count, () -> {
            Resident person =
                    desk.take(candidate -> EnvelopeDesk.ordinary(candidate) && otherSplit(candidate.home.part()));
            DraftEnvelope draft =
                    desk.of(person, "wrong_split", TrueOutcome.PART).because("name_mismatch");
            miscast(draft, part -> part.precinct().equals(person.home.part().precinct()));
        });
    }

    private boolean otherSplit(CountyPart home) {
        return desk.county.parts.stream()
                .anyMatch(part -> part.precinct().equals(home.precinct())
                        && desk.county.ballots.exceeds(desk.county.styleOf(part, ""), desk.county.styleOf(home, "")));
    }

    /** The other ballot holds fewer contests and all of them are the voter's: it counts as it is. */
    void smaller(int count) {
        desk.times(count, () -> {
            Resident person = desk.take(candidate -> EnvelopeDesk.ordinary(candidate)
                    && !within(candidate.home.part()).isEmpty());
            DraftEnvelope draft =
                    desk.of(person, "wrong_style_all_shared", TrueOutcome.COUNT).because("wrong_place");
            desk.castAs(draft, desk.dice.pick(within(person.home.part())), person.party());
            draft.note("every contest on the ballot cast is also the voter's");
        });
    }

    private List<CountyPart> within(CountyPart home) {
        return desk.county.parts.stream()
                .filter(part -> !part.style().equals(home.style())
                        && !desk.county.ballots.exceeds(desk.county.styleOf(part, ""), desk.county.styleOf(home, "")))
                .toList();
    }

    void federalOnly(int withRightStyle, int withOther) {
        desk.times(withRightStyle, () -> federalOnly(false));
        desk.times(withOther, () -> federalOnly(true));
    }

    private void federalOnly(boolean otherStyle) {
        DraftEnvelope draft = desk.ordinary("federal_only", TrueOutcome.PART).because("not_on_list");
        draft.person.roll.set("entitlement", "federal_only");
        if (otherStyle) {
            miscast(draft, part -> true);
        } else {
            inPart(desk, draft, draft.get("ballot_style_cast"));
        }
        draft.contests =
                draft.contests.stream().filter(desk.county.ballots::federal).toList();
    }

    /** Casts the ballot of another part that has a contest too many, near the voter's own if there is one. */
    void miscast(DraftEnvelope draft, Predicate<CountyPart> test) {
        String party = draft.person.party();
        String right = desk.county.styleOf(draft.person.home.part(), party);
        Predicate<CountyPart> wrong = part -> desk.county.ballots.exceeds(desk.county.styleOf(part, party), right);
        desk.castAs(draft, desk.county.partLike(draft.person.home.part(), wrong.and(test), desk.dice), party);
        inPart(desk, draft, right);
    }
}
