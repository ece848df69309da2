package org.proviso.status;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.access.WebStaff;
import org.proviso.core.rules.Ask;
import org.proviso.core.rules.Reason;
import org.proviso.election.ElectionService;
import org.springframework.context.ApplicationContext;

/** Lines of the look-up of a running server, as a test wants them. */
public final class StatusLines {

    private static final String ELECTION = "tamarack-primary";

    private StatusLines() {}

    /** Loads the sample primary, unless it is there. */
    public static void loadElection(ApplicationContext server) {
        WebStaff.hire(server, "loads-files", Role.SUPERVISOR);
        Staff.signIn("loads-files");
        server.getBean(ElectionService.class).load(Path.of("sample-cases", ELECTION));
        Staff.signOut();
    }

    /** Puts a line in the place of the one that the receipt has. */
    public static void put(
            ApplicationContext server,
            String receipt,
            LocalDate born,
            OwnState state,
            List<Reason> reasons,
            List<Ask> asks,
            @Nullable LocalDateTime until) {
        StatusHash hash = server.getBean(OfficeSecret.class).hash();
        StatusLineStore lines = server.getBean(StatusLineStore.class);
        lines.removeReceipt(hash.receipt(receipt));
        lines.insert(new StatusLine(
                hash.line(receipt, born),
                hash.receipt(receipt),
                ELECTION,
                state,
                reasons,
                asks,
                until,
                Instant.parse("2026-08-06T16:00:00Z")));
    }
}
