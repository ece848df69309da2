package org.proviso.cli.sample;

import java.util.ArrayList;
import java.util.List;

/**
 * The return of each voting location with its envelopes. One may never have come, and one may be wrong by one. An
 * envelope that was spoiled is not counted as issued too: supplied is issued, spoiled, unused and missing together.
 */
final class Bags {

    private static final int SUPPLIED = 60;

    private final Desk desk;
    private final Dice dice;

    Bags(Desk desk, Dice dice) {
        this.desk = desk;
        this.dice = dice;
    }

    List<Row> transmittals() {
        List<Row> rows = new ArrayList<>();
        int bag = 0;
        for (String location : desk.town.locations()) {
            bag++;
            if (!location.equals(desk.plan.missingTransmittal())) {
                rows.add(transmittal(location, bag));
            }
        }
        return rows;
    }

    private Row transmittal(String location, int bag) {
        int wrong = location.equals(desk.plan.wrongTransmittal()) ? 1 : 0;
        int returned = (int) desk.drafts.stream()
                        .filter(draft -> draft.get("voting_location").equals(location))
                        .count()
                + wrong;
        int spoiled = dice.below(2);
        String seal = dice.digits(6);
        Row row = new Row(Columns.TRANSMITTALS).set("voting_location", location).set("day", desk.plan.date());
        row.set("bag", "B" + (bag < 10 ? "0" : "") + bag).set("seal_out", seal).set("seal_in", seal);
        row.set("supplied", SUPPLIED).set("issued", returned).set("spoiled", spoiled);
        row.set("unused", SUPPLIED - returned - spoiled).set("returned", returned);
        return row.set("scanned_in_error", 0).set("loose_ballots", 0);
    }
}
