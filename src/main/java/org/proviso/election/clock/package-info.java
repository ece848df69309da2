/** The office's clock, the clock of a demonstration that can be moved forward, and the moment of a list that is read. */
@NamedInterface("clock")
@NullMarked
package org.proviso.election.clock;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
