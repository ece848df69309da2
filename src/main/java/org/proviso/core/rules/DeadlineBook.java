package org.proviso.core.rules;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Code;
import org.proviso.core.calendar.Deadline;
import org.proviso.core.calendar.DeadlineAnchor;
import org.proviso.core.calendar.DeadlineRule;
import org.proviso.core.calendar.Holiday;
import org.proviso.core.calendar.OfficeCalendar;

/** The deadlines of one election: the pack's rules computed on the county's calendar. All times are local to it. */
public record DeadlineBook(ResolvedPack pack, OfficeCalendar calendar, Map<DeadlineAnchor, LocalDateTime> acts) {

    /** A book for which no act is dated yet. */
    public DeadlineBook(ResolvedPack pack, OfficeCalendar calendar) {
        this(pack, calendar, Map.of());
    }

    /** The same book where an act is known to have been done, or set down, for that moment. */
    public DeadlineBook with(DeadlineAnchor act, LocalDateTime moment) {
        Map<DeadlineAnchor, LocalDateTime> known = new EnumMap<>(DeadlineAnchor.class);
        known.putAll(acts);
        known.put(act, moment);
        return new DeadlineBook(pack, calendar, Map.copyOf(known));
    }

    /** The book for a pack, with the days closed for this election besides weekends and the pack's holidays. */
    public static DeadlineBook of(ResolvedPack pack, Set<LocalDate> daysClosed) {
        Set<Holiday> holidays = new LinkedHashSet<>();
        for (String word : pack.words(Rules.HOLIDAYS)) {
            Code.find(Holiday.class, word).ifPresent(holidays::add);
        }
        return new DeadlineBook(pack, new OfficeCalendar(holidays, daysClosed));
    }

    /** The deadline of a rule, or empty where there is none or its anchor is a day not yet known. */
    public Optional<Deadline> of(Rule rule) {
        return pack.deadline(rule)
                .flatMap(dated -> moment(dated.anchor()).map(moment -> bounded(rule, computed(dated, moment))));
    }

    /** The deadline of a rule counted from an act: a notice sent, a finding made, a meeting held. */
    public Optional<Deadline> of(Rule rule, LocalDateTime act) {
        return pack.deadline(rule).map(dated -> computed(dated, act));
    }

    /**
     * Until when the voter may do what is asked; where that counts from the notice, the moment it was sent tells (local
     * to the county, null where none is logged). Empty where it runs to the board's meeting and none is called yet.
     */
    public Optional<Deadline> cure(Ask ask, @Nullable LocalDateTime noticeSent) {
        Optional<Deadline> fixed = of(Rule.cure(ask));
        return fixed.isPresent() || noticeSent == null || runsToTheMeeting(ask)
                ? fixed
                : of(Rule.cure(ask), noticeSent);
    }

    /** Whether the voter may do what is asked until the board meets. */
    public boolean runsToTheMeeting(Ask ask) {
        return countsFrom(Rule.cure(ask), DeadlineAnchor.BOARD_MEETING);
    }

    /** The same where no meeting is called yet: the voter has time, and nobody can say until when. */
    public boolean waitsForTheMeeting(Ask ask) {
        return runsToTheMeeting(ask) && !acts.containsKey(DeadlineAnchor.BOARD_MEETING);
    }

    /** Whether any deadline of the pack is counted from the board's meeting. */
    public boolean needsTheMeeting() {
        return Rule.all().stream().anyMatch(rule -> countsFrom(rule, DeadlineAnchor.BOARD_MEETING));
    }

    private boolean countsFrom(Rule rule, DeadlineAnchor anchor) {
        return pack.deadline(rule).filter(dated -> dated.anchor() == anchor).isPresent();
    }

    private Deadline computed(DeadlineRule rule, LocalDateTime moment) {
        return rule.from(moment, calendar, pack.officeCloses());
    }

    private Optional<LocalDateTime> moment(DeadlineAnchor anchor) {
        return switch (anchor) {
            case ELECTION_DAY -> Optional.of(pack.electionDate().atStartOfDay());
            case CERTIFICATION -> of(Rules.CERTIFICATION).map(Deadline::lastMoment);
            case MAIL_RECEIPT -> of(Rules.MAIL_RECEIPT).map(Deadline::lastMoment);
            case NOTICE_SENT, FINDING_MADE, BOARD_MEETING -> Optional.ofNullable(acts.get(anchor));
        };
    }

    /**
     * A state may not close registration earlier than 30 days before a federal election (52 USC 20507(a)(1)); an
     * earlier day, by the rule itself or by a closed day moved backward, gives way to the federal one.
     */
    private Deadline bounded(Rule rule, Deadline deadline) {
        if (!rule.key().startsWith("registration.")
                || !(pack.of(Rules.REGISTRATION_BOUND_DAYS).value() instanceof RuleValue.Number bound)) {
            return deadline;
        }
        LocalDate earliest = pack.electionDate().minusDays(bound.number());
        return deadline.day().isBefore(earliest)
                ? new Deadline(
                        earliest,
                        earliest.atTime(deadline.lastMoment().toLocalTime()),
                        deadline.counted(),
                        deadline.rule())
                : deadline;
    }
}
