/** Voters who were told another date than the board's meeting, until which they may bring what is missing. */
@NamedInterface("told")
@NullMarked
package org.proviso.notices.told;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
