/** Notes on a case, at its head. */
@NullMarked
package org.proviso.review.ui.notes;

import org.jspecify.annotations.NullMarked;
