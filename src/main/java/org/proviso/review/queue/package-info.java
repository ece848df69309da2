/** What waits and what is settled, counted and listed a screen at a time; it reads and changes nothing. */
@NamedInterface("queue")
@NullMarked
package org.proviso.review.queue;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
