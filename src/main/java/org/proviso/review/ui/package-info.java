/** The pages of Review: the queue, the case, the signature, the second reader. */
@NullMarked
package org.proviso.review.ui;

import org.jspecify.annotations.NullMarked;
