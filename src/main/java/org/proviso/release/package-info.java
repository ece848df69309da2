/** Release: envelopes that count are opened in batches, parts are remade, and ballots handed to tabulation, secrecy kept. */
@ApplicationModule(
        allowedDependencies = {
            "ledger",
            "access",
            "ui",
            "ui :: field",
            "ui :: frame",
            "election",
            "review",
            "review :: decide",
            "review :: mail"
        })
@NullMarked
package org.proviso.release;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
