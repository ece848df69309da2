package org.proviso.core.adjudication.finding;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.proviso.core.RegistrationChannel;
import org.proviso.core.RollStatus;
import org.proviso.core.Voter;
import org.proviso.core.adjudication.facts.RegistrationFact;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.rules.DeadlineBook;
import org.proviso.core.rules.Rule;
import org.proviso.core.rules.Rules;
import org.proviso.core.rules.StateRules;

/**
 * Was the voter registered in time? The event tested differs by channel (52 USC 20507(a)(1)): a postmark for mail,
 * the submission, acceptance or receipt for the others.
 */
final class RegistrationFactFinder {

    private final Voter.Registration registration;
    private final DeadlineBook book;

    private RegistrationFactFinder(Voter voter, DeadlineBook book) {
        this.registration = voter.registration();
        this.book = book;
    }

    static Finding findFacts(Voter voter, DeadlineBook book) {
        return new RegistrationFactFinder(voter, book).find();
    }

    private Finding find() {
        boolean onTheDay = registration.channel() == RegistrationChannel.SAME_DAY;
        return switch (registration.status()) {
            case CANCELLED -> cancelled();
            case PENDING ->
                found(
                        onTheDay ? RegistrationFact.SAME_DAY_PENDING : RegistrationFact.PENDING,
                        "The roll lists the registration as pending" + because() + ".");
            case ACTIVE, INACTIVE ->
                onTheDay ? found(RegistrationFact.SAME_DAY_ACCEPTED, "Same-day registration, accepted.") : byDate();
        };
    }

    /** A registration cancelled only after the election was good on election day. */
    private Finding cancelled() {
        LocalDate on = registration.statusOn();
        if (on != null && on.isAfter(book.pack().electionDate())) {
            return byDate();
        }
        return found(
                RegistrationFact.CANCELLED,
                "The registration was cancelled" + (on == null ? "" : " on " + DateWords.date(on)) + because() + ".");
    }

    private String because() {
        return registration.statusReason().isBlank()
                ? ""
                : " (" + registration.statusReason().replace('_', ' ') + ")";
    }

    private Finding byDate() {
        LocalDate on = registration.registeredOn();
        if (on == null) {
            return Finding.unknown(Evidence.of(EvidenceSource.ROLL, "The roll shows no registration date."));
        }
        List<Rule> tests = tests();
        boolean allMet = true;
        boolean anySettled = false;
        for (Rule test : tests) {
            Optional<Deadline> deadline = book.of(test);
            LocalDate event = test.equals(Rules.REGISTER_MAIL_RECEIVED) ? registration.receivedOn() : on;
            if (deadline.isEmpty() || event == null) {
                continue;
            }
            anySettled = true;
            if (event.isAfter(deadline.get().day())) {
                allMet = false;
                if (registration.channel() != null) {
                    return late(test, deadline.get(), event);
                }
            }
        }
        if (!anySettled) {
            return Finding.unknown(
                    Evidence.of(EvidenceSource.ROLL, "No source was found for the registration deadline."));
        }
        return allMet ? inTime(on) : channelMatters(on);
    }

    private List<Rule> tests() {
        RegistrationChannel channel = registration.channel();
        if (channel == null) {
            return List.of(Rules.REGISTER_MAIL_POSTMARK, Rules.REGISTER_IN_PERSON, Rules.REGISTER_ONLINE);
        }
        return switch (channel) {
            case MAIL -> List.of(Rules.REGISTER_MAIL_POSTMARK, Rules.REGISTER_MAIL_RECEIVED);
            case ONLINE -> List.of(Rules.REGISTER_ONLINE);
            case AGENCY, MOTOR_VEHICLE -> List.of(unlessAbsent(StateRules.REGISTER_AGENCY));
            case IN_PERSON -> List.of(inPerson());
            default -> List.of(Rules.REGISTER_IN_PERSON);
        };
    }

    private Rule unlessAbsent(Rule own) {
        return book.pack().of(own).isAbsent() ? Rules.REGISTER_IN_PERSON : own;
    }

    /** The later day for those who come to the office matters only to a date after the ordinary one. */
    private Rule inPerson() {
        LocalDate on = registration.registeredOn();
        boolean late = on != null
                && book.of(Rules.REGISTER_IN_PERSON)
                        .map(deadline -> on.isAfter(deadline.day()))
                        .orElse(true);
        return late ? unlessAbsent(StateRules.REGISTER_LATE_IN_PERSON) : Rules.REGISTER_IN_PERSON;
    }

    private Finding inTime(LocalDate on) {
        String words = "Registered on " + DateWords.date(on) + how() + ", in time.";
        return registration.status() == RollStatus.INACTIVE
                ? found(RegistrationFact.INACTIVE, words + " Inactive voters are still registered.")
                : found(RegistrationFact.IN_TIME, words);
    }

    /** A late date costs a vote: where the deadline itself is only remembered, a person must rule first. */
    private Finding late(Rule test, Deadline deadline, LocalDate event) {
        String what = test.equals(Rules.REGISTER_MAIL_RECEIVED) ? "The application arrived on " : "Registered on ";
        String words = what + DateWords.date(event) + how() + "; the last day was " + DateWords.date(deadline.day())
                + " (" + deadline.rule().words() + ").";
        return book.pack().of(test).isFirm()
                ? found(RegistrationFact.LATE, words)
                : Finding.unknown(Evidence.of(
                        EvidenceSource.ROLL,
                        words + " The rule pack has this deadline from memory; the office must sign a county ruling."));
    }

    private static Finding channelMatters(LocalDate on) {
        return Finding.unknown(Evidence.of(
                EvidenceSource.ROLL,
                "Registered on " + DateWords.date(on)
                        + ". Whether that was in time depends on the method, which the roll does not show."));
    }

    private String how() {
        @Nullable RegistrationChannel channel = registration.channel();
        return channel == null || channel == RegistrationChannel.SAME_DAY
                ? ""
                : " "
                        + switch (channel) {
                            case IN_PERSON -> "in person";
                            case ONLINE -> "online";
                            case MAIL -> "by mail";
                            case MOTOR_VEHICLE -> "at a motor vehicle office";
                            case AGENCY -> "at an agency";
                            default -> "through a registration drive";
                        };
    }

    private static Finding found(RegistrationFact word, String words) {
        return Finding.of(word, Evidence.of(EvidenceSource.ROLL, words));
    }
}
