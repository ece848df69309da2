/**
 * How a case is settled, and opened again: the only way by which a decider or a court changes it.
 * The checks that stand before a decision live here too.
 */
@NamedInterface("decide")
@NullMarked
package org.proviso.review.decide;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
