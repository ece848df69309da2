package org.proviso.intake;

import static org.proviso.core.act.ActResults.accepted;

import java.nio.file.Path;
import java.util.List;
import org.proviso.access.Role;
import org.proviso.access.Staff;
import org.proviso.core.ElectionId;
import org.proviso.core.chain.LedgerEntry;
import org.proviso.database.TestOffice;
import org.proviso.election.ElectionLoadService;
import org.proviso.ledger.LedgerChain;
import org.proviso.ledger.LedgerService;

/** An office with the samples' primary of August 4, 2026, in it, loaded by a supervisor who is called Hugh. */
public final class LoadedOffice {

    public static final String ID = "tamarack-primary";

    private LoadedOffice() {}

    /** Loads the election; Hugh stays signed in. */
    public static void primary(TestOffice office) {
        office.begin("the primary, loaded by Hugh", () -> load(office));
        Staff.signIn("hugh");
    }

    private static void load(TestOffice office) {
        Staff.hire(office, "hugh", Role.SUPERVISOR);
        Staff.signIn("hugh");
        accepted(office.the(ElectionLoadService.class).load(Path.of("sample-cases", ID)));
    }

    /** The last entry of the election's chain. */
    public static LedgerEntry lastEntry(TestOffice office) {
        List<LedgerEntry> entries = office.the(LedgerService.class).read(LedgerChain.of(new ElectionId(ID)), 0, 1_000);
        return entries.get(entries.size() - 1);
    }
}
