/** The lists the office looks things up in: the roll, mail ballots, check-ins and the state's list, as loaded. */
@ApplicationModule(
        allowedDependencies = {
            "files",
            "files :: csv",
            "files :: election",
            "files :: roll",
            "ledger",
            "access",
            "ui",
            "election"
        })
@NullMarked
package org.proviso.roll;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
