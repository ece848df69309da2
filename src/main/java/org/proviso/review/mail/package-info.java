/**
 * The lists for the mail-ballot desk: whose mail ballot gives way because the provisional ballot counts, what the desk
 * answered, and which envelopes stay closed until it did.
 */
@NamedInterface("mail")
@NullMarked
package org.proviso.review.mail;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
