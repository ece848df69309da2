package org.proviso.core.adjudication.questions;

import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.adjudication.facts.Fact;
import org.proviso.core.adjudication.facts.MailBallotFact;
import org.proviso.core.adjudication.finding.FactReader;
import org.proviso.core.rules.Reason;
import org.proviso.core.rules.ResolvedRule;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.Rules;
import org.proviso.core.rules.StateRules;

/** Did a mail ballot of this voter come back? Each serial is weighed; the worst decides. */
final class MailBallotReturned implements Question {

    @Override
    public String key() {
        return "already_voted.mail_ballot";
    }

    @Override
    public QuestionHeading heading() {
        return QuestionHeading.ALREADY_VOTED;
    }

    @Override
    public String asks() {
        return "Did the voter return a mail ballot?";
    }

    @Override
    public Set<Fact<?>> reads() {
        return Set.of(Fact.MAIL_BALLOTS);
    }

    @Override
    public Answer answer(FactReader facts, QuestionContext setting) {
        Set<MailBallotFact> words = facts.all(Fact.MAIL_BALLOTS);
        if (words == null) {
            return setting.notKnown("whether the voter returned a mail ballot");
        }
        if (words.contains(MailBallotFact.ACCEPTED)) {
            return setting.defect(Reason.MAIL_BALLOT_ACCEPTED);
        }
        if (words.contains(MailBallotFact.RETURNED)) {
            return returned(setting);
        }
        if (words.contains(MailBallotFact.CURE_PENDING)) {
            return setting.open("a mail ballot was returned with a defect the voter may still cure");
        }
        Answer refused = refused(words, setting);
        return refused == null ? notBack(words, setting) : refused;
    }

    private static Answer notBack(Set<MailBallotFact> words, QuestionContext setting) {
        return words.contains(MailBallotFact.OUTSTANDING) ? outstanding(setting) : setting.clear(none(words));
    }

    /** A ballot that came back and was refused: it leaves the way free, unless the law of the state says otherwise. */
    private static @Nullable Answer refused(Set<MailBallotFact> words, QuestionContext setting) {
        Answer found = null;
        for (MailBallotFact word : List.of(MailBallotFact.REJECTED, MailBallotFact.LATE)) {
            Rule of = word == MailBallotFact.LATE ? StateRules.MAIL_LATE : StateRules.MAIL_REJECTED;
            ResolvedRule rule = setting.pack().of(of);
            if (found != null || !words.contains(word) || rule.isAbsent()) {
                continue;
            }
            if (rule.word().equals("stands_in_the_way")) {
                found = setting.defect(Reason.MAIL_BALLOT_RETURNED, rule.rule());
            } else if (!rule.isKnown()) {
                found = setting.ruleUnknown(rule.rule());
            }
        }
        return found;
    }

    private static Answer returned(QuestionContext setting) {
        return switch (setting.pack().word(Rules.MAIL_RETURNED)) {
            case "stands_in_the_way" -> setting.defect(Reason.MAIL_BALLOT_RETURNED, Rules.MAIL_RETURNED);
            case "gives_way" -> givesWay(setting);
            case "wait_for_its_decision" ->
                setting.open("a mail ballot was returned and is not decided yet", Rules.MAIL_RETURNED);
            default -> setting.ruleUnknown(Rules.MAIL_RETURNED);
        };
    }

    /** The provisional ballot prevails and the mail ballot is refused; only by a rule that was read or signed. */
    private static Answer givesWay(QuestionContext setting) {
        return setting.pack().of(Rules.MAIL_RETURNED).isFirm()
                ? setting.clear("One was returned; it will be refused in favor of this ballot", Rules.MAIL_RETURNED)
                : setting.ruleUnknown(Rules.MAIL_RETURNED);
    }

    /** It may still arrive, unless its deadline has passed or the mail desk refuses ballots of counted voters. */
    private static Answer outstanding(QuestionContext setting) {
        if (setting.pack().isYes(Rules.COUNTED_LIST_TO_MAIL_DESK)) {
            return setting.clear(
                    "No; the mail-ballot desk will refuse it once this ballot counts", Rules.COUNTED_LIST_TO_MAIL_DESK);
        }
        if (!setting.pack().of(Rules.MAIL_RECEIPT).isKnown()) {
            return setting.ruleUnknown(Rules.MAIL_RECEIPT);
        }
        Answer passed = setting.clear("No; not returned by the deadline", Rules.MAIL_RECEIPT);
        return setting.clocks().mailReceiptPassed()
                ? passed
                : setting.open("a mail ballot is out and may still arrive", passed);
    }

    private static String none(Set<MailBallotFact> words) {
        return words.isEmpty() ? "No; none was sent" : "No; none that was returned counts";
    }
}
