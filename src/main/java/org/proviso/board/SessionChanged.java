package org.proviso.board;

/** A session was called, opened or closed; later rooms hear of it in the same transaction. */
public record SessionChanged(BoardSession session) {}
