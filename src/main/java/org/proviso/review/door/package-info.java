/**
 * The one door through which acts on cases go: lock in order, refuse, save, assess anew, record, announce.
 * What is particular to an act is in its service.
 */
@NamedInterface("door")
@NullMarked
package org.proviso.review.door;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
