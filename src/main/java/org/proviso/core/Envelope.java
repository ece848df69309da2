package org.proviso.core;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * One sealed provisional ballot with its affirmation, as keyed. Text not given is empty; a receipt number and dates not
 * given are null; times are local to the county.
 */
public record Envelope(
        EnvelopeNumber envelopeNo,
        @Nullable ReceiptNumber receiptNo,
        Source source,
        Cast cast,
        Affirmation affirmation,
        Handling handling) {

    /** Where the envelope came from. */
    public enum Source implements Code {
        POLL,
        MAIL_WITHOUT_ID,
        OTHER_COUNTY
    }

    /** When, where and with which ballot it was cast, and why it was provisional. */
    public record Cast(
            String votingLocation,
            String precinct,
            String ballotStyle,
            String partyBallot,
            @Nullable LocalDateTime at,
            YesNo extendedHours,
            YesNo inLineAtClose,
            Set<String> issueReasons) {}

    /**
     * What the voter wrote. Field states name only the fields that were not simply keyed. A date of birth that no calendar
     * has, or only a part of one, is kept as written; then the birth date is null.
     */
    public record Affirmation(
            PersonName name,
            String formerName,
            @Nullable LocalDate birthDate,
            String birthDateAsWritten,
            Address residence,
            Address former,
            @Nullable LocalDate movedOn,
            String mailAddress,
            String idLast4,
            String driversLicense,
            String phone,
            String email,
            String language,
            String party,
            Set<String> statementsTicked,
            Map<Field, FieldState> fieldStates) {}

    /** What was shown and signed at the table, and in what condition the envelope came. */
    public record Handling(
            YesNo idShown,
            String idKind,
            String declaration,
            YesNo mailBallotSurrendered,
            YesNo sentHereByOfficial,
            String officialNote,
            VoterSignature voterSigned,
            YesNo markWitness,
            YesNo officialSigned,
            Condition condition,
            String signatureImage) {}

    /** How the voter signed the affirmation. */
    public enum VoterSignature implements Code {
        YES,
        NO,
        MARK,
        UNKNOWN
    }

    /**
     * The state in which the envelope reached the office. A withdrawn or spoiled envelope, and one found to hold a
     * regular ballot put in by mistake, ends administratively, without a decision on a vote.
     */
    public enum Condition implements Code {
        SEALED,
        UNSEALED,
        TORN,
        FEELS_EMPTY,
        WITHDRAWN,
        SPOILED,
        REGULAR_BALLOT_INSIDE,
        UNKNOWN
    }

    /** The boxes of the affirmation whose state is kept one by one. */
    public enum Field implements Code {
        LAST_NAME,
        FIRST_NAME,
        DATE_OF_BIRTH,
        RESIDENCE_ADDRESS_LINE,
        CITY,
        ZIP,
        ID_LAST4,
        STATEMENTS_TICKED
    }

    /** Why a box holds nothing, or that it was keyed. */
    public enum FieldState implements Code {
        KEYED,
        LEFT_BLANK,
        ILLEGIBLE,
        REFUSED,
        NOT_YET_KEYED
    }
}
