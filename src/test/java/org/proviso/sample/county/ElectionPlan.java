package org.proviso.sample.county;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.List;

/** What is fixed of one sample election: its name, day, size and deadlines. */
public record ElectionPlan(
        String id,
        String title,
        String kind,
        LocalDate date,
        int voters,
        int mailBallots,
        int checkIns,
        LocalDate lastDayInPerson,
        LocalDate lastPostmark,
        List<String> parties,
        String lateLocation,
        String missingTransmittal,
        String wrongTransmittal,
        String envelopePrefix) {

    static final LocalTime CLOSE = LocalTime.of(20, 0);
    public static final LocalTime EXTENDED_CLOSE = LocalTime.of(21, 0);

    public static final ElectionPlan GENERAL = new ElectionPlan(
            "tamarack-general",
            "Tamarack County General Election",
            "general",
            LocalDate.of(2026, 11, 3),
            20_000,
            3_000,
            9_000,
            LocalDate.of(2026, 10, 19),
            LocalDate.of(2026, 10, 5),
            List.of(""),
            "",
            "Ansel Township Hall",
            "Birch Hall Fire Station",
            "G");

    public static final ElectionPlan PRIMARY = new ElectionPlan(
            "tamarack-primary",
            "Tamarack County Primary",
            "primary",
            LocalDate.of(2026, 8, 4),
            5_000,
            600,
            1_400,
            LocalDate.of(2026, 7, 20),
            LocalDate.of(2026, 7, 6),
            List.of("Harbor", "Granite", ""),
            "Foundry Arts Center",
            "",
            "",
            "P");

    public boolean primary() {
        return parties.size() > 1;
    }

    public LocalDateTime at(int hour, int minute) {
        return date.atTime(hour, minute);
    }
}
