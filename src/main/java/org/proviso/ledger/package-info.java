/** The record of acts that is only ever added to; every room records through it. */
@ApplicationModule(allowedDependencies = {"files", "files :: ledger"})
@NullMarked
package org.proviso.ledger;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
