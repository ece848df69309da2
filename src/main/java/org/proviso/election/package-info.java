/** Elections as loaded: ballots, precincts, streets, the rules in force, the calendar and the office's clock. */
@ApplicationModule(
        allowedDependencies = {
            "files",
            "files :: csv",
            "files :: election",
            "files :: packs",
            "ledger",
            "access",
            "ui",
            "ui :: field",
            "ui :: frame"
        })
@NullMarked
package org.proviso.election;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
