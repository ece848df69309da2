package org.proviso.roll;

import java.time.Instant;

/** A list that the office holds: its number and kind, how many rows, when it was read, whether it is in use, and how many are set aside. */
public record HeldList(int snapshotNo, SnapshotKind kind, int rows, Instant loadedAt, boolean inUse, int rowsAside) {}
