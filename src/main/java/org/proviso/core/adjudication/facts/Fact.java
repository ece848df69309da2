package org.proviso.core.adjudication.facts;

import java.util.List;
import java.util.Optional;

/**
 * A fact that may be known of a case: its key in files, what it says, the words it may take, and whether several may
 * hold at once (then an empty set means that none does). A fact that nobody knows is unknown, never guessed.
 */
public record Fact<V extends Enum<V> & FactWord>(String key, Class<V> type, boolean severalMayHold, String meaning) {

    public static final Fact<EnvelopeFact> ENVELOPE =
            one("envelope", EnvelopeFact.class, "the condition of the envelope");
    public static final Fact<SignatureFact> VOTER_SIGNATURE =
            one("voter_signature", SignatureFact.class, "how the voter signed the affirmation");
    public static final Fact<OfficialSignatureFact> OFFICIAL_SIGNATURE =
            one("official_signature", OfficialSignatureFact.class, "whether the poll worker signed");
    public static final Fact<FieldFact> FIELD_LAST_NAME = field("last_name");
    public static final Fact<FieldFact> FIELD_FIRST_NAME = field("first_name");
    public static final Fact<FieldFact> FIELD_BIRTH_DATE = field("date_of_birth");
    public static final Fact<FieldFact> FIELD_ADDRESS = field("residence_address_line");
    public static final Fact<FieldFact> FIELD_CITY = field("city");
    public static final Fact<FieldFact> FIELD_ZIP = field("zip");
    public static final Fact<FieldFact> FIELD_ID_LAST4 = field("id_last4");
    public static final Fact<FieldFact> FIELD_STATEMENTS = field("statements_ticked");
    public static final Fact<VoterIdentityFact> IDENTITY = one("identity", VoterIdentityFact.class, "who the voter is");
    public static final Fact<RegistrationFact> REGISTRATION =
            one("registration", RegistrationFact.class, "the status of the registration");
    public static final Fact<ResidenceFact> RESIDENCE =
            one("residence", ResidenceFact.class, "the location of the address on the affirmation");
    public static final Fact<MailBallotFact> MAIL_BALLOTS =
            new Fact<>("mail_ballots", MailBallotFact.class, true, "the status of each mail ballot sent to the voter");
    public static final Fact<CheckInFact> CHECK_IN =
            one("check_in", CheckInFact.class, "what other locations' poll books show");
    public static final Fact<OtherCountyFact> OTHER_COUNTY =
            one("other_county", OtherCountyFact.class, "whether the voter voted in another county");
    public static final Fact<OtherEnvelopeFact> OTHER_ENVELOPE =
            one("other_envelope", OtherEnvelopeFact.class, "whether the voter has another envelope");
    public static final Fact<BallotFact> BALLOT =
            one("ballot", BallotFact.class, "whether the style cast is one the voter may vote");
    public static final Fact<PlaceFact> PLACE = one("place", PlaceFact.class, "where the ballot was cast");
    public static final Fact<OfficialErrorFact> OFFICIAL_ERROR =
            one("official_error", OfficialErrorFact.class, "whether a poll worker noted an official error");
    public static final Fact<LateExcuseFact> LATE_EXCUSE =
            one("late_excuse", LateExcuseFact.class, "whether a sworn reason excuses a ballot for another precinct");
    public static final Fact<EntitlementFact> ENTITLEMENT =
            one("entitlement", EntitlementFact.class, "which contests the registration allows");
    public static final Fact<PartyBallotFact> PARTY_BALLOT =
            one("party_ballot", PartyBallotFact.class, "whether the voter may vote this party's ballot");
    public static final Fact<IdentificationFact> IDENTIFICATION =
            one("identification", IdentificationFact.class, "whether the identification rule is met");
    public static final Fact<SignatureComparisonFact> SIGNATURE_COMPARISON = one(
            "signature_comparison", SignatureComparisonFact.class, "whether the signature agrees with those on file");
    public static final Fact<VoteTimeFact> VOTE_TIME = one("vote_time", VoteTimeFact.class, "when the ballot was cast");
    public static final Fact<ChallengeFact> CHALLENGE =
            one("challenge", ChallengeFact.class, "whether the voter was challenged");
    public static final Fact<EligibilityFact> ELIGIBILITY =
            one("eligibility", EligibilityFact.class, "any evidence against the right to vote");
    public static final Fact<OrderFact> COURT_ORDER =
            one("court_order", OrderFact.class, "a court's order about this envelope");

    private static final List<Fact<?>> ALL = List.of(
            ENVELOPE,
            VOTER_SIGNATURE,
            OFFICIAL_SIGNATURE,
            FIELD_LAST_NAME,
            FIELD_FIRST_NAME,
            FIELD_BIRTH_DATE,
            FIELD_ADDRESS,
            FIELD_CITY,
            FIELD_ZIP,
            FIELD_ID_LAST4,
            FIELD_STATEMENTS,
            IDENTITY,
            REGISTRATION,
            RESIDENCE,
            MAIL_BALLOTS,
            CHECK_IN,
            OTHER_COUNTY,
            OTHER_ENVELOPE,
            BALLOT,
            PLACE,
            OFFICIAL_ERROR,
            LATE_EXCUSE,
            ENTITLEMENT,
            PARTY_BALLOT,
            IDENTIFICATION,
            SIGNATURE_COMPARISON,
            VOTE_TIME,
            CHALLENGE,
            ELIGIBILITY,
            COURT_ORDER);

    /** A fact is its key: there is one of each. */
    @Override
    public boolean equals(Object other) {
        return this == other || (other instanceof Fact<?> that && that.key.equals(key));
    }

    @Override
    public int hashCode() {
        return key.hashCode();
    }

    /** Every fact, in the order in which the questions ask for them. */
    public static List<Fact<?>> all() {
        return ALL;
    }

    public static Optional<Fact<?>> find(String key) {
        return ALL.stream().filter(fact -> fact.key().equals(key)).findFirst();
    }

    /** The words it may take. */
    public List<V> words() {
        return List.of(type.getEnumConstants());
    }

    private static <V extends Enum<V> & FactWord> Fact<V> one(String key, Class<V> type, String meaning) {
        return new Fact<>(key, type, false, meaning);
    }

    private static Fact<FieldFact> field(String name) {
        return one("field." + name, FieldFact.class, "the affirmation field " + name.replace('_', ' '));
    }
}
