/** The canvass: whether the numbers of every voting location and of the county add up. */
@ApplicationModule(
        allowedDependencies = {
            "files :: flow",
            "files :: table",
            "ledger",
            "access",
            "ui",
            "ui :: field",
            "ui :: frame",
            "election",
            "intake",
            "intake :: correction",
            "intake :: cure",
            "intake :: numbers",
            "review",
            "review :: assess",
            "review :: decide",
            "review :: ends",
            "review :: mail",
            "review :: news",
            "review :: replay",
            "board",
            "board :: record",
            "release",
            "notices"
        })
@NullMarked
package org.proviso.canvass;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
