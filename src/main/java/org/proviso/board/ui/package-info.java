/** The board in the browser: its sessions, one page for a meeting, a single deciding official, the decisions. */
@NullMarked
package org.proviso.board.ui;

import org.jspecify.annotations.NullMarked;
