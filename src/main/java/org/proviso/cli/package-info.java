/**
 * The shell's side of the program. File verbs run before the server's framework starts, on core and files only.
 */
@ApplicationModule(allowedDependencies = "files")
@NullMarked
package org.proviso.cli;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
