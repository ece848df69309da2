/**
 * What the rules say of each case, kept row by row and renewed when anything under it changes.
 * Also what other rules would say, and which values still wait for the office's ruling.
 */
@NamedInterface("assess")
@NullMarked
package org.proviso.review.assess;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
