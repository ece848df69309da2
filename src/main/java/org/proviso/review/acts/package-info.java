/**
 * What a reviewer does with a case: confirm a link, answer a question, search, propose, end.
 * Each act is recorded in the ledger in its own transaction.
 */
@NamedInterface("acts")
@NullMarked
package org.proviso.review.acts;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
