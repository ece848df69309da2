/** The start page and the calendar; and what the console says of the server's address. */
@ApplicationModule(
        allowedDependencies = {
            "files",
            "ledger",
            "access",
            "ui",
            "ui :: frame",
            "election",
            "election :: rules",
            "roll",
            "intake",
            "intake :: keying",
            "intake :: numbers",
            "review",
            "review :: acts",
            "review :: decide",
            "review :: ends",
            "review :: mail",
            "review :: news",
            "review :: counts",
            "review :: queue",
            "board",
            "release",
            "notices",
            "notices :: told",
            "status",
            "canvass",
            "canvass :: steps"
        })
@NullMarked
package org.proviso.today;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
