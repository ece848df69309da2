/** Rule packs: one jurisdiction's dated parameters with references, and the proof over them. */
@NullMarked
package org.proviso.core.rules;

import org.jspecify.annotations.NullMarked;
