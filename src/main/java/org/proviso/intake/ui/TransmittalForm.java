package org.proviso.intake.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.proviso.core.ElectionId;
import org.proviso.core.Transmittal;
import org.proviso.core.act.ActResult;
import org.proviso.intake.RecordTransmittal;
import org.proviso.intake.RecordedTransmittal;
import org.proviso.intake.TransmittalService;
import org.proviso.intake.desk.LocationReturn;
import org.proviso.ui.MessageLine;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ChangedMeanwhile;
import org.proviso.ui.field.TypedDates;
import org.proviso.ui.field.TypedField;
import org.springframework.dao.OptimisticLockingFailureException;

/** One transmittal as it is typed; what does not add up is said at once, in a sentence. */
final class TransmittalForm extends Div {

    private static final String[][] FIELDS = {
        {"place", "Voting location", ""},
        {"day", "Date", "11/3/2026"},
        {"bag", "Bag number", ""},
        {"seal-out", "Outgoing seal", ""},
        {"seal-in", "Return seal", ""},
        {"supplied", "Supplied", ""},
        {"issued", "Issued", ""},
        {"spoiled", "Spoiled", ""},
        {"unused", "Unused", ""},
        {"returned", "Sent back", ""},
        {"in-error", "Scanned in error", ""},
        {"loose", "Loose ballots", ""}
    };

    private final transient TransmittalService transmittals;
    private final ElectionId election;
    private final Runnable after;
    private final H2 title = new H2("Record a transmittal");
    private final Map<String, TypedField> fields = new LinkedHashMap<>();
    private final Paragraph sentence = new Paragraph();
    private final ChangedMeanwhile changed = new ChangedMeanwhile();
    private @Nullable RecordedTransmittal corrected;
    private List<LocationReturn> here = List.of();

    TransmittalForm(TransmittalService transmittals, ElectionId election, Runnable after) {
        this.transmittals = transmittals;
        this.election = election;
        this.after = after;
        getElement().setAttribute("data-typing", "go-on");
        add(title);
        for (String[] field : FIELDS) {
            TypedField typed = new TypedField(field[0], field[1]).like(field[2]).onTyped(text -> say());
            fields.put(field[0], typed);
            add(typed);
        }
        sentence.getElement().setAttribute("role", "status");
        ActButton record = new ActButton("Record transmittal").first().does(this::record);
        record.getElement().setAttribute("data-finish", true);
        Div acts = new Div(new ActButton("Clear form").does(this::clear), record);
        acts.addClassName("acts");
        add(sentence, changed, acts);
    }

    void here(List<LocationReturn> all) {
        if (here.isEmpty()) {
            field("place").from(places(all)).onLeave(this::spellPlace);
        }
        here = all;
    }

    private static List<String> places(List<LocationReturn> all) {
        return all.stream()
                .map(LocationReturn::votingLocation)
                .filter(place -> !place.isEmpty())
                .toList();
    }

    /** As the other returns and the envelopes spell it; a location that nothing came from yet stays as typed. */
    private void spellPlace() {
        places(here).stream()
                .filter(text("place")::equalsIgnoreCase)
                .findFirst()
                .ifPresent(field("place")::text);
    }

    /** For the return of this location, which is still missing. */
    void begin(String votingLocation) {
        text("place", votingLocation);
        field("day").focus();
    }

    void correct(RecordedTransmittal recorded) {
        Transmittal transmittal = recorded.transmittal();
        clear();
        corrected = recorded;
        title.setText("Correct " + transmittal.votingLocation() + ", bag " + transmittal.bag());
        text("place", transmittal.votingLocation());
        text("day", transmittal.day() == null ? "" : UsDates.digits(transmittal.day()));
        text("bag", transmittal.bag());
        text("seal-out", transmittal.sealOut());
        text("seal-in", transmittal.sealIn());
        text("supplied", text(transmittal.supplied()));
        text("issued", text(transmittal.issued()));
        text("spoiled", text(transmittal.spoiled()));
        text("unused", text(transmittal.unused()));
        text("returned", text(transmittal.returned()));
        text("in-error", text(transmittal.scannedInError()));
        text("loose", text(transmittal.looseBallots()));
        say();
        field("place").focus();
    }

    private void clear() {
        corrected = null;
        changed.nothing();
        title.setText("Record a transmittal");
        fields.values().forEach(field -> {
            field.text("");
            field.problem("");
        });
        sentence.setText("");
        sentence.removeClassName("warn");
    }

    private static String text(@Nullable Integer number) {
        return number == null ? "" : String.valueOf(number);
    }

    private TypedField field(String name) {
        return Objects.requireNonNull(fields.get(name), "the form has this field");
    }

    private void text(String field, String text) {
        field(field).text(text);
    }

    private String text(String field) {
        return field(field).text();
    }

    /** What the numbers say so far, as the list would say it. */
    private void say() {
        if (text("place").isEmpty()
                || text("issued").isEmpty()
                || text("returned").isEmpty()
                || !check()) {
            return;
        }
        RecordTransmittal typed = command();
        Transmittal transmittal = new Transmittal(
                typed.votingLocation(),
                typed.day(),
                typed.bag(),
                typed.sealOut(),
                typed.sealIn(),
                typed.supplied(),
                typed.issued(),
                typed.spoiled(),
                typed.unused(),
                typed.returned(),
                typed.scannedInError(),
                typed.looseBallots());
        int arrived = here.stream()
                .filter(place -> place.votingLocation().equals(transmittal.votingLocation()))
                .mapToInt(LocationReturn::here)
                .sum();
        LocationReturn now = new LocationReturn(
                transmittal.votingLocation(), List.of(new RecordedTransmittal(0, 0, transmittal)), arrived);
        sentence.setText(now.sentence());
        sentence.setClassName("warn", !now.addsUp());
    }

    private boolean check() {
        boolean right = true;
        for (String name : List.of("supplied", "issued", "spoiled", "unused", "returned", "in-error", "loose")) {
            boolean wrong = !text(name).matches("\\d{0,6}");
            field(name).problem(wrong ? "Enter a whole number." : "");
            right &= !wrong;
        }
        boolean noDay = !text("day").isEmpty() && TypedDates.day(text("day")).isEmpty();
        field("day").problem(noDay ? TypedDates.LIKE_A_DAY : "");
        return right && !noDay;
    }

    private RecordTransmittal command() {
        @Nullable LocalDate day = TypedDates.day(text("day")).orElse(null);
        return new RecordTransmittal(
                election,
                text("place"),
                day,
                text("bag"),
                text("seal-out"),
                text("seal-in"),
                number("supplied"),
                orNone("issued"),
                orNone("spoiled"),
                number("unused"),
                orNone("returned"),
                number("in-error"),
                number("loose"));
    }

    private @Nullable Integer number(String field) {
        return text(field).isEmpty() ? null : Integer.valueOf(text(field));
    }

    private int orNone(String field) {
        return text(field).isEmpty() ? 0 : Integer.parseInt(text(field));
    }

    private void record() {
        boolean complete = check();
        for (String name : List.of("place", "issued", "returned")) {
            if (text(name).isEmpty()) {
                field(name).problem("Required.");
                complete = false;
            }
        }
        if (!complete) {
            MessageLine.refused("Not saved. Check the highlighted fields.");
            return;
        }
        try {
            write(command());
        } catch (OptimisticLockingFailureException e) {
            MessageLine.refused(ChangedMeanwhile.WORDS);
            changed.tell(e);
        }
    }

    private void write(RecordTransmittal command) {
        ActResult<RecordedTransmittal> result = corrected == null
                ? transmittals.record(command)
                : transmittals.correct(corrected.lineNo(), corrected.version(), command);
        if (result instanceof ActResult.Refused<RecordedTransmittal> refused) {
            MessageLine.refused(refused.words());
            return;
        }
        MessageLine.done(command.votingLocation()
                + (corrected == null ? ": transmittal recorded." : ": transmittal corrected."));
        clear();
        after.run();
        field("place").focus();
    }
}
