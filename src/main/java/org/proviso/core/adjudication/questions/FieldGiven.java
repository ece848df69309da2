package org.proviso.core.adjudication.questions;

import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.FieldFact;
import org.proviso.core.adjudication.facts.VoterIdentityFact;
import org.proviso.core.adjudication.finding.FactReader;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.Rules;

/** Is a field of the affirmation given? An omission that does not matter to deciding whether the voter is qualified has no effect (52 USC 10101(a)(2)(B), from memory). */
final class FieldGiven extends OneFactQuestion<FieldFact> {

    private static final Map<String, String> ASKS = Map.of(
            "last_name", "Is the last name filled in?",
            "first_name", "Is the first name filled in?",
            "date_of_birth", "Is the date of birth filled in?",
            "residence_address_line", "Is the address filled in?",
            "city", "Is the city filled in?",
            "zip", "Is the ZIP code filled in?",
            "id_last4", "Is the last 4 of SSN filled in?",
            "statements_ticked", "Are the sworn statements checked?");

    private final Fact<FieldFact> fact;

    FieldGiven(Fact<FieldFact> fact) {
        super("envelope." + fact.key(), QuestionHeading.ENVELOPE, asks(fact), fact);
        this.fact = fact;
    }

    @Override
    public Set<Fact<?>> reads() {
        return Set.of(fact, Fact.IDENTITY);
    }

    @Override
    Answer answerFor(FieldFact word, FactReader facts, QuestionContext setting) {
        return switch (word) {
            case KEYED -> setting.clear("Yes");
            case NOT_A_DATE -> judged(facts, setting);
            default -> notGiven(word == FieldFact.NOT_YET_KEYED, facts, setting);
        };
    }

    /** What the voter wrote is neither a date nor left out: where leaving it out could matter, a person judges it. */
    private Answer judged(FactReader facts, QuestionContext setting) {
        if (!setting.pack().of(Rules.REQUIRED_FIELDS).isKnown()) {
            return setting.ruleUnknown(Rules.REQUIRED_FIELDS);
        }
        Answer leftOut = notGiven(false, facts, setting);
        if (leftOut instanceof Answer.Clear clear) {
            return noMatter(clear);
        }
        return leftOut instanceof Answer.Open open && open.expected() instanceof Answer.Clear expected
                ? setting.open(
                        fact.meaning() + " is not a date, which matters only if the voter cannot be identified",
                        noMatter(expected))
                : setting.open(
                        fact.meaning() + " is not a date; a person must judge it",
                        setting.clear("Yes, as written", Rules.REQUIRED_FIELDS, Rules.OMISSIONS_MATTER));
    }

    private static Answer noMatter(Answer.Clear leftOut) {
        return new Answer.Clear("Written, but not a date; here that does not matter", leftOut.restsOn());
    }

    /** Empty without a recorded reason: treated as a field not keyed yet. */
    @Override
    Answer ofUnknown(FactReader facts, QuestionContext setting) {
        return notGiven(true, facts, setting);
    }

    private Answer notGiven(boolean notYet, FactReader facts, QuestionContext setting) {
        if (!setting.pack().of(Rules.REQUIRED_FIELDS).isKnown()) {
            return setting.ruleUnknown(Rules.REQUIRED_FIELDS);
        }
        return setting.pack().words(Rules.REQUIRED_FIELDS).contains(name(fact))
                ? leftOut(notYet, facts.one(Fact.IDENTITY), setting)
                : setting.clear("No, and the law does not require it", Rules.REQUIRED_FIELDS);
    }

    private Answer leftOut(boolean notYet, @Nullable VoterIdentityFact identity, QuestionContext setting) {
        return switch (setting.pack().word(Rules.OMISSIONS_MATTER)) {
            case "never" -> setting.clear("No, but it does not matter", Rules.OMISSIONS_MATTER);
            case "always" -> notYet ? emptySoFar(setting, incomplete(setting)) : incomplete(setting);
            case "when_voter_unknown" -> matters(notYet, identity, setting);
            default -> setting.ruleUnknown(Rules.OMISSIONS_MATTER);
        };
    }

    /** Only where a search could not tell who the voter is does the empty field matter. */
    private Answer matters(boolean notYet, @Nullable VoterIdentityFact identity, QuestionContext setting) {
        Answer known = setting.clear("No, but the voter is known without it", Rules.OMISSIONS_MATTER);
        String missing = "a field is empty, which matters only if the voter cannot be identified";
        if (identity == null
                || identity == VoterIdentityFact.SEVERAL_FIT
                || identity == VoterIdentityFact.ONE_FITS_WELL) {
            return setting.open(missing, Rules.OMISSIONS_MATTER);
        }
        return switch (identity) {
            case CONFIRMED -> known;
            case NOT_ON_ROLL -> notYet ? emptySoFar(setting, incomplete(setting)) : incomplete(setting);
            case NONE_FITS -> setting.open(missing, incomplete(setting));
            default -> setting.open(missing, known);
        };
    }

    private Answer emptySoFar(QuestionContext setting, Answer expected) {
        return setting.open(fact.meaning() + " is empty so far", expected);
    }

    private static Answer incomplete(QuestionContext setting) {
        return setting.defect(Reason.AFFIRMATION_INCOMPLETE, Rules.OMISSIONS_MATTER, Rules.REQUIRED_FIELDS);
    }

    private static String asks(Fact<FieldFact> fact) {
        return Objects.requireNonNull(ASKS.get(name(fact)), "every field of the affirmation has its question");
    }

    private static String name(Fact<FieldFact> fact) {
        return fact.key().substring("field.".length());
    }
}
