/** The voter's own look-up: a narrow table of its own, made from what review and board announce, that says nobody's name. */
@ApplicationModule(
        allowedDependencies = {
            "files",
            "files :: packs",
            "access",
            "ui",
            "election",
            "election :: orders",
            "review",
            "review :: news",
            "board"
        })
@NullMarked
package org.proviso.status;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
