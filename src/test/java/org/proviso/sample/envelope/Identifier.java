package org.proviso.sample.envelope;

/** What a clerk recognizes a person by on an envelope. */
public enum Identifier {
    NAME,
    BIRTH,
    ADDRESS,
    NUMBER
}
