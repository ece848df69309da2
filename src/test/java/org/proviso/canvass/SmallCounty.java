package org.proviso.canvass;

import java.util.Map;

/** Counts of an invented county that add up, to be changed figure by figure. */
final class SmallCounty {

    static final PlaceFigures MILL_POND = location(11, 2, 1, 3);
    static final PlaceFigures TOWN_HALL = location(7, 0, 2, 0);

    private SmallCounty() {}

    /** Of so many received so many count in part, are rejected and are undecided; one that went out never came. */
    static PlaceFigures location(int received, int part, int rejected, int pending) {
        int issued = received + 1;
        return new PlaceFigures(Map.of())
                .with(Figure.SUPPLIED, issued + 1 + 20 + 2)
                .with(Figure.ISSUED, issued)
                .with(Figure.SPOILED, 1)
                .with(Figure.UNUSED, 20)
                .with(Figure.MISSING, 2)
                .with(Figure.SCANNED_IN_ERROR, 0)
                .with(Figure.CHANGED_SEALS, 0)
                .with(Figure.LOOSE_BALLOTS, 0)
                .with(Figure.SENT_BACK, received)
                .with(Figure.RECEIVED, received)
                .with(Figure.UNACCOUNTED, 1)
                .with(Figure.COUNTED, received - part - rejected - pending)
                .with(Figure.COUNTED_IN_PART, part)
                .with(Figure.REJECTED, rejected)
                .with(Figure.SENT_ON, 0)
                .with(Figure.ENDED, 0)
                .with(Figure.PENDING, pending)
                .with(Figure.HELD_BY_LAW, pending)
                .with(Figure.BY_ISSUE_REASON, received)
                .with(Figure.BY_STATE, received)
                .with(Figure.BY_REJECTION_REASON, rejected);
    }

    static CanvassFigures accounts(VotingHours hours, Map<String, PlaceFigures> locations) {
        PlaceFigures sum = PlaceFigures.sum(locations.values());
        int counted = sum.number(Figure.COUNTED) + sum.number(Figure.COUNTED_IN_PART);
        PlaceFigures county = new PlaceFigures(Map.of(Figure.RECEIVED, sum.number(Figure.RECEIVED)))
                .with(Figure.EMPTY, 1)
                .with(Figure.HANDED_OFF, counted - 1)
                .with(Figure.TABULATED, counted - 1)
                .with(Figure.REMADE, sum.number(Figure.COUNTED_IN_PART))
                .with(Figure.CREDITED, counted)
                .with(Figure.CURE_DEFECTS, 5)
                .with(Figure.ASK_NOTICES, 5)
                .with(Figure.OUTCOME_NOTICES, sum.number(Figure.REJECTED) + sum.number(Figure.COUNTED_IN_PART));
        return new CanvassFigures(hours, locations, county);
    }

    static CanvassFigures accounts(PlaceFigures millPond, PlaceFigures townHall) {
        CanvassFigures sound =
                accounts(VotingHours.REGULAR, Map.of("Mill Pond Library", MILL_POND, "Town Hall", TOWN_HALL));
        return new CanvassFigures(
                VotingHours.REGULAR, Map.of("Mill Pond Library", millPond, "Town Hall", townHall), sound.ofCounty());
    }
}
