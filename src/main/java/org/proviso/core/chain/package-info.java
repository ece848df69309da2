/** Hashing and verifying the entries of the ledger. */
@NullMarked
package org.proviso.core.chain;

import org.jspecify.annotations.NullMarked;
