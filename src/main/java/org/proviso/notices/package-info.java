/** Notices: what each voter must be told and by when, the letters, and the log of every attempt to tell. */
@ApplicationModule(allowedDependencies = {"ledger", "access", "ui", "election", "roll", "intake", "review"})
@NullMarked
package org.proviso.notices;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
