/** A canvass with everything that can go wrong in one, played in a browser to its certificate. */
@NullMarked
package org.proviso.browser.twists;

import org.jspecify.annotations.NullMarked;
