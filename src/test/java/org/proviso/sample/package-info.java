/**
 * Makes the invented sample elections that are published with the program: a seed gives the county, its roll, the
 * envelopes, the records beside them, and the truth about each envelope. It states that truth itself and calls none of
 * the code that is tested against it.
 */
@NullMarked
package org.proviso.sample;

import org.jspecify.annotations.NullMarked;
