/** Every voting location and its figures on one sheet, typed like a paper form and saved figure by figure. */
@NullMarked
package org.proviso.canvass.sheet;

import org.jspecify.annotations.NullMarked;
