package org.proviso.journey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.proviso.journey.Office.as;
import static org.proviso.journey.PageDriver.fill;
import static org.proviso.journey.PageDriver.marked;
import static org.proviso.journey.PageDriver.press;
import static org.proviso.journey.PageDriver.said;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.proviso.core.ElectionId;
import org.proviso.review.news.NewListResult;
import org.proviso.review.news.NewerFileService;
import org.proviso.roll.ListReadService;
import org.proviso.roll.SnapshotKind;
import org.proviso.roll.StagedList;
import org.proviso.ui.MessageLine;
import org.springframework.beans.factory.annotation.Autowired;

/** A list with a row that could not be read, confirmed by a second supervisor and then mended: MendRowSheet. */
@OnPages
class SetAsidePageTest {

    private static final ElectionId ID = new ElectionId(Primary.ID);

    @Autowired
    private PageDriver pages;

    @TempDir
    private Path folder;

    @Test
    void a_second_supervisor_sees_the_rows_and_the_reason_and_confirms() throws IOException {
        PagesOffice.primary();
        Path sample = Primary.FOLDER.resolve("mail-ballots.csv");
        Path file = folder.resolve("mail-ballots.csv");
        Files.writeString(file, Files.readString(sample) + "T0000001,M990001,2026-07-01,void,soon\n");
        NewerFileService newer = PagesOffice.the(NewerFileService.class);
        int number = as("carl", () -> {
            StagedList staged = PagesOffice.the(ListReadService.class).stage(ID, SnapshotKind.MAIL_BALLOTS, file);
            newer.useWithoutAside(ID, staged.snapshotNo(), staged.aside().rowsHash(), "The mail desk is asked for it.");
            return staged.snapshotNo();
        });
        try {
            pages.on("set-up", "dora", () -> {
                assertThat(said()).contains("leaves out 1 row that could not be read");
                press("Review and confirm");
                assertThat(said())
                        .contains("A second vote in one of these rows is not seen.")
                        .contains("Reason given: The mail desk is asked for it.")
                        .contains("\"soon\" is not a date")
                        .contains("T0000001,M990001,2026-07-01,void,soon");
                press("Put list in use");
                assertThat(MessageLine.words()).endsWith("is in use.");
            });
            pages.on(
                    "canvass/closing",
                    "dora",
                    () -> assertThat(said()).contains("row of a list in use that could not be read"));
            pages.on("set-up", "dora", () -> {
                press("Rows set aside of list " + number);
                assertThat(said()).contains("These rows could not be read and are not in use.");
                press("Mend line 602");
                press("Put mended row in use");
                assertThat(said()).contains("As it came: T0000001,M990001,2026-07-01,void,soon");
                assertThat(MessageLine.words()).doesNotContain("mended");
                fill("Reason", "The mail desk's book.");
                press("Put mended row in use");
                assertThat(marked("state_on")).contains("\"soon\" is not a date");
                fill("state_on", "2026-07-02");
                press("Put mended row in use");
                assertThat(MessageLine.words()).isEqualTo("Row mended. 0 cases changed.");
            });
            pages.on("canvass/closing", "dora", () -> assertThat(said()).doesNotContain("that could not be read"));
        } finally {
            assertThat(as("carl", () -> newer.load(ID, SnapshotKind.MAIL_BALLOTS, sample)))
                    .isInstanceOf(NewListResult.InUse.class);
        }
    }
}
