/**
 * The shell's side of the program. File verbs run before the server's framework starts, on core and files only; verbs on
 * the office's database start its services without a server; a demonstration gets its sample from here.
 */
@ApplicationModule(
        allowedDependencies = {
            "files",
            "files :: csv",
            "files :: election",
            "files :: flow",
            "files :: ledger",
            "files :: mapping",
            "files :: packs",
            "files :: roll",
            "ledger",
            "access",
            "ui",
            "election",
            "election :: clock",
            "status",
            "canvass",
            "canvass :: replay"
        })
@NullMarked
package org.proviso.cli;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
