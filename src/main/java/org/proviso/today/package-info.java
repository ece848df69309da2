/** The start page, and what the server does by itself while it runs. */
@ApplicationModule(
        allowedDependencies = {
            "files",
            "ledger",
            "access",
            "ui",
            "ui :: frame",
            "election",
            "election :: clock",
            "roll",
            "intake",
            "intake :: keying",
            "review",
            "review :: news",
            "review :: queue",
            "board",
            "release",
            "notices",
            "status",
            "canvass"
        })
@NullMarked
package org.proviso.today;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
