/** The frame around every page: menu, election, line of work under way, and pages for what cannot be shown. */
@NamedInterface("frame")
@NullMarked
package org.proviso.ui.frame;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
