/**
 * From answers to a recommendation: the fold, the assessment and its clocks.
 * How answers combine is decided in the fold and nowhere else.
 */
@NullMarked
package org.proviso.core.adjudication.judging;

import org.jspecify.annotations.NullMarked;
