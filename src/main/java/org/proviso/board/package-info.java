/** The decider at work: sessions, agenda, motions, votes and minutes. It changes a case only by calling review. */
@ApplicationModule(
        allowedDependencies = {
            "ledger",
            "access",
            "ui",
            "ui :: field",
            "ui :: frame",
            "election",
            "intake",
            "review",
            "review :: acts",
            "review :: assess",
            "review :: decide",
            "review :: ends"
        })
@NullMarked
package org.proviso.board;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
