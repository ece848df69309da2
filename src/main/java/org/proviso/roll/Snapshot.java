package org.proviso.roll;

/** A list as loaded on a day: its number in the election, its kind, and how many rows it has. */
record Snapshot(int number, SnapshotKind kind, int rows) {}
