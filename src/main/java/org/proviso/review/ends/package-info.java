/**
 * Ends of a case that are no decision on the vote: what is proposed to end so, the other county's receipt for what was sent
 * on, and the way back.
 */
@NamedInterface("ends")
@NullMarked
package org.proviso.review.ends;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
