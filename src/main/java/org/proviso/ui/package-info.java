/** What every page shares: the frame, marks, dates, keys and the parts of a page. It knows no feature. */
@ApplicationModule(allowedDependencies = {"files :: table", "ledger", "access"})
@NullMarked
package org.proviso.ui;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
