/**
 * Motions and votes: what may be moved, who may vote, when a vote closes and what it means.
 * An official who decides alone acts here too.
 */
@NamedInterface("motion")
@NullMarked
package org.proviso.board.motion;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
