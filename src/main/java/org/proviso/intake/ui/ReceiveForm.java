package org.proviso.intake.ui;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.H2;
import com.vaadin.flow.component.html.Paragraph;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.proviso.core.Code;
import org.proviso.core.Election;
import org.proviso.core.Envelope;
import org.proviso.core.Envelope.Source;
import org.proviso.core.EnvelopeNumber;
import org.proviso.core.YesNo;
import org.proviso.core.act.ActResult;
import org.proviso.core.act.Refusal;
import org.proviso.intake.ReceiveEnvelope;
import org.proviso.intake.ReceivingChoices;
import org.proviso.intake.ReceivingService;
import org.proviso.intake.desk.EnvelopeListService;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ChoiceField;
import org.proviso.ui.field.TypedField;
import org.proviso.ui.frame.WorkingElection;

/**
 * What is printed and stamped on an envelope. What belongs to the bag stays filled in from one envelope to the next; what
 * belongs to the envelope is empty for the next one. What looks like a slip is asked at its field and can be kept.
 */
final class ReceiveForm extends Div {

    /** Why a ballot may be provisional, in the order of the envelope. */
    static final List<String> REASONS = List.of(
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

    private final transient ReceivingService receiving;
    private final transient WorkingElection workplace;
    private final transient ReceivingChoices known;
    private final transient ReceivedNumbers numbers;
    private final transient CastTimeBoxes times;
    private final Map<String, ChoiceField> choices = new LinkedHashMap<>();
    private final TypedField place = new TypedField("place", "Voting location");
    private final TypedField style = new TypedField("style", "Ballot style");
    private final TypedField precinct = new TypedField("precinct", "Precinct");
    private final TypedField party = new TypedField("party-ballot", "Party ballot");
    private Runnable after = () -> {};

    ReceiveForm(ReceivingService receiving, EnvelopeListService lists, WorkingElection workplace, Election election) {
        this.receiving = receiving;
        this.workplace = workplace;
        this.known = receiving.choices(election.id());
        this.numbers = new ReceivedNumbers(receiving, lists, election);
        choices();
        times = new CastTimeBoxes(
                election, workplace.now(), () -> yesNo("extended") == YesNo.YES, () -> yesNo("in-line") == YesNo.YES);
        choice("extended").onChosen(code -> times.checkCast());
        choice("in-line").onChosen(code -> times.checkCast());
        choice("source").onChosen(code -> Stream.of(place, precinct).forEach(this::checkListed));
        place.from(known.votingLocations()).onLeave(() -> checkListed(place));
        precinct.from(known.precincts()).onLeave(() -> checkListed(precinct));
        style.from(known.styles()).onLeave(() -> checkListed(style));
        party.from(known.parties()).onLeave(() -> checkListed(party));
        party.setVisible(!known.parties().isEmpty());
        addClassName("keying");
        add(bag(), one());
    }

    private void choices() {
        choose("source", "Received from", Map.of("poll", "a voting location"), "mail_without_id", "other_county");
        choose("reason", "Reason issued", Map.of("", "not stated"), REASONS.toArray(String[]::new));
        choose("extended", "Extended hours", Map.of("unknown", "not stated"), "yes", "no");
        choose("in-line", "In line when polls closed", Map.of("unknown", "not stated"), "yes", "no");
    }

    private void choose(String name, String label, Map<String, String> first, String... others) {
        Map<String, String> words = new LinkedHashMap<>(first);
        for (String other : others) {
            words.put(other, other.replace('_', ' '));
        }
        choices.put(name, new ChoiceField(name, label, words));
    }

    private Div bag() {
        Paragraph stays = new Paragraph("These stay filled in for the next envelope.");
        stays.addClassNames("soft", "small");
        Div bag = new Div(
                new H2("For the whole bag"),
                stays,
                place,
                choice("source"),
                times.stampDay(),
                times.stampTime(),
                times.castDay());
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
                party,
                times.castTime(),
                choice("extended"),
                choice("in-line"),
                choice("reason"),
                numbers.number(),
                numbers.receipt(),
                acts);
        envelope.getElement().setAttribute("data-typing", "hand-in");
        return envelope;
    }

    void after(Runnable act) {
        after = act;
    }

    void focusFirst() {
        place.focus();
    }

    /** Spells what was typed as the list does; what is not on it is asked, and of a ballot style refused. */
    private void checkListed(TypedField field) {
        List<String> list = listOf(field);
        String text = field.text();
        list.stream().filter(text::equalsIgnoreCase).findFirst().ifPresent(field::text);
        boolean elsewhere = choice("source").code().equals(Source.OTHER_COUNTY.code());
        boolean strange = !text.isEmpty() && !list.isEmpty() && !list.contains(field.text());
        if (field == style) {
            style.problem(strange ? "This election has no ballot style " + text + "." : "");
        } else {
            field.question(strange && !elsewhere ? "This election does not list \"" + text + "\". Is it right?" : "");
        }
    }

    private List<String> listOf(TypedField field) {
        return field == place
                ? known.votingLocations()
                : field == precinct ? known.precincts() : field == style ? known.styles() : known.parties();
    }

    private Stream<TypedField> fields() {
        return Stream.of(
                place,
                times.stampDay(),
                times.stampTime(),
                times.castDay(),
                style,
                precinct,
                party,
                times.castTime(),
                numbers.number(),
                numbers.receipt());
    }

    private void take() {
        Stream.of(place, style, precinct, party).forEach(this::checkListed);
        times.check();
        numbers.check();
        Optional<TypedField> wrong = fields().filter(TypedField::hasProblem).findFirst();
        Optional<TypedField> asks = fields().filter(TypedField::isAsking).findFirst();
        if (wrong.isPresent()) {
            MessageLine.refused("Not saved. Check the highlighted fields.");
        } else if (asks.isPresent()) {
            MessageLine.refused("Not saved. Answer the question beside the field.");
        } else {
            receive(command());
        }
        wrong.or(() -> asks).ifPresent(TypedField::focus);
    }

    private ReceiveEnvelope command() {
        String reason = choice("reason").code();
        return new ReceiveEnvelope(
                workplace.electionId(),
                new EnvelopeNumber(numbers.number().text()),
                numbers.receiptNo(),
                Code.find(Source.class, choice("source").code()).orElseThrow(),
                place.text(),
                precinct.text(),
                style.text(),
                party.text(),
                times.cast(),
                yesNo("extended"),
                yesNo("in-line"),
                reason.isEmpty() ? Set.of() : Set.of(reason),
                times.stamp(),
                numbers.alsoOn(),
                numbers.sharesReceipt());
    }

    private ChoiceField choice(String name) {
        return Objects.requireNonNull(choices.get(name), "the form has this choice");
    }

    private YesNo yesNo(String name) {
        return YesNo.valueOf(choice(name).code().toUpperCase(Locale.ROOT));
    }

    private void receive(ReceiveEnvelope command) {
        ActResult<Envelope> result = receiving.receive(command);
        result.refusals().forEach(this::refused);
        if (!result.isRefused()) {
            MessageLine.done(command.envelopeNo() + " received.");
            clear();
            after.run();
            style.focus();
        }
    }

    /** Nothing of an envelope is left for the next one. */
    private void clear() {
        numbers.clear();
        times.clear();
        for (TypedField field : List.of(style, precinct, party)) {
            field.text("");
            field.problem("");
            field.question("");
        }
        choice("reason").code("");
        choice("extended").code("unknown");
        choice("in-line").code("unknown");
    }

    private void refused(Refusal refusal) {
        TypedField where = switch (String.valueOf(refusal.field())) {
            case "receiptNo" -> numbers.receipt();
            case "receivedAt" -> times.stampDay();
            case "ballotStyle" -> style;
            default -> numbers.number();
        };
        where.problem(refusal.words());
        where.focus();
        MessageLine.refused("Not saved. " + refusal.words());
    }
}
