/** The case of each envelope: what the office holds about it, as the fact finder reads it, and where it stands. */
@ApplicationModule(allowedDependencies = {"files", "ledger", "access", "ui", "election", "roll", "intake"})
@NullMarked
package org.proviso.review;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
