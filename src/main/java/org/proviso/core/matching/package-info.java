/** Who is this voter: normalising, roll index, scoring, verdicts. */
@NullMarked
package org.proviso.core.matching;

import org.jspecify.annotations.NullMarked;
