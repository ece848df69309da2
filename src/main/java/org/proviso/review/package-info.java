/** The case of each envelope: what the office holds about it, as the fact finder reads it, and where it stands. */
@ApplicationModule(
        allowedDependencies = {
            "files",
            "files :: csv",
            "files :: election",
            "files :: table",
            "ledger",
            "access",
            "ui",
            "ui :: field",
            "ui :: frame",
            "election",
            "election :: clock",
            "election :: orders",
            "roll",
            "roll :: aside",
            "intake",
            "intake :: correction",
            "intake :: cure",
            "intake :: keying",
            "intake :: numbers"
        })
@NullMarked
package org.proviso.review;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
