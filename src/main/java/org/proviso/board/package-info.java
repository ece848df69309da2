/** The decider at work: sessions, agenda, motions, votes and minutes. It changes a case only by calling review. */
@ApplicationModule(allowedDependencies = {"ledger", "access", "ui", "election", "intake", "review"})
@NullMarked
package org.proviso.board;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
