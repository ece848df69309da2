package org.proviso.core.adjudication.facts;

import java.util.List;
import java.util.Optional;

/**
 * A fact that may be known of a case: its key in files, what it says, the words it may take, and whether several may
 * hold at once (then an empty set means that none does). A fact that nobody knows is unknown, never guessed.
 */
public record Fact<V extends Enum<V> & FactWord>(String key, Class<V> type, boolean severalMayHold, String meaning) {

    public static final Fact<EnvelopeFact> ENVELOPE =
            one("envelope", EnvelopeFact.class, "in what condition the envelope came");
    public static final Fact<SignatureFact> VOTER_SIGNATURE =
            one("voter_signature", SignatureFact.class, "how the voter signed the affirmation");
    public static final Fact<OfficialSignature> OFFICIAL_SIGNATURE =
            one("official_signature", OfficialSignature.class, "whether the poll official signed");
    public static final Fact<FieldFact> FIELD_LAST_NAME = field("last_name");
    public static final Fact<FieldFact> FIELD_FIRST_NAME = field("first_name");
    public static final Fact<FieldFact> FIELD_BIRTH_DATE = field("date_of_birth");
    public static final Fact<FieldFact> FIELD_ADDRESS = field("residence_address_line");
    public static final Fact<FieldFact> FIELD_CITY = field("city");
    public static final Fact<FieldFact> FIELD_ZIP = field("zip");
    public static final Fact<FieldFact> FIELD_ID_LAST4 = field("id_last4");
    public static final Fact<FieldFact> FIELD_STATEMENTS = field("statements_ticked");
    public static final Fact<Identity> IDENTITY = one("identity", Identity.class, "who the voter is");
    public static final Fact<Registration> REGISTRATION =
            one("registration", Registration.class, "where the registration stands");
    public static final Fact<ResidenceFact> RESIDENCE =
            one("residence", ResidenceFact.class, "where the address on the affirmation lies");
    public static final Fact<MailBallotFact> MAIL_BALLOTS =
            new Fact<>("mail_ballots", MailBallotFact.class, true, "what became of each mail ballot sent to the voter");
    public static final Fact<CheckInFact> CHECK_IN =
            one("check_in", CheckInFact.class, "what poll books elsewhere say");
    public static final Fact<OtherCounty> OTHER_COUNTY =
            one("other_county", OtherCounty.class, "whether the voter voted in another county");
    public static final Fact<OtherEnvelope> OTHER_ENVELOPE =
            one("other_envelope", OtherEnvelope.class, "whether the voter has another envelope");
    public static final Fact<BallotFact> BALLOT =
            one("ballot", BallotFact.class, "whether the style cast is one the voter may vote");
    public static final Fact<PlaceFact> PLACE = one("place", PlaceFact.class, "where the ballot was cast");
    public static final Fact<OfficialError> OFFICIAL_ERROR =
            one("official_error", OfficialError.class, "whether an official noted an error of their own");
    public static final Fact<LateExcuse> LATE_EXCUSE =
            one("late_excuse", LateExcuse.class, "whether a sworn reason excuses the ballot of another precinct");
    public static final Fact<EntitlementFact> ENTITLEMENT =
            one("entitlement", EntitlementFact.class, "which contests the registration entitles to");
    public static final Fact<PartyBallot> PARTY_BALLOT =
            one("party_ballot", PartyBallot.class, "whether the party ballot is the voter's to vote");
    public static final Fact<Identification> IDENTIFICATION =
            one("identification", Identification.class, "whether the identification rule is met");
    public static final Fact<Comparison> SIGNATURE_COMPARISON =
            one("signature_comparison", Comparison.class, "whether the signature agrees with those on file");
    public static final Fact<VoteTime> VOTE_TIME = one("vote_time", VoteTime.class, "when the ballot was cast");
    public static final Fact<Challenge> CHALLENGE = one("challenge", Challenge.class, "whether somebody challenged");
    public static final Fact<Eligibility> ELIGIBILITY =
            one("eligibility", Eligibility.class, "what is known against the right to vote");
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
        return one("field." + name, FieldFact.class, "the field " + name + " of the affirmation");
    }
}
