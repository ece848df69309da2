package org.proviso.intake.ui;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Election;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.TypedDates;
import org.proviso.ui.field.TypedField;

/** When a ballot was cast and when its envelope was stamped; a time outside voting hours is asked at once. */
final class CastTimeBoxes {

    /** No polling place opens earlier (from memory); a morning hour before it is rather an evening hour without its pm. */
    private static final LocalTime EARLIEST = LocalTime.of(5, 0);

    private final Election election;
    private final BooleanSupplier extended;
    private final BooleanSupplier inLine;
    private final TypedField castDay = new TypedField("cast-day", "Date cast");
    private final TypedField castTime = new TypedField("cast-time", "Time cast").like("6:52 pm");
    private final TypedField stampDay = new TypedField("stamp-day", "Date stamped");
    private final TypedField stampTime = new TypedField("stamp-time", "Time stamped").like("9:15 pm");

    /** What the envelope says of extended hours and of the line explains a late hour. */
    CastTimeBoxes(Election election, LocalDateTime now, BooleanSupplier extended, BooleanSupplier inLine) {
        this.election = election;
        this.extended = extended;
        this.inLine = inLine;
        castDay.text(UsDates.digits(election.date()));
        stampDay.text(UsDates.digits(now.toLocalDate()));
        stampTime.text(UsDates.hour(now.toLocalTime()));
        castDay.onLeave(this::checkCast);
        castTime.onLeave(this::checkCast);
        stampDay.onLeave(() -> checkDay(stampDay));
        stampTime.onLeave(() -> checkTime(stampTime));
    }

    TypedField castDay() {
        return castDay;
    }

    TypedField castTime() {
        return castTime;
    }

    TypedField stampDay() {
        return stampDay;
    }

    TypedField stampTime() {
        return stampTime;
    }

    /** Null where the envelope does not say it, or what it says cannot be read. */
    @Nullable
    LocalDateTime cast() {
        return moment(castDay, castTime).orElse(null);
    }

    /** The stamp, once both boxes were checked. */
    LocalDateTime stamp() {
        return moment(stampDay, stampTime).orElseThrow();
    }

    private static Optional<LocalDateTime> moment(TypedField day, TypedField time) {
        Optional<LocalTime> atTime = TypedDates.time(time.text());
        return TypedDates.day(day.text()).flatMap(onDay -> atTime.map(onDay::atTime));
    }

    /** For the next envelope of the bag. */
    void clear() {
        castTime.text("");
        castTime.problem("");
        castTime.question("");
    }

    void check() {
        checkDay(stampDay);
        checkTime(stampTime);
        checkCast();
    }

    private static void checkDay(TypedField day) {
        day.problem(TypedDates.day(day.text()).isEmpty() ? TypedDates.LIKE_A_DAY : "");
    }

    private static void checkTime(TypedField time) {
        time.problem(TypedDates.time(time.text()).isEmpty() ? TypedDates.LIKE_A_TIME : "");
    }

    void checkCast() {
        if (castTime.text().isEmpty()) {
            castDay.problem("");
            castTime.problem("");
        } else {
            checkDay(castDay);
            checkTime(castTime);
        }
        LocalDateTime cast = cast();
        castTime.question(cast == null ? "" : question(cast));
    }

    private String question(LocalDateTime cast) {
        LocalDateTime close = election.close();
        if (cast.isAfter(close) && !extended.getAsBoolean() && !inLine.getAsBoolean()) {
            String on = UsDates.digits(cast.toLocalDate()) + " at ";
            boolean sameDay = cast.toLocalDate().equals(close.toLocalDate());
            return "Polls closed " + spoken(close, cast) + ". Is " + (sameDay ? "" : on) + hour(cast) + " right?";
        }
        if (cast.toLocalTime().isBefore(EARLIEST)) {
            return "Polls are not open at " + hour(cast) + ". Is it right?";
        }
        return !cast.isAfter(close) && extended.getAsBoolean()
                ? "Extended hours begin " + spoken(close, cast) + ". Is " + hour(cast) + " right?"
                : "";
    }

    /** The day is said where the other moment is on another one. */
    private static String spoken(LocalDateTime moment, LocalDateTime other) {
        LocalDate day = moment.toLocalDate();
        return (day.equals(other.toLocalDate()) ? "" : "on " + UsDates.digits(day) + " ") + "at " + hour(moment);
    }

    private static String hour(LocalDateTime moment) {
        return UsDates.hour(moment.toLocalTime());
    }
}
