package org.proviso.core.adjudication.questions;

import java.util.List;
import org.proviso.core.adjudication.facts.Fact;

/** Every question, in the order of the trade. */
public final class QuestionList {

    private static final List<Question> ALL = List.of(
            new EnvelopeCondition(),
            new AffirmationSigned(),
            new OfficialSigned(),
            new FieldGiven(Fact.FIELD_LAST_NAME),
            new FieldGiven(Fact.FIELD_FIRST_NAME),
            new FieldGiven(Fact.FIELD_BIRTH_DATE),
            new FieldGiven(Fact.FIELD_ADDRESS),
            new FieldGiven(Fact.FIELD_CITY),
            new FieldGiven(Fact.FIELD_ZIP),
            new FieldGiven(Fact.FIELD_ID_LAST4),
            new FieldGiven(Fact.FIELD_STATEMENTS),
            new VoterIdentified(),
            new RegisteredInTime(),
            new MailBallotReturned(),
            new VotedAtAnotherPlace(),
            new VotedInAnotherCounty(),
            new AnotherEnvelope(),
            new RightStyle(),
            new FullEntitlement(),
            new OwnPartyBallot(),
            new IdentificationMet(),
            new SignatureAgrees(),
            new CastInHours(),
            new Challenged(),
            new Eligible(),
            new CourtOrdered());

    private QuestionList() {}

    public static List<Question> all() {
        return ALL;
    }
}
