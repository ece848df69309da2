package org.proviso.core;

/**
 * Where a registration stands on the roll. An inactive voter is registered: 52 USC 20507(d) lets a state ask for an
 * affirmation of the address, never refuse the vote for the status alone.
 */
public enum RollStatus implements Code {
    ACTIVE,
    INACTIVE,
    PENDING,
    CANCELLED
}
