/** The board's pages: its sessions, the display in the room, and the minutes. */
@NullMarked
package org.proviso.board.ui;

import org.jspecify.annotations.NullMarked;
