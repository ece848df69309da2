/** The election's deadlines in the order of their days, as a page and as a calendar file. */
@NullMarked
package org.proviso.today.calendar;

import org.jspecify.annotations.NullMarked;
