/** Rule packs and facts as YAML: read, resolved over the floor, and refused where a value has no reference. */
@NamedInterface("packs")
@NullMarked
package org.proviso.files.packs;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
