package org.proviso.journey;

import static org.proviso.journey.Office.as;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.database.TestOffice;
import org.proviso.review.news.NewListResult;
import org.proviso.review.news.NewerFileService;
import org.proviso.roll.SnapshotKind;

/** The mail ballots of the sample primary as they might be some days later, brought by Carl and confirmed by Dora. */
public final class NewerMailList {

    private final Primary primary;
    private final List<String> lines;

    public NewerMailList(Primary primary) {
        this.primary = primary;
        try {
            this.lines = new ArrayList<>(Files.readAllLines(Primary.FOLDER.resolve("mail-ballots.csv")));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The voter of this envelope voted by mail after all. */
    public NewerMailList accepted(EnvelopeKey key) {
        return in(key, "accepted");
    }

    /** A mail ballot of the voter of this envelope is in this state. */
    public NewerMailList in(EnvelopeKey key, String state) {
        String voter = primary.truth(key).voterId();
        lines.removeIf(line -> line.startsWith(voter + ","));
        lines.add(voter + ",M9" + (10000 + lines.size()) + ",2026-06-20," + state + ",2026-08-03");
        return this;
    }

    /** Puts the list in use, where somebody else has to confirm it too. */
    public NewListResult inUse() {
        NewerFileService files = files();
        NewListResult brought = brought();
        return brought instanceof NewListResult.WaitsForSecond waits
                ? as("dora", () -> files.confirm(new ElectionId(Primary.ID), waits.snapshotNo()))
                : brought;
    }

    /** Brings the list. */
    public NewListResult brought() {
        try {
            Path file = Files.createTempFile("mail-ballots", ".csv");
            Files.write(file, lines);
            NewListResult brought =
                    as("carl", () -> files().load(new ElectionId(Primary.ID), SnapshotKind.MAIL_BALLOTS, file));
            Files.delete(file);
            return brought;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private NewerFileService files() {
        TestOffice services = primary.office().services();
        return services.the(NewerFileService.class);
    }
}
