package org.proviso.setup.first;

import com.vaadin.flow.component.html.Div;
import com.vaadin.flow.component.html.NativeDetails;
import com.vaadin.flow.component.html.Paragraph;
import java.time.DateTimeException;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.proviso.core.Code;
import org.proviso.core.Election;
import org.proviso.core.Election.Receipts;
import org.proviso.ui.MessageLine;
import org.proviso.ui.field.ActButton;
import org.proviso.ui.field.ChoiceField;
import org.proviso.ui.field.TypedDates;
import org.proviso.ui.field.TypedField;

/** The facts of an election, typed instead of written as a file: its name and day, the office, the rules, who decides. */
public final class ElectionFactsForm extends Div {

    private final transient Consumer<ElectionFacts> done;
    private final TypedField name = new TypedField("election-name", "Election").like("General Election");
    private final TypedField date = new TypedField("election-date", "Date").like("11/3/2026");
    private final ChoiceField kind = new ChoiceField("election-kind", "Kind", ElectionFacts.kinds());
    private final TypedField county = new TypedField("county", "County");
    private final TypedField zone = new TypedField("zone", "Time zone").like("America/Detroit");
    private final TypedField closes = new TypedField("polls-close", "Polls close").like("8:00 pm");
    private final ChoiceField pack;
    private final TypedField members = new TypedField("members", "Members who decide").like("3");
    private final TypedField quorum = new TypedField("quorum", "Quorum").like("2");
    private final TypedField office = new TypedField("office-name", "Name of the office");
    private final TypedField address = new TypedField("office-address", "Address of the office");
    private final TypedField phone = new TypedField("office-phone", "Phone").like("555-0100");
    private final TypedField email = new TypedField("office-email", "Email");
    private final TypedField hours = new TypedField("office-hours", "Hours").like("Monday to Friday, 8 am to 5 pm");
    private final TypedField languages = new TypedField("languages", "Languages of letters").like("en, es");
    private final ChoiceField receipts = new ChoiceField("receipts", "Receipt numbers", receipts());

    /** {@code packs}: the rule packs that come with the program, by their names. */
    public ElectionFactsForm(Map<String, String> packs, Consumer<ElectionFacts> done) {
        this.done = done;
        pack = new ChoiceField("rule-pack", "Rule pack", packs);
        languages.text("en");
        getElement().setAttribute("data-typing", "go-on");
        ActButton use = new ActButton("Use these facts").does(this::use);
        use.getElement().setAttribute("data-finish", true);
        Div typed = new Div();
        typed.addClassName("facts");
        typed.add(name, date, kind, county, zone, closes, pack, members, quorum, office, address, phone, email, hours);
        typed.add(languages, receipts);
        NativeDetails folded = new NativeDetails(
                "Type the election's facts (instead of election.yaml)",
                new Div(
                        new Paragraph(
                                "Where one official decides, enter 1 for members and 1 for quorum. The rule packs are"
                                        + " illustrative: check with counsel; local law governs."),
                        typed,
                        use));
        add(folded);
    }

    private static Map<String, String> receipts() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put(Receipts.OWN.code(), "the office's own, not checked");
        words.put(Receipts.CHECK_DIGIT.code(), "with a check digit");
        return words;
    }

    private void use() {
        needed().forEach(field -> field.problem(field.text().isEmpty() ? "Required." : ""));
        check(date, TypedDates.day(date.text()).isPresent(), TypedDates.LIKE_A_DAY);
        check(closes, TypedDates.time(closes.text()).isPresent(), TypedDates.LIKE_A_TIME);
        check(zone, isZone(zone.text()), "Not a time zone. Write it as America/Detroit.");
        Optional<Integer> sitting = whole(members.text());
        Optional<Integer> needed = whole(quorum.text());
        check(members, sitting.filter(count -> count > 0).isPresent(), "A number from 1.");
        check(
                quorum,
                needed.filter(count -> count > 0 && count <= sitting.orElse(count))
                        .isPresent(),
                "A number from 1 to the number of members.");
        check(languages, languages().allMatch(code -> code.matches("[a-z]{2,3}")), "Codes such as en, es.");
        if (needed().anyMatch(TypedField::hasProblem)) {
            MessageLine.refused("Not used. Check the highlighted fields.");
            return;
        }
        done.accept(facts(sitting.orElseThrow(), needed.orElseThrow()));
    }

    private ElectionFacts facts(int sitting, int needed) {
        LocalTime close = TypedDates.time(closes.text()).orElseThrow();
        return new ElectionFacts(
                name.text(),
                TypedDates.day(date.text()).orElseThrow(),
                ElectionFacts.kind(kind.code()),
                county.text(),
                zone.text(),
                pack.code(),
                new Election.DecidingBody(sitting, needed),
                new Election.Office(
                        office.text(), address.text(), phone.text(), email.text(), Map.of("en", hours.text())),
                close,
                languages().toList(),
                Code.find(Receipts.class, receipts.code()).orElse(Receipts.OWN));
    }

    private Stream<TypedField> needed() {
        return Stream.of(
                name, date, county, zone, closes, members, quorum, office, address, phone, email, hours, languages);
    }

    private Stream<String> languages() {
        return Arrays.stream(languages.text().split("[,;\\s]+", 0)).filter(code -> !code.isEmpty());
    }

    private static void check(TypedField field, boolean isRight, String words) {
        if (!field.text().isEmpty() && !isRight) {
            field.problem(words);
        }
    }

    private static boolean isZone(String text) {
        try {
            return ZoneId.getAvailableZoneIds().contains(ZoneId.of(text).getId());
        } catch (DateTimeException e) {
            return false;
        }
    }

    private static Optional<Integer> whole(String text) {
        return text.matches("\\d{1,3}") ? Optional.of(Integer.valueOf(text)) : Optional.empty();
    }
}
