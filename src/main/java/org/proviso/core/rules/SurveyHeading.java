package org.proviso.core.rules;

import org.proviso.core.Code;

/**
 * The heading under which a reason is reported in the federal survey (EAC, Election Administration and Voting
 * Survey, section E, reasons for rejecting; codes differ by year, the headings do not).
 */
public enum SurveyHeading implements Code {
    NOT_REGISTERED,
    OTHER_JURISDICTION,
    WRONG_PRECINCT,
    NO_IDENTIFICATION,
    INCOMPLETE,
    BALLOT_MISSING,
    NO_SIGNATURE,
    SIGNATURE_DIFFERS,
    ALREADY_VOTED,
    OTHER
}
