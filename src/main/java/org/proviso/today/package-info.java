/** The start page, and what the server does by itself while it runs. */
@ApplicationModule(allowedDependencies = {"ui", "election", "review"})
@NullMarked
package org.proviso.today;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
