package org.proviso.core;

/**
 * A residence address as written: the line with number and street, the unit apart where the form has a box for it,
 * city and ZIP. A part that was not given is the empty string.
 */
public record Address(String line, String unit, String city, String zip) {

    public static final Address NONE = new Address("", "", "", "");

    public boolean isBlank() {
        return line.isBlank();
    }

    /** One line for reading: {@code 88 Sorrel Ln Apt 3, Millbrook 49871}. */
    public String oneLine() {
        String place = (city + " " + zip).strip();
        String street = (line + " " + unit).strip();
        return place.isEmpty() || street.isEmpty() ? street + place : street + ", " + place;
    }
}
