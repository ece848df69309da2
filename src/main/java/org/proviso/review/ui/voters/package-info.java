/** Records of the roll beside what an envelope says, for whoever finds out who the voter is. */
@NullMarked
package org.proviso.review.ui.voters;

import org.jspecify.annotations.NullMarked;
