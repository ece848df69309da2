/** Finding an envelope or a voter by what somebody typed. */
@NamedInterface("find")
@NullMarked
package org.proviso.review.find;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
