/** The canvass: whether the numbers of every voting location and of the county add up. */
@ApplicationModule(
        allowedDependencies = {"ledger", "access", "ui", "election", "intake", "review", "board", "release", "notices"})
@NullMarked
package org.proviso.canvass;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
