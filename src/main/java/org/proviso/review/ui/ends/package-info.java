/** What is asked and shown where a case ends without a decision: sheets, buttons, the form for another county. */
@NullMarked
package org.proviso.review.ui.ends;

import org.jspecify.annotations.NullMarked;
