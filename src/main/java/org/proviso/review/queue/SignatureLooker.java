package org.proviso.review.queue;

import org.jspecify.annotations.Nullable;
import org.proviso.core.UserName;

/**
 * Who may look at a signature next. Where the law wants two parties to find it different, {@code otherPartyThan} is the party
 * of the looker, of which the first reviewer must not be; null where it does not matter.
 */
record SignatureLooker(UserName userName, @Nullable String otherPartyThan) {}
