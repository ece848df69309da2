/**
 * What is ready to be decided and what is on the agenda of a session.
 * Envelopes alike are grouped, so that one motion can settle them.
 */
@NamedInterface("agenda")
@NullMarked
package org.proviso.board.agenda;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
