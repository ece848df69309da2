/** Notices: what each voter must be told and by when, the letters, and the log of every attempt to tell. */
@ApplicationModule(
        allowedDependencies = {
            "ledger",
            "access",
            "ui",
            "ui :: field",
            "ui :: frame",
            "election",
            "roll",
            "intake",
            "review",
            "review :: acts",
            "review :: decide",
            "review :: news"
        })
@NullMarked
package org.proviso.notices;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
