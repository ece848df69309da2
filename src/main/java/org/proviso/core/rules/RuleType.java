package org.proviso.core.rules;

/** What kind of value a rule takes. */
public enum RuleType {
    /** yes or no. */
    FLAG,
    /** One of a few words. */
    WORD,
    /** Several of a few words. */
    WORDS,
    /** A few words of the state's own. */
    TEXT,
    /** A whole number. */
    NUMBER,
    /** A clock time such as 17:00. */
    TIME,
    /** A typed deadline rule, or the word none: the law sets no such deadline. */
    DEADLINE,
    /** What follows from a reason. */
    CONSEQUENCE
}
