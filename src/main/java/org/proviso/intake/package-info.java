/** What comes in: transmittals, envelopes with their affirmations, and what voters bring later. */
@ApplicationModule(allowedDependencies = {"files", "ledger", "access", "ui", "election"})
@NullMarked
package org.proviso.intake;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
