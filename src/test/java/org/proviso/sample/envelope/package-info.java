/** Envelopes in the making: filled in as a careful voter would, with the other records of the day beside them. */
@NullMarked
package org.proviso.sample.envelope;

import org.jspecify.annotations.NullMarked;
