/** Correcting what was received and keyed of an envelope: what was wrong, what is right, and why. */
@NamedInterface("correction")
@NullMarked
package org.proviso.intake.correction;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
