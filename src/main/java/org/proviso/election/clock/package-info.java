/** The office's clock, and the clock of a demonstration that can be moved forward. */
@NamedInterface("clock")
@NullMarked
package org.proviso.election.clock;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
