/** Orders of courts about an election: recorded, and their standing changed. */
@NamedInterface("orders")
@NullMarked
package org.proviso.election.orders;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
