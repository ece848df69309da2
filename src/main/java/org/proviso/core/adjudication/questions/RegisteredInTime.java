package org.proviso.core.adjudication.questions;

import java.util.Set;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.RegistrationFact;
import org.proviso.core.adjudication.facts.ResidenceFact;
import org.proviso.core.adjudication.finding.FactReader;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.Rules;
import org.proviso.core.rules.StateRules;

/** Was the voter registered in time? An inactive voter is registered (52 USC 20507(d)-(e)); a name that is missing is a matter of research, not an answer (52 USC 21083(a)(2)(B)). */
final class RegisteredInTime extends OneFactQuestion<RegistrationFact> {

    RegisteredInTime() {
        super(
                "registration.in_time",
                QuestionHeading.REGISTRATION,
                "Was the voter registered in time?",
                Fact.REGISTRATION);
    }

    @Override
    public Set<Fact<?>> reads() {
        return Set.of(Fact.REGISTRATION, Fact.RESIDENCE);
    }

    @Override
    Answer answerFor(RegistrationFact word, FactReader facts, QuestionContext setting) {
        return switch (word) {
            case IN_TIME -> inCounty("Yes", facts, setting);
            case INACTIVE -> inCounty("Yes; inactive voters are registered", facts, setting);
            case NONE_NEEDED -> setting.clear("None needed", Rules.REGISTRATION_NEEDED);
            case LATE -> setting.defect(Reason.REGISTERED_LATE);
            case SAME_DAY_ACCEPTED, SAME_DAY_PENDING -> sameDay(word, setting);
            case PENDING, PENDING_VERIFIED_LATE -> setting.defect(Reason.REGISTRATION_PENDING);
            case PENDING_VERIFIED_IN_TIME -> inCounty("Yes; verified in time", facts, setting);
            case PROVED_INSTEAD -> proved(setting);
            case CANCELLED -> setting.defect(Reason.REGISTRATION_CANCELLED);
            case ELSEWHERE -> setting.defect(Reason.REGISTERED_ELSEWHERE);
            case NOT_FOUND_AFTER_SEARCH -> setting.defect(Reason.NOT_REGISTERED);
            case NOT_IN_FILE -> notInFile(facts, setting);
        };
    }

    /** Registered here; whether the voter still lives in the county is for a person to find out where it is in doubt. */
    private static Answer inCounty(String words, FactReader facts, QuestionContext setting) {
        ResidenceFact residence = facts.one(Fact.RESIDENCE);
        if (residence == null) {
            return setting.open("the affirmation does not say where the voter lives", setting.clear(words));
        }
        return residence == ResidenceFact.IN_COUNTY
                ? setting.clear(words)
                : setting.open("registered here, but the address on the affirmation is not in this county");
    }

    private static Answer sameDay(RegistrationFact word, QuestionContext setting) {
        return switch (setting.pack().word(Rules.SAME_DAY)) {
            case "not_offered" -> setting.defect(Reason.REGISTERED_LATE, Rules.SAME_DAY);
            case "counts_when_accepted" ->
                word == RegistrationFact.SAME_DAY_ACCEPTED
                        ? setting.clear("Yes, on the same day", Rules.SAME_DAY)
                        : setting.open("the same-day registration is not accepted yet", Rules.SAME_DAY);
            case "counts_for_president" ->
                setting.open(
                        "registered on the same day, which counts for president and vice president only; a reviewer decides"
                                + " what counts",
                        Rules.SAME_DAY);
            default -> setting.ruleUnknown(Rules.SAME_DAY);
        };
    }

    /** Some states accept proof of identity and residence in place of a record that cannot be found. */
    private static Answer proved(QuestionContext setting) {
        ResolvedRule rule = setting.pack().of(StateRules.PROOF_INSTEAD);
        if (rule.isYes()) {
            return setting.clear("Identity and residence proved in time instead", StateRules.PROOF_INSTEAD);
        }
        return rule.isKnown() || rule.isAbsent()
                ? setting.defect(Reason.NOT_REGISTERED)
                : setting.ruleUnknown(StateRules.PROOF_INSTEAD);
    }

    /** Open until a person has searched; the address tells what the search will probably end in. */
    private static Answer notInFile(FactReader facts, QuestionContext setting) {
        String missing = VoterIdentified.NOT_IN_FILE;
        ResidenceFact residence = facts.one(Fact.RESIDENCE);
        if (residence == null) {
            return setting.open(missing);
        }
        Reason likely = residence == ResidenceFact.OUT_OF_COUNTY ? Reason.REGISTERED_ELSEWHERE : Reason.NOT_REGISTERED;
        return setting.open(missing, setting.defect(likely));
    }
}
