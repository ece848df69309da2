/** What voters bring after election day, by its stamp; and its comparison with the ledger. */
@NamedInterface("cure")
@NullMarked
package org.proviso.intake.cure;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
