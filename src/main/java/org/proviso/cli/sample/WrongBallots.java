package org.proviso.cli.sample;

import java.util.List;
import java.util.function.Predicate;

/** Voters who were given a ballot of another place in the same county. */
final class WrongBallots {

    private final Desk desk;

    WrongBallots(Desk desk) {
        this.desk = desk;
    }

    /** States that the contests the cast ballot shares with the right one count. */
    static void inPart(Desk desk, Draft draft, String right) {
        draft.contests = desk.town.ballots.common(draft.get("ballot_style_cast"), right);
        draft.note("right style " + right);
    }

    void wrongPlace(int count) {
        desk.times(count, () -> {
            Draft draft = desk.ordinary("wrong_style", Outcome.PART).because("wrong_place");
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
            Person person = desk.take(candidate -> Desk.ordinary(candidate) && otherSplit(candidate.home.part()));
            Draft draft = desk.of(person, "wrong_split", Outcome.PART).because("name_mismatch");
            miscast(draft, part -> part.precinct().equals(person.home.part().precinct()));
        });
    }

    private boolean otherSplit(Part home) {
        return desk.town.parts.stream()
                .anyMatch(part -> part.precinct().equals(home.precinct())
                        && desk.town.ballots.exceeds(desk.town.styleOf(part, ""), desk.town.styleOf(home, "")));
    }

    /** The other ballot holds fewer contests and all of them are the voter's: it counts as it is. */
    void smaller(int count) {
        desk.times(count, () -> {
            Person person = desk.take(candidate ->
                    Desk.ordinary(candidate) && !within(candidate.home.part()).isEmpty());
            Draft draft =
                    desk.of(person, "wrong_style_all_shared", Outcome.COUNT).because("wrong_place");
            desk.castAs(draft, desk.dice.pick(within(person.home.part())), person.party());
            draft.note("every contest on the ballot cast is also the voter's");
        });
    }

    private List<Part> within(Part home) {
        return desk.town.parts.stream()
                .filter(part -> !part.style().equals(home.style())
                        && !desk.town.ballots.exceeds(desk.town.styleOf(part, ""), desk.town.styleOf(home, "")))
                .toList();
    }

    void federalOnly(int withRightStyle, int withOther) {
        desk.times(withRightStyle, () -> federalOnly(false));
        desk.times(withOther, () -> federalOnly(true));
    }

    private void federalOnly(boolean otherStyle) {
        Draft draft = desk.ordinary("federal_only", Outcome.PART).because("not_on_list");
        draft.person.roll.set("entitlement", "federal_only");
        if (otherStyle) {
            miscast(draft, part -> true);
        } else {
            inPart(desk, draft, draft.get("ballot_style_cast"));
        }
        draft.contests =
                draft.contests.stream().filter(desk.town.ballots::federal).toList();
    }

    /** Casts the ballot of another part that has a contest too many, near the voter's own if there is one. */
    void miscast(Draft draft, Predicate<Part> test) {
        String party = draft.person.party();
        String right = desk.town.styleOf(draft.person.home.part(), party);
        Predicate<Part> wrong = part -> desk.town.ballots.exceeds(desk.town.styleOf(part, party), right);
        desk.castAs(draft, desk.town.partLike(draft.person.home.part(), wrong.and(test), desk.dice), party);
        inPart(desk, draft, right);
    }
}
