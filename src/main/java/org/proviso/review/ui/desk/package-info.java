/** The parts of the case page: what the envelope says, what the records say, what the law asks, and the acts. */
@NullMarked
package org.proviso.review.ui.desk;

import org.jspecify.annotations.NullMarked;
