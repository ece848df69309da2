package org.proviso.setup;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import java.time.LocalDateTime;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proviso.core.Code;
import org.proviso.core.CourtOrder.Kind;
import org.proviso.core.CourtOrder.Status;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.act.ActResult;
import org.proviso.election.RecordedCourtOrder;
import org.proviso.election.orders.CourtOrderRecordService;
import org.proviso.election.orders.RecordCourtOrder;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ChoiceField;
import org.proviso.ui.field.TypedDates;
import org.proviso.ui.field.TypedField;

/** A court's order as the office received it. */
final class CourtOrderForm extends Div {

    private static final int SHOWN = 20;

    private final transient CourtOrderRecordService orders;
    private final ElectionId election;
    private final Runnable after;
    private final ChoiceField kind = new ChoiceField("kind", "The court orders the office to", kinds());
    private final TypedField court = new TypedField("court", "Court");
    private final TypedField caseNo = new TypedField("case-no", "Case number").like("26-1187-CV");
    private final TypedField judge = new TypedField("judge", "Judge");
    private final TypedField date = new TypedField("date", "Date").like("11/3/2026");
    private final TypedField scope = new TypedField("scope", "What the order says");
    private final ChoiceField standing = new ChoiceField("standing", "Status", CourtOrdersView.standings());
    private final TypedField untilDay = new TypedField("until-day", "Hours extended until, date");
    private final TypedField untilTime = new TypedField("until-time", "Hours extended until, time").like("9:00 pm");
    private final TypedField envelopes = new TypedField("envelopes", "Envelopes").like("G-1001, G-1002");

    CourtOrderForm(CourtOrderRecordService orders, ElectionId election, Runnable after) {
        this.orders = orders;
        this.election = election;
        this.after = after;
        standing.code(Status.IN_FORCE.code());
        getElement().setAttribute("data-typing", "go-on");
        ActButton record = new ActButton("Record order").first().does(this::record);
        record.getElement().setAttribute("data-finish", true);
        kind.onChosen(code -> showHours());
        add(
                new H2("Record an order"),
                kind,
                court,
                caseNo,
                judge,
                date,
                scope,
                standing,
                untilDay,
                untilTime,
                envelopes,
                record);
    }

    /** Only an order that extends the hours says until when. */
    private void showHours() {
        boolean extend = kind.code().equals(Kind.EXTEND.code());
        untilDay.setVisible(extend);
        untilTime.setVisible(extend);
    }

    private static Map<String, String> kinds() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put(Kind.EXTEND.code(), "extend the hours");
        words.put(Kind.COUNT.code(), "count envelopes");
        words.put(Kind.REJECT.code(), "reject envelopes");
        words.put(Kind.HOLD.code(), "hold envelopes");
        words.put(Kind.PRESERVE.code(), "preserve envelopes");
        return words;
    }

    private void record() {
        boolean extend = kind.code().equals(Kind.EXTEND.code());
        boolean names = Set.of("count", "reject").contains(kind.code());
        court.problem(court.text().isEmpty() ? "Required." : "");
        scope.problem(scope.text().isEmpty() ? "Required." : "");
        boolean noDay = !date.text().isEmpty() && TypedDates.day(date.text()).isEmpty();
        date.problem(noDay ? TypedDates.LIKE_A_DAY : "");
        Optional<LocalDateTime> until = extend ? until() : Optional.empty();
        boolean noUntil = extend && until.isEmpty();
        untilDay.problem(noUntil ? "Required. Enter both date and time: 11/3/2026 and 9:00 pm." : "");
        envelopes.problem(envelopesProblem(names));
        caseNo.problem(caseNo.text().length() > 100 ? "At most 100 characters." : "");
        judge.problem(judge.text().length() > 200 ? "At most 200 characters." : "");
        if (Stream.of(court, caseNo, judge, scope).anyMatch(TypedField::hasProblem)
                || noDay
                || untilDay.hasProblem()
                || envelopes.hasProblem()) {
            MessageLine.refused("Not saved. Check the highlighted fields.");
            return;
        }
        write(until);
    }

    private String envelopesProblem(boolean names) {
        if (names && envelopes.text().isEmpty()) {
            return "Required for an order to count or reject.";
        }
        return numbers()
                .filter(number -> EnvelopeNumber.find(number).isEmpty())
                .findFirst()
                .map(number -> "No envelope has a number as long as " + number.substring(0, SHOWN) + "….")
                .orElse("");
    }

    private Stream<String> numbers() {
        return Stream.of(envelopes.text().split("[,;\\s]+", 0)).filter(number -> !number.isEmpty());
    }

    private Optional<LocalDateTime> until() {
        return TypedDates.day(untilDay.text())
                .flatMap(day -> TypedDates.time(untilTime.text()).map(day::atTime));
    }

    private void write(Optional<LocalDateTime> until) {
        Set<EnvelopeNumber> numbers =
                numbers().map(EnvelopeNumber::new).collect(Collectors.toCollection(LinkedHashSet::new));
        RecordCourtOrder command = new RecordCourtOrder(
                election,
                Code.find(Kind.class, kind.code()).orElseThrow(),
                court.text(),
                TypedDates.day(date.text()).orElse(null),
                scope.text(),
                Code.find(Status.class, standing.code()).orElseThrow(),
                until.orElse(null),
                numbers,
                caseNo.text(),
                judge.text());
        ActResult<RecordedCourtOrder> result = orders.record(command);
        if (result instanceof ActResult.Refused<RecordedCourtOrder> refused) {
            envelopes.problem(refused.words());
        }
        result.ifAccepted().ifPresent(recorded -> {
            MessageLine.done("Order " + recorded.orderNo() + " recorded. The cases it affects were reassessed.");
            // pressed once more, the same order would be on file twice
            List.of(court, caseNo, judge, date, scope, untilDay, untilTime, envelopes)
                    .forEach(field -> field.text(""));
            after.run();
        });
    }
}
