package org.proviso.core;

/** A yes, a no, or nothing said: what a file or a form leaves out is unknown, never guessed. */
public enum YesNo implements Code {
    YES,
    NO,
    UNKNOWN;

    public boolean isYes() {
        return this == YES;
    }

    public boolean isNo() {
        return this == NO;
    }
}
