/** How the envelopes ended by the reasons for which they were issued and rejected, as figures for a page. */
@NullMarked
package org.proviso.canvass.outcomes;

import org.jspecify.annotations.NullMarked;
