/** The kinds of work that are left before closing, in their order: what, by whom, on which page. */
@NamedInterface("steps")
@NullMarked
package org.proviso.canvass.steps;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
