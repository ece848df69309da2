/**
 * Matching again after a late roll: only envelopes near a voter who changed.
 * The answers are those of a new index.
 */
@NullMarked
package org.proviso.core.matching.late;

import org.jspecify.annotations.NullMarked;
