/** Who may open what. Today every page is open to everyone, because the server holds no case yet. */
@ApplicationModule(allowedDependencies = {})
@NullMarked
package org.proviso.access;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
