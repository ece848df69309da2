package org.proviso.intake.ui;

import com.vaadin.flow.component.checkbox.Checkbox;
import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Span;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.proviso.core.Envelope;
import org.proviso.core.YesNo;
import org.proviso.core.act.Refusal;
import org.proviso.intake.ReceivingChoices;
import org.proviso.intake.correction.CorrectedCast;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ChoiceField;
import org.proviso.ui.field.TypedDates;
import org.proviso.ui.field.TypedField;

/** Where and how an envelope was cast, to be corrected. Several reasons may be checked. */
final class CorrectedCastForm extends Div {

    private static final Map<String, String> YES_NO = new LinkedHashMap<>();

    static {
        YES_NO.put("unknown", "not stated");
        YES_NO.put("yes", "yes");
        YES_NO.put("no", "no");
    }

    private final TypedField place = new TypedField("place", "Voting location");
    private final TypedField style = new TypedField("style", "Ballot style");
    private final TypedField precinct = new TypedField("precinct", "Precinct");
    private final TypedField partyBallot = new TypedField("party-ballot", "Party ballot");
    private final TypedField castDay = new TypedField("cast-day", "Date cast");
    private final TypedField castTime = new TypedField("cast-time", "Time cast").like("6:52 pm");
    private final ChoiceField extended = new ChoiceField("extended", "Extended hours", YES_NO);
    private final ChoiceField inLine = new ChoiceField("in-line", "In line when polls closed", YES_NO);
    private final Map<String, Checkbox> reasons = new LinkedHashMap<>();

    CorrectedCastForm(Envelope.Cast cast, ReceivingChoices known) {
        place.from(known.votingLocations()).text(cast.votingLocation());
        style.from(known.styles()).text(cast.ballotStyle());
        precinct.from(known.precincts()).text(cast.precinct());
        partyBallot.from(known.parties()).text(cast.partyBallot());
        LocalDateTime at = cast.at();
        if (at != null) {
            castDay.text(UsDates.digits(at.toLocalDate()));
            castTime.text(UsDates.hour(at.toLocalTime()));
        }
        extended.code(code(cast.extendedHours()));
        inLine.code(code(cast.inLineAtClose()));
        Set<String> codes = new LinkedHashSet<>(ReceiveForm.REASONS);
        codes.addAll(cast.issueReasons());
        codes.forEach(code -> reasons.put(
                code, new Checkbox(code.replace('_', ' '), cast.issueReasons().contains(code))));
        add(
                new H2("As received"),
                place,
                style,
                precinct,
                partyBallot,
                castDay,
                castTime,
                extended,
                inLine,
                reasonsRow());
    }

    private Div reasonsRow() {
        Span label = new Span("Reasons issued");
        label.addClassName("label");
        Span row = new Span();
        row.addClassNames("entry", "many");
        reasons.values().forEach(row::add);
        Div group = new Div(label, row);
        group.addClassName("typed");
        group.getElement().setAttribute("role", "group");
        group.getElement().setAttribute("aria-label", "Reasons issued");
        return group;
    }

    /** Says beside the fields what cannot be; whether everything can. */
    boolean isPossible() {
        boolean empty = castDay.text().isEmpty() && castTime.text().isEmpty();
        castDay.problem(empty || TypedDates.day(castDay.text()).isPresent() ? "" : TypedDates.LIKE_A_DAY);
        castTime.problem(empty || TypedDates.time(castTime.text()).isPresent() ? "" : TypedDates.LIKE_A_TIME);
        Stream.of(place, style).forEach(field -> field.problem(""));
        return !castDay.hasProblem() && !castTime.hasProblem();
    }

    CorrectedCast cast() {
        Set<String> checked = new LinkedHashSet<>();
        reasons.forEach((code, box) -> {
            if (box.getValue()) {
                checked.add(code);
            }
        });
        return new CorrectedCast(
                place.text(),
                precinct.text(),
                style.text(),
                partyBallot.text(),
                castAt(),
                yesNo(extended),
                yesNo(inLine),
                checked);
    }

    /** Says a refusal beside its field, where it is about one. */
    void refused(Refusal refusal) {
        Map<String, TypedField> fields = Map.of("votingLocation", place, "ballotStyle", style, "castAt", castTime);
        Optional.ofNullable(refusal.field()).map(fields::get).ifPresent(field -> {
            field.problem(refusal.words());
            field.focus();
        });
    }

    private @Nullable LocalDateTime castAt() {
        Optional<LocalDate> day = TypedDates.day(castDay.text());
        Optional<LocalTime> time = TypedDates.time(castTime.text());
        return day.flatMap(on -> time.map(on::atTime)).orElse(null);
    }

    private static String code(YesNo answer) {
        return answer.name().toLowerCase(Locale.ROOT);
    }

    private static YesNo yesNo(ChoiceField field) {
        return YesNo.valueOf(field.code().toUpperCase(Locale.ROOT));
    }
}
