/** Who works here, who may do what, and who may not do it alone. */
@ApplicationModule(allowedDependencies = "ledger")
@NullMarked
package org.proviso.access;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
