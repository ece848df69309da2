/** Keying what an envelope says: drafts, the second keying, and the differences between the two. */
@NamedInterface("keying")
@NullMarked
package org.proviso.intake.keying;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
