/** Fields and buttons that forms are made of, with their keys and their errors. */
@NamedInterface("field")
@NullMarked
package org.proviso.ui.field;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
