/** The roll as a file: CSV, or Voter Records Interchange JSON, read whole or scanned for matching. */
@NamedInterface("roll")
@NullMarked
package org.proviso.files.roll;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
