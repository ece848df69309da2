package org.proviso.status;

import static org.proviso.core.act.ActResults.accepted;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.access.WebStaff;
import org.proviso.core.ElectionId;
import org.proviso.core.Envelope.Source;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.rules.Reason;
import org.proviso.election.ElectionLoadService;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;

/** Lines of the look-up of a running server, as a test wants them. */
public final class StatusLines {

    private static final String ELECTION = "tamarack-primary";
    private static final Arrival FROM_THE_LIBRARY = new Arrival(Source.POLL, "Library", LocalDate.of(2026, 8, 4), true);

    private StatusLines() {}

    /** Loads the sample primary, unless it is there. */
    public static void loadElection(ApplicationContext server) {
        WebStaff.hire(server, "loads-files", Role.SUPERVISOR);
        Staff.signIn("loads-files");
        accepted(server.getBean(ElectionLoadService.class).load(Path.of("sample-cases", ELECTION)));
        Staff.signOut();
    }

    /** Puts a line in the place of the one that the receipt has. */
    public static void put(
            ApplicationContext server,
            ReceiptNumber receipt,
            LocalDate born,
            VoterCaseState state,
            List<Reason> reasons,
            List<VoterAsk> asks) {
        put(server, receipt, born, state, reasons, asks, FROM_THE_LIBRARY, true);
    }

    /** Takes the line of a receipt away. */
    public static void remove(ApplicationContext server, ReceiptNumber receipt) {
        StatusHash hash = server.getBean(OfficeSecret.class).hash();
        server.getBean(JdbcClient.class)
                .sql("delete from status_line where receipt_hash = ?")
                .param(hash.receipt(receipt))
                .update();
    }

    /** The same, come in another way, or with a registration that was not found. */
    public static void put(
            ApplicationContext server,
            ReceiptNumber receipt,
            LocalDate born,
            VoterCaseState state,
            List<Reason> reasons,
            List<VoterAsk> asks,
            Arrival arrival,
            boolean registrationFound) {
        StatusHash hash = server.getBean(OfficeSecret.class).hash();
        remove(server, receipt);
        server.getBean(StatusLineStore.class)
                .insert(new StatusLine(
                        hash.line(receipt, born),
                        hash.envelope(new EnvelopeKey(new ElectionId(ELECTION), new EnvelopeNumber("of " + receipt))),
                        hash.receipt(receipt),
                        new ElectionId(ELECTION),
                        state,
                        reasons,
                        asks,
                        arrival,
                        registrationFound,
                        Instant.parse("2026-08-06T16:00:00Z")));
    }
}
