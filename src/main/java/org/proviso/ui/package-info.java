/** What every page shares: the marks, and the parts of a page. It knows no feature. */
@ApplicationModule(allowedDependencies = {})
@NullMarked
package org.proviso.ui;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
