/** The pages of Review: queue, case, signatures, second review. */
@NullMarked
package org.proviso.review.ui;

import org.jspecify.annotations.NullMarked;
