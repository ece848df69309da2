/** Election calendar: holidays, days closed, typed deadline rules. */
@NullMarked
package org.proviso.core.calendar;

import org.jspecify.annotations.NullMarked;
