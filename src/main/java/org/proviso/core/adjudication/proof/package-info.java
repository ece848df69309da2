/**
 * The proof of a rule pack: every combination of facts is reduced to its class of answer, and every set of classes is
 * folded, so that nothing is left to sampling.
 */
@NullMarked
package org.proviso.core.adjudication.proof;

import org.jspecify.annotations.NullMarked;
