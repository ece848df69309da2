/** How many cases there are in each state and with each outcome; it reads and changes nothing. */
@NamedInterface("counts")
@NullMarked
package org.proviso.review.counts;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
