package org.proviso.core.adjudication;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.proviso.core.CourtOrder;
import org.proviso.core.Election;
import org.proviso.core.ElectionId;

/** An invented county's election of 3 November 2026; the polls close at 7 pm. */
final class SmallElection {

    static final Election GENERAL = of(Election.Kind.GENERAL);
    static final Election PRIMARY = of(Election.Kind.PRIMARY);

    private SmallElection() {}

    static Election of(Election.Kind kind, CourtOrder... orders) {
        return new Election(
                new ElectionId("small"),
                "Small Election",
                LocalDate.of(2026, 11, 3),
                kind,
                "example",
                ZoneId.of("America/Chicago"),
                "example",
                new Election.DecidingBody(3, 2),
                new Election.Office(
                        "Small County Elections", "1 Court Sq", "555-0100", "elections@small.example", Map.of()),
                LocalTime.of(19, 0),
                List.of("en"),
                List.of(orders),
                Set.of(),
                List.of(),
                Election.Receipts.OWN);
    }
}
