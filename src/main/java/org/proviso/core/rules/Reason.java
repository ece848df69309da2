package org.proviso.core.rules;

import org.proviso.core.Code;

/**
 * The coded ground that stands in the way of a ballot. What follows from each is the rule pack's to say, with its
 * reference; so are the survey heading and the sentence the voter reads.
 */
public enum Reason implements Code {
    WITHDRAWN("the voter withdrew the envelope"),
    SPOILED("the envelope was spoiled and replaced"),
    REGULAR_BALLOT_INSIDE("the envelope contains a regular ballot by mistake"),
    ENVELOPE_NOT_SEALED("the envelope was not sealed"),
    AFFIRMATION_NOT_SIGNED("the voter did not sign the affirmation"),
    MARK_NOT_WITNESSED("the voter signed with a mark that was not witnessed"),
    AFFIRMATION_INCOMPLETE("the affirmation is missing information needed to identify the voter"),
    OFFICIAL_DID_NOT_SIGN("the poll worker did not sign"),
    NOT_REGISTERED("the voter is not registered"),
    REGISTERED_LATE("the voter registered after the deadline"),
    REGISTRATION_PENDING("the registration was not completed"),
    REGISTRATION_CANCELLED("the registration was cancelled before the election"),
    REGISTERED_ELSEWHERE("the voter lives and is registered in another county"),
    MAIL_BALLOT_ACCEPTED("the voter's mail ballot was accepted"),
    MAIL_BALLOT_RETURNED("the voter's mail ballot was returned voted"),
    VOTED_IN_PERSON("the voter voted at another voting location"),
    VOTED_IN_OTHER_COUNTY("the voter voted in another county"),
    OTHER_ENVELOPE_COUNTED("another provisional ballot of this voter counts"),
    WRONG_STYLE("the voter was not entitled to this ballot style"),
    WRONG_STYLE_RIGHT_PLACE("the ballot is another style, cast at the voter's own voting location"),
    WRONG_STYLE_BY_OFFICIAL("a poll worker gave the voter a ballot of another style"),
    WRONG_STYLE_OTHER_DISTRICT("the ballot is another style, cast outside the voter's congressional district"),
    WRONG_STYLE_EXCUSED(
            "the ballot is another style, cast late by a voter who swore that their own voting location was out of reach"),
    NO_CONTEST_IN_COMMON("the voter was not entitled to any contest on the ballot cast"),
    FEDERAL_CONTESTS_ONLY("the registration allows federal contests only"),
    WRONG_PARTY_BALLOT("the ballot is for a party other than the voter's"),
    NO_IDENTIFICATION("the voter showed no identification"),
    SIGNATURE_DIFFERS("two reviewers independently found the signature different"),
    CHALLENGE_SUSTAINED("a challenge to the voter was sustained"),
    NOT_OF_AGE("the voter was under 18 on election day"),
    NOT_A_CITIZEN("the voter is not a citizen"),
    DISQUALIFIED("the voter was legally disqualified on election day"),
    NOT_ENTITLED("the record shows that the voter was not entitled to vote"),
    DIED_BEFORE_VOTING("the voter died before the ballot was cast"),
    CAST_AFTER_CLOSE("the ballot was cast after the polls closed"),
    EXTENSION_SET_ASIDE("the court order extending the hours was set aside"),
    REJECTED_BY_ORDER("a court ordered this ballot to be rejected");

    private final String words;

    Reason(String words) {
        this.words = words;
    }

    /** Whether only some states tell it apart from a plainer ground; the others have no consequence for it. */
    public boolean isRefinement() {
        return this == WRONG_STYLE_OTHER_DISTRICT || this == WRONG_STYLE_EXCUSED;
    }

    /** Whether it says that the voter has voted by another ballot. */
    public boolean isOfAnotherVote() {
        return switch (this) {
            case MAIL_BALLOT_ACCEPTED,
                    MAIL_BALLOT_RETURNED,
                    VOTED_IN_PERSON,
                    VOTED_IN_OTHER_COUNTY,
                    OTHER_ENVELOPE_COUNTED -> true;
            default -> false;
        };
    }

    /** The ground as the office says it. */
    public String words() {
        return words;
    }
}
