/**
 * The invented sample elections: a seeded generator of rolls, envelopes and signatures together with the truth about
 * each envelope. It states that truth itself and calls none of the code that is tested against it.
 */
@NullMarked
package org.proviso.cli.sample;

import org.jspecify.annotations.NullMarked;
