/** The page of the ledger: its entries, the newest first, and the check of its chain. */
@ApplicationModule(allowedDependencies = {"ledger", "access", "ui", "ui :: field", "ui :: frame"})
@NullMarked
package org.proviso.ledger.ui;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
