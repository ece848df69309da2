package org.proviso.sample.envelope;

import java.util.ArrayList;
import java.util.List;
import org.proviso.sample.county.Dice;
import org.proviso.sample.county.FileColumns;
import org.proviso.sample.county.FileRow;

/**
 * The return of each voting location with its envelopes. One may never have come, and one may be wrong by one. An
 * envelope that was spoiled is not counted as issued too: supplied is issued, spoiled, unused and missing together.
 */
public final class Transmittals {

    private static final int SUPPLIED = 60;

    private final EnvelopeDesk desk;
    private final Dice dice;

    public Transmittals(EnvelopeDesk desk, Dice dice) {
        this.desk = desk;
        this.dice = dice;
    }

    public List<FileRow> transmittals() {
        List<FileRow> rows = new ArrayList<>();
        int bag = 0;
        for (String location : desk.county.locations()) {
            bag++;
            if (!location.equals(desk.plan.missingTransmittal())) {
                rows.add(transmittal(location, bag));
            }
        }
        return rows;
    }

    private FileRow transmittal(String location, int bag) {
        int wrong = location.equals(desk.plan.wrongTransmittal()) ? 1 : 0;
        int returned = (int) desk.drafts.stream()
                        .filter(draft -> draft.get("voting_location").equals(location))
                        .count()
                + wrong;
        int spoiled = dice.below(2);
        String seal = dice.digits(6);
        FileRow row = new FileRow(FileColumns.TRANSMITTALS)
                .set("voting_location", location)
                .set("day", desk.plan.date());
        row.set("bag", "B" + (bag < 10 ? "0" : "") + bag).set("seal_out", seal).set("seal_in", seal);
        row.set("supplied", SUPPLIED).set("issued", returned).set("spoiled", spoiled);
        row.set("unused", SUPPLIED - returned - spoiled).set("returned", returned);
        return row.set("scanned_in_error", 0).set("loose_ballots", 0);
    }
}
