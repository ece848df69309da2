/** Rows of a list that are set aside: how many, where words stand in them, and how one is mended by hand. */
@NamedInterface("aside")
@NullMarked
package org.proviso.roll.aside;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
