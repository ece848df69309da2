/**
 * What is shown and kept of a session: minutes, the room display, the page of a meeting.
 * Also how the board's tables compare with the ledger.
 */
@NamedInterface("record")
@NullMarked
package org.proviso.board.record;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
