package org.proviso.intake.numbers;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.proviso.core.ElectionId;
import org.proviso.core.EnvelopeKey;
import org.proviso.core.EnvelopeNumber;
import org.proviso.intake.NumberWords;
import org.proviso.intake.ReceiptOwners;
import org.springframework.stereotype.Component;

/**
 * Finds the envelopes whose numbers are to be settled. The marks follow from the numbers as they are; only what a person
 * confirmed is kept, and it holds for the envelopes that had the number then.
 */
@Component
class MarkedEnvelopes {

    private static final String BETWEEN = ";";

    /** A mark with the envelopes that it is about, as they are kept. */
    record Marked(MarkedEnvelope envelope, String group) {}

    private final NumberCheckStore checks;
    private final ReceiptOwners owners;

    MarkedEnvelopes(NumberCheckStore checks, ReceiptOwners owners) {
        this.checks = checks;
        this.owners = owners;
    }

    /** Every marked envelope in the order they came in, one line for each of its marks. */
    List<Marked> all(ElectionId electionId) {
        Map<NumberMark, Map<EnvelopeNumber, List<EnvelopeKey>>> marks = new LinkedHashMap<>();
        Map<EnvelopeNumber, List<EnvelopeKey>> without = new LinkedHashMap<>();
        checks.withoutReceipt(electionId).forEach(number -> without.put(number, List.of()));
        marks.put(NumberMark.NO_RECEIPT, without);
        marks.put(NumberMark.RECEIPT_SHARED, grouped(checks.sharedReceipts(electionId)));
        marks.put(NumberMark.NUMBER_SHARED, sameNumber(electionId));
        Set<EnvelopeNumber> numbers =
                marks.values().stream().flatMap(of -> of.keySet().stream()).collect(Collectors.toSet());
        Map<String, String> confirmed = confirmed(electionId);
        Map<ElectionId, String> names = new HashMap<>();
        List<Marked> all = new ArrayList<>();
        for (NumberCheckStore.Line line : checks.lines(electionId, List.copyOf(numbers))) {
            marks.forEach((mark, of) -> Optional.ofNullable(of.get(line.envelopeNo()))
                    .ifPresent(others -> all.add(marked(
                            electionId,
                            line,
                            mark,
                            others,
                            other -> names.computeIfAbsent(other, owners::name),
                            confirmed))));
        }
        return all;
    }

    private Marked marked(
            ElectionId electionId,
            NumberCheckStore.Line line,
            NumberMark mark,
            List<EnvelopeKey> others,
            Function<ElectionId, String> name,
            Map<String, String> confirmed) {
        String group = Stream.concat(Stream.of(new EnvelopeKey(electionId, line.envelopeNo())), others.stream())
                .sorted()
                .map(key -> written(key, electionId))
                .collect(Collectors.joining(BETWEEN));
        return new Marked(
                new MarkedEnvelope(
                        line.envelopeNo(),
                        mark,
                        others.stream()
                                .map(key -> NumberWords.spoken(key, electionId, name))
                                .toList(),
                        line.receiptNo(),
                        line.votingLocation(),
                        line.version(),
                        confirmed.get(mark.code() + BETWEEN + group)),
                group);
    }

    private static String written(EnvelopeKey key, ElectionId electionId) {
        return key.electionId().equals(electionId)
                ? key.envelopeNo().value()
                : key.electionId() + "/" + key.envelopeNo();
    }

    /** Why each group was confirmed, the newest reason. */
    private Map<String, String> confirmed(ElectionId electionId) {
        Map<String, String> confirmed = new HashMap<>();
        checks.settled(electionId).stream()
                .filter(settled -> settled.settled().equals(NumberCheckStore.CONFIRMED))
                .forEach(settled ->
                        confirmed.put(settled.mark().code() + BETWEEN + settled.envelopes(), settled.because()));
        return confirmed;
    }

    private static Map<EnvelopeNumber, List<EnvelopeKey>> grouped(List<NumberCheckStore.Pair> pairs) {
        return pairs.stream()
                .collect(Collectors.groupingBy(
                        NumberCheckStore.Pair::envelopeNo,
                        LinkedHashMap::new,
                        Collectors.mapping(NumberCheckStore.Pair::other, Collectors.toList())));
    }

    /** All envelopes on which the same number is printed: the first has it, the others were made distinct. */
    private Map<EnvelopeNumber, List<EnvelopeKey>> sameNumber(ElectionId electionId) {
        Map<EnvelopeNumber, EnvelopeNumber> printed = new LinkedHashMap<>();
        checks.numbersMadeDistinct(electionId)
                .forEach(pair -> printed.put(pair.envelopeNo(), pair.other().envelopeNo()));
        Map<EnvelopeNumber, Set<EnvelopeNumber>> groups = new LinkedHashMap<>();
        printed.keySet().forEach(number -> {
            EnvelopeNumber first = number;
            while (printed.containsKey(first)) {
                first = Objects.requireNonNull(printed.get(first), "looked up before");
            }
            Set<EnvelopeNumber> group = groups.computeIfAbsent(first, any -> new HashSet<>());
            group.add(first);
            group.add(number);
        });
        Map<EnvelopeNumber, List<EnvelopeKey>> others = new LinkedHashMap<>();
        groups.values()
                .forEach(group -> group.forEach(number -> others.put(
                        number,
                        group.stream()
                                .filter(other -> !other.equals(number))
                                .sorted()
                                .map(other -> new EnvelopeKey(electionId, other))
                                .toList())));
        return others;
    }
}
