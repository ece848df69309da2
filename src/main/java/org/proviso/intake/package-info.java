/** What comes in: transmittals, envelopes with their affirmations, and what voters bring later. */
@ApplicationModule(
        allowedDependencies = {
            "files",
            "files :: election",
            "files :: ledger",
            "ledger",
            "access",
            "ui",
            "ui :: field",
            "ui :: frame",
            "election",
            "election :: orders"
        })
@NullMarked
package org.proviso.intake;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
