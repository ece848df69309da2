/** The case of an envelope: where it stands, who has it, what was answered and what is proposed. */
@ApplicationModule(allowedDependencies = {"files", "ledger", "access", "election"})
@NullMarked
package org.proviso.review;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
