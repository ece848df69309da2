/**
 * A canvass played by chance: on a small invented election people do in random order what the office lets them do, and
 * what it must refuse. A play is known by its seed.
 */
@NullMarked
package org.proviso.journey.chance;

import org.jspecify.annotations.NullMarked;
