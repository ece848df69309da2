/** Set-up: the election's files, newer lists, rules and rulings, court orders, accounts and the clock, on their pages. */
@ApplicationModule(
        allowedDependencies = {
            "files",
            "files :: election",
            "files :: mapping",
            "files :: packs",
            "ledger",
            "access",
            "ui",
            "ui :: field",
            "ui :: frame",
            "election",
            "election :: clock",
            "election :: orders",
            "election :: rules",
            "roll",
            "roll :: aside",
            "intake",
            "review",
            "review :: assess",
            "review :: news",
            "board",
            "release",
            "notices",
            "status",
            "canvass",
            "today"
        })
@NullMarked
package org.proviso.setup;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
