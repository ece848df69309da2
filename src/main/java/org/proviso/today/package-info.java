/** The start page. */
@ApplicationModule(allowedDependencies = "ui")
@NullMarked
package org.proviso.today;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
