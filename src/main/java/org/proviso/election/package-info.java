/** Elections as loaded: ballots, precincts, streets, the rules in force, the calendar and the office's clock. */
@ApplicationModule(allowedDependencies = {"files", "ledger", "access", "ui"})
@NullMarked
package org.proviso.election;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
