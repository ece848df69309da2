/** Exported ledgers: one entry a line, as JSON. */
@NamedInterface("ledger")
@NullMarked
package org.proviso.files.ledger;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
