/**
 * An election folder: one reader for each of its files, and the checks across them.
 * A folder read whole is the records of an election.
 */
@NamedInterface("election")
@NullMarked
package org.proviso.files.election;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
