/** What a vote of the decider means under a resolved rule pack, and what stands in the way of a decision. */
@NullMarked
package org.proviso.core.deciding;

import org.jspecify.annotations.NullMarked;
