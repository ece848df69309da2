/** Which contests of a cast ballot the voter may vote. */
@NullMarked
package org.proviso.core.contests;

import org.jspecify.annotations.NullMarked;
