/** What the pages of intake read: lists of envelopes by the page, what each voting location sent back, the next to key. */
@NullMarked
package org.proviso.intake.desk;

import org.jspecify.annotations.NullMarked;
