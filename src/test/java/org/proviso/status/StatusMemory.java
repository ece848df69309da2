package org.proviso.status;

import org.proviso.database.TestOffice;

/** What the status page remembers of elections, for a test's office whose rows did not come by a load. */
public final class StatusMemory {

    private StatusMemory() {}

    public static void forget(TestOffice office) {
        office.the(LookupElections.class).forget();
    }
}
