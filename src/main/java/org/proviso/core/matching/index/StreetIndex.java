package org.proviso.core.matching.index;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;
import org.proviso.core.Address;
import org.proviso.core.PrecinctId;
import org.proviso.core.StreetSegment;
import org.proviso.core.matching.index.StreetFinding.Result;
import org.proviso.core.matching.spelling.AddressNormalizer;
import org.proviso.core.matching.spelling.EditDistance;
import org.proviso.core.matching.spelling.IdentifyingNumbers;
import org.proviso.core.matching.spelling.NameText;
import org.proviso.core.matching.spelling.StreetAddress;
import org.proviso.core.matching.spelling.StreetName;

/** Finds the precinct part of an address in the county's street list. Thread-safe. */
public final class StreetIndex {

    private final Map<String, List<NormalizedSegment>> byBody = new TreeMap<>();
    private final Set<String> cities = new HashSet<>();
    private final Set<Integer> zips = new HashSet<>();

    /** A segment with its street and place in one spelling. */
    private record NormalizedSegment(StreetSegment segment, StreetName street, String city, int zip) {

        static NormalizedSegment of(StreetSegment segment) {
            StreetName street = StreetName.of(AddressNormalizer.street(segment.street()));
            return new NormalizedSegment(
                    segment, street, NameText.fold(segment.city()), IdentifyingNumbers.zip(segment.zip()));
        }

        boolean holds(int house) {
            return house >= segment.low()
                    && house <= segment.high()
                    && segment.parity().holds(house);
        }

        PrecinctId part() {
            return new PrecinctId(segment.precinct(), segment.split());
        }
    }

    /** The address looked for, in one spelling. */
    private record SoughtAddress(int house, StreetName street, String city, int zip) {

        boolean placed(NormalizedSegment stretch) {
            boolean otherZip = zip != 0 && stretch.zip != 0 && zip != stretch.zip;
            boolean otherCity = !city.isEmpty() && !stretch.city.isEmpty() && !city.equals(stretch.city);
            return !otherZip && !otherCity;
        }
    }

    public StreetIndex(List<StreetSegment> segments) {
        Map<String, List<NormalizedSegment>> stretches = new HashMap<>();
        for (StreetSegment segment : segments) {
            NormalizedSegment stretch = NormalizedSegment.of(segment);
            stretches
                    .computeIfAbsent(stretch.street().body(), body -> new ArrayList<>())
                    .add(stretch);
            cities.add(stretch.city());
            zips.add(stretch.zip());
        }
        byBody.putAll(stretches);
        cities.remove("");
        zips.remove(0);
    }

    /** Whether the county's street list names that city or that ZIP. */
    public boolean knowsPlace(Address address) {
        return cities.contains(NameText.fold(address.city())) || zips.contains(IdentifyingNumbers.zip(address.zip()));
    }

    /** The precinct part of the address, with at most one correction: place, directional or suffix, one spelling error. */
    public StreetFinding find(Address address) {
        StreetAddress line = AddressNormalizer.parse(address);
        SoughtAddress wanted = new SoughtAddress(
                line.houseNumber(),
                StreetName.of(line.street()),
                NameText.fold(address.city()),
                IdentifyingNumbers.zip(address.zip()));
        boolean known = knowsPlace(address);
        if (wanted.house() == 0 || wanted.street().body().isEmpty()) {
            return new StreetFinding(Result.NONE, List.of(), known, "The address line has no house number and street.");
        }
        return search(wanted, known);
    }

    private StreetFinding search(SoughtAddress wanted, boolean known) {
        List<NormalizedSegment> sameBody = byBody.getOrDefault(wanted.street().body(), List.of());
        List<NormalizedSegment> sameStreet =
                holding(sameBody, wanted, s -> s.street().equals(wanted.street()));
        List<PrecinctId> exact = parts(sameStreet, wanted::placed);
        if (!exact.isEmpty()) {
            return finding(exact, exact.size() == 1 ? Result.EXACT : Result.SEVERAL, known, "");
        }
        List<PrecinctId> elsewhere = parts(sameStreet, any -> true);
        if (!elsewhere.isEmpty()) {
            return presumed(elsewhere, known, "The street file lists the address under another city or ZIP code.");
        }
        List<PrecinctId> otherName = parts(holding(sameBody, wanted, any -> true), wanted::placed);
        if (!otherName.isEmpty()) {
            return presumed(otherName, known, "The street's direction or suffix is missing or different.");
        }
        List<PrecinctId> misspelled = parts(holding(misspelled(wanted), wanted, any -> true), wanted::placed);
        return misspelled.isEmpty()
                ? new StreetFinding(Result.NONE, List.of(), known, "")
                : presumed(misspelled, known, "The street name differs by one letter.");
    }

    /** Streets one spelling error away; numbered streets are neighbors, not errors. The suffix must then agree where written. */
    private List<NormalizedSegment> misspelled(SoughtAddress wanted) {
        String body = wanted.street().body();
        if (body.length() < 4 || body.chars().anyMatch(Character::isDigit)) {
            return List.of();
        }
        return byBody.entrySet().stream()
                .filter(entry -> Math.abs(entry.getKey().length() - body.length()) < 2)
                .filter(entry -> entry.getKey().chars().noneMatch(Character::isDigit))
                .filter(entry -> EditDistance.optimalStringAlignment(entry.getKey(), body) == 1)
                .flatMap(entry -> entry.getValue().stream())
                .filter(stretch -> agrees(
                                stretch.street().suffix(), wanted.street().suffix())
                        && agrees(stretch.street().before(), wanted.street().before()))
                .toList();
    }

    private static boolean agrees(String a, String b) {
        return a.isEmpty() || b.isEmpty() || a.equals(b);
    }

    private static List<NormalizedSegment> holding(
            List<NormalizedSegment> stretches, SoughtAddress wanted, Predicate<NormalizedSegment> also) {
        return stretches.stream()
                .filter(stretch -> stretch.holds(wanted.house()))
                .filter(also)
                .toList();
    }

    private static List<PrecinctId> parts(List<NormalizedSegment> stretches, Predicate<NormalizedSegment> which) {
        return stretches.stream()
                .filter(which)
                .map(NormalizedSegment::part)
                .distinct()
                .toList();
    }

    private static StreetFinding presumed(List<PrecinctId> parts, boolean known, String note) {
        return finding(parts, parts.size() == 1 ? Result.PRESUMED : Result.SEVERAL, known, note);
    }

    private static StreetFinding finding(List<PrecinctId> parts, Result result, boolean known, String note) {
        return new StreetFinding(result, parts, known, note);
    }
}
