/**
 * The flow chart of where envelopes went, as SVG.
 * Used by the report of a run and by the page of the canvass.
 */
@NamedInterface("flow")
@NullMarked
package org.proviso.files.flow;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
