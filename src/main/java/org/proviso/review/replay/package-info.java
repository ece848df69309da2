/**
 * Compares what the tables say of cases with what the ledger recorded, and assesses old cases again.
 * It changes nothing.
 */
@NamedInterface("replay")
@NullMarked
package org.proviso.review.replay;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
