/** The page of lists for the mail-ballot desk: what it is to be told, what it answered, the file of each list. */
@NullMarked
package org.proviso.review.ui.mail;

import org.jspecify.annotations.NullMarked;
