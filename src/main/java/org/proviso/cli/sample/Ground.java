package org.proviso.cli.sample;

/** What a clerk recognizes a person by on an envelope. */
enum Ground {
    NAME,
    BIRTH,
    ADDRESS,
    NUMBER
}
