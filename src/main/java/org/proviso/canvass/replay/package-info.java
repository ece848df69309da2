/** Whether the tables of an election say what its ledger says, and the assessments what the rules say. */
@NamedInterface("replay")
@NullMarked
package org.proviso.canvass.replay;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
