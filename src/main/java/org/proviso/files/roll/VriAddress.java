package org.proviso.files.roll;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The parts of an address in NIST Voter Records Interchange (SP 1500-102, address classes of the FGDC standard). */
record VriAddress(String houseNumber, String street, String unit, String city, String zip) {

    private static final List<String> STREET = List.of(
            "StreetNamePreModifier",
            "StreetNamePreDirectional",
            "StreetNamePreType",
            "StreetName",
            "StreetNamePostType",
            "StreetNamePostDirectional",
            "StreetNamePostModifier");

    static VriAddress of(JsonValue address) {
        return new VriAddress(
                address.optional("CompleteAddressNumber")
                        .map(VriAddress::number)
                        .orElse(""),
                address.optional("CompleteStreetName").map(VriAddress::street).orElse(address.text("GeneralAddress")),
                address.optional("CompleteSubaddress").map(VriAddress::unit).orElse(""),
                city(address),
                address.text("ZipCode"));
    }

    /** One line for a letter, or empty where the parts say too little. */
    String oneLine() {
        String line = joined(Stream.of(houseNumber, street, unit));
        String place = joined(Stream.of(city, zip));
        return line.isEmpty() || place.isEmpty() ? line : line + ", " + place;
    }

    private static String number(JsonValue number) {
        String prefix = number.optional("AddressNumberPrefix")
                .map(part -> part.text("Value"))
                .orElse("");
        String suffix = number.optional("AddressNumberSuffix")
                .map(part -> part.text("Value"))
                .orElse("");
        return joined(Stream.of(prefix, number.required("AddressNumber").text(), suffix));
    }

    private static String street(JsonValue street) {
        return joined(STREET.stream()
                .map(part -> part.equals("StreetName")
                        ? street.required(part).text()
                        : street.optional(part)
                                .map(value -> value.text("Value"))
                                .orElse("")));
    }

    private static String unit(JsonValue unit) {
        return joined(unit.list("SubaddressElement").stream()
                .flatMap(part -> Stream.of(part.text("SubaddressType"), part.text("SubaddressIdentifier"))));
    }

    /** The municipality or post office place; a county's name is not a city. */
    private static String city(JsonValue address) {
        return Stream.of("CompletePlaceName1", "CompletePlaceName")
                .flatMap(name -> address.optional(name).stream())
                .flatMap(place -> place.list("PlaceName").stream())
                .filter(place -> !place.text("PlaceNameType").equals("County"))
                .map(place -> place.text("Value"))
                .findFirst()
                .orElse("");
    }

    private static String joined(Stream<String> parts) {
        return parts.filter(part -> !part.isEmpty()).collect(Collectors.joining(" "));
    }
}
