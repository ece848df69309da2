package org.proviso.intake.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.proviso.core.CheckedReceipt;
import org.proviso.core.Code;
import org.proviso.core.Election;
import org.proviso.core.Envelope;
import org.proviso.core.Envelope.Source;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.ReceiptNumber;
import org.proviso.core.YesNo;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.intake.ReceiveEnvelope;
import org.proviso.intake.ReceivingService;
import org.proviso.intake.desk.EnvelopeListService;
import org.proviso.ui.MessageLine;
import org.proviso.ui.UsDates;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ChoiceField;
import org.proviso.ui.field.TypedDates;
import org.proviso.ui.field.TypedField;
import org.proviso.ui.frame.WorkingElection;

/** What is printed and stamped on an envelope. The bag's fields stay filled in from one envelope to the next. */
final class ReceiveForm extends Div {

    private final transient ReceivingService receiving;
    private final transient EnvelopeListService lists;
    private final transient WorkingElection workplace;
    private final Map<String, ChoiceField> choices = new LinkedHashMap<>();
    private final TypedField number = new TypedField("envelope", "Envelope number");
    private final TypedField receipt = new TypedField("receipt", "Receipt number");
    private final TypedField place = new TypedField("place", "Voting location");
    private final TypedField style = new TypedField("style", "Ballot style");
    private final TypedField precinct = new TypedField("precinct", "Precinct");
    private final TypedField castDay = new TypedField("cast-day", "Date cast");
    private final TypedField castTime = new TypedField("cast-time", "Time cast").like("6:52 pm");
    private final TypedField stampDay = new TypedField("stamp-day", "Date stamped");
    private final TypedField stampTime = new TypedField("stamp-time", "Time stamped").like("9:15 pm");
    private final boolean checkDigit;
    private Runnable after = () -> {};

    ReceiveForm(ReceivingService receiving, EnvelopeListService lists, WorkingElection workplace, Election election) {
        this.receiving = receiving;
        this.lists = lists;
        this.workplace = workplace;
        this.checkDigit = election.receipts() == Election.Receipts.CHECK_DIGIT;
        choices();
        castDay.text(UsDates.digits(election.date()));
        LocalDateTime now = workplace.now();
        stampDay.text(UsDates.digits(now.toLocalDate()));
        stampTime.text(UsDates.hour(now.toLocalTime()));
        number.onLeave(this::checkNumber);
        receipt.onLeave(this::checkReceipt);
        addClassName("keying");
        add(bag(), one());
    }

    private void choices() {
        choose("source", "Received from", Map.of("poll", "a voting location"), "mail_without_id", "other_county");
        choose(
                "reason",
                "Reason issued",
                Map.of("", "not stated"),
                "not_on_list",
                "name_mismatch",
                "mail_ballot_issued",
                "no_id",
                "moved",
                "wrong_place",
                "list_unavailable",
                "inactive",
                "already_checked_in",
                "challenged",
                "party",
                "court_hours");
        choose("extended", "Extended hours", Map.of("no", "no"), "yes", "unknown");
        choose("in-line", "In line when polls closed", Map.of("unknown", "not stated"), "yes", "no");
    }

    private Div bag() {
        Div bag = new Div(
                new H2("For the whole bag"),
                place,
                choices.get("source"),
                stampDay,
                stampTime,
                castDay,
                choices.get("extended"));
        bag.getElement().setAttribute("data-typing", "go-on");
        return bag;
    }

    private Div one() {
        ActButton take = new ActButton("Receive envelope").first().does(this::take);
        take.getElement().setAttribute("data-finish", true);
        Div acts = new Div(take);
        acts.addClassName("acts");
        Div envelope = new Div(
                new H2("This envelope"),
                style,
                precinct,
                castTime,
                choices.get("reason"),
                choices.get("in-line"),
                number,
                receipt,
                acts);
        envelope.getElement().setAttribute("data-typing", "hand-in");
        return envelope;
    }

    private void choose(String name, String label, Map<String, String> first, String... others) {
        Map<String, String> words = new LinkedHashMap<>(first);
        for (String other : others) {
            words.put(other, other.replace('_', ' '));
        }
        choices.put(name, new ChoiceField(name, label, words));
    }

    void after(Runnable act) {
        after = act;
    }

    void focusFirst() {
        place.focus();
    }

    private void checkNumber() {
        boolean taken = EnvelopeNumber.find(number.text())
                .flatMap(typed -> lists.line(workplace.electionId(), typed))
                .isPresent();
        number.problem(taken ? "Envelope " + number.text() + " has already been received." : "");
    }

    /** The office's own numbers are not checked. */
    private void checkReceipt() {
        receipt.text(receipt.text().strip().toUpperCase(Locale.ROOT));
        receipt.problem("");
        if (checkDigit && !receipt.text().isEmpty()) {
            CheckedReceipt.find(receipt.text()).ifPresent(right -> receipt.text(right.value()));
            CheckedReceipt.slip(receipt.text())
                    .ifPresent(slip -> receipt.problem("The receipt number " + slip.words() + "."));
        }
    }

    private void take() {
        Optional<LocalDateTime> stamp = moment(stampDay, stampTime);
        Optional<LocalDateTime> cast = castTime.text().isEmpty() ? Optional.empty() : moment(castDay, castTime);
        checkNumber();
        demand(number, "[0-9A-Za-z][0-9A-Za-z-]{0,59}", "Use letters, digits and hyphens only.");
        checkReceipt();
        demand(receipt, "[0-9A-Z][0-9A-Z-]{0,59}", "Use letters, digits and hyphens only.");
        style.problem("");
        boolean right = stamp.isPresent() && (castTime.text().isEmpty() || cast.isPresent());
        if (!right || number.hasProblem() || receipt.hasProblem()) {
            MessageLine.refused("Not saved. Check the highlighted fields.");
            (number.hasProblem() ? number : receipt.hasProblem() ? receipt : stampDay).focus();
            return;
        }
        receive(command(stamp.get(), cast.orElse(null)));
    }

    private static void demand(TypedField field, String pattern, String otherwise) {
        if (field.text().isEmpty()) {
            field.problem("Required.");
        } else if (!field.text().matches(pattern)) {
            field.problem(otherwise);
        }
    }

    private static Optional<LocalDateTime> moment(TypedField day, TypedField time) {
        Optional<LocalDate> onDay = TypedDates.day(day.text());
        Optional<LocalTime> atTime = TypedDates.time(time.text());
        day.problem(onDay.isEmpty() ? TypedDates.LIKE_A_DAY : "");
        time.problem(atTime.isEmpty() ? TypedDates.LIKE_A_TIME : "");
        return onDay.flatMap(found -> atTime.map(found::atTime));
    }

    private ReceiveEnvelope command(LocalDateTime stamp, @Nullable LocalDateTime cast) {
        String reason = choice("reason");
        return new ReceiveEnvelope(
                workplace.electionId(),
                new EnvelopeNumber(number.text()),
                new ReceiptNumber(receipt.text()),
                Code.find(Source.class, choice("source")).orElseThrow(),
                place.text(),
                precinct.text(),
                style.text(),
                "",
                cast,
                yesNo("extended"),
                yesNo("in-line"),
                reason.isEmpty() ? Set.of() : Set.of(reason),
                stamp);
    }

    private String choice(String name) {
        return Objects.requireNonNull(choices.get(name), "the form has this choice")
                .code();
    }

    private YesNo yesNo(String choice) {
        return YesNo.valueOf(choice(choice).toUpperCase(Locale.ROOT));
    }

    private void receive(ReceiveEnvelope command) {
        ActResult<Envelope> result = receiving.receive(command);
        result.refusals().forEach(this::refused);
        if (!result.isRefused()) {
            MessageLine.done(command.envelopeNo() + " received.");
            number.text("");
            receipt.text("");
            castTime.text("");
            after.run();
            castTime.focus();
        }
    }

    private void refused(Refusal refusal) {
        TypedField where = switch (String.valueOf(refusal.field())) {
            case "receiptNo" -> receipt;
            case "receivedAt" -> stampDay;
            case "ballotStyle" -> style;
            default -> number;
        };
        where.problem(refusal.words());
        where.focus();
        MessageLine.refused("Not saved. " + refusal.words());
    }
}
