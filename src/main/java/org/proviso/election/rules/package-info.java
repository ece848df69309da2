/** Acts that change the rules of an election: county rulings, and a pack put in force. */
@NamedInterface("rules")
@NullMarked
package org.proviso.election.rules;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
