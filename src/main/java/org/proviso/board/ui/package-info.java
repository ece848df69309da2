/** The board in the browser: its sessions, one page for a meeting, an official who decides alone, what stands. */
@NullMarked
package org.proviso.board.ui;

import org.jspecify.annotations.NullMarked;
