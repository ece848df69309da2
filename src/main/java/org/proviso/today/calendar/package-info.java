/** The election's deadlines by date, as a page and as a calendar file. */
@NullMarked
package org.proviso.today.calendar;

import org.jspecify.annotations.NullMarked;
