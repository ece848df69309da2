package org.proviso.core;

/** Which contests a registration entitles to: all, or those for federal office only. */
public enum Entitlement implements Code {
    FULL,
    FEDERAL_ONLY
}
