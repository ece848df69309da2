package org.proviso.core.matching.spelling;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.proviso.core.Address;

/**
 * Takes a written address line apart into house number, street and unit and brings each to the standard spelling of
 * USPS Publication 28. Normalizing twice changes nothing. Thread-safe.
 */
public final class AddressNormalizer {

    private static final Pattern HOUSE = Pattern.compile("(\\d{1,9})(?:-?([A-Z]|-\\d{1,4}))?");
    private static final Pattern FRACTION = Pattern.compile("\\d/\\d");
    private static final Pattern DOOR = Pattern.compile("[A-Z]?-?\\d+(?:-?[A-Z]|-\\d+)?|[A-Z]");
    private static final List<String> LETTERED = List.of("APT", "UNIT", "STE", "RM");

    private static final StreetAddress NOWHERE = new StreetAddress(0, "", "", "");

    private AddressNormalizer() {}

    /** An address as written; a unit box that is filled goes before a unit found in the line. */
    public static StreetAddress parse(Address address) {
        return parse(address.line(), address.unit());
    }

    public static StreetAddress parse(String line, String unitBox) {
        if (line.isEmpty() && unitBox.isEmpty()) {
            return NOWHERE;
        }
        List<String> words = words(line);
        int house = 0;
        String letter = "";
        Matcher first = HOUSE.matcher(words.isEmpty() ? "" : words.get(0));
        if (isPlainNumber(words)) {
            house = Integer.parseInt(words.remove(0));
            letter = fraction(words);
        } else if (first.matches()) {
            house = Integer.parseInt(first.group(1));
            letter = first.group(2) == null ? "" : first.group(2).replace("-", "");
            letter = letter.isEmpty() || !Character.isDigit(letter.charAt(0)) ? letter : "-" + letter;
            words.remove(0);
            String fraction = fraction(words);
            letter = fraction.isEmpty() ? letter : fraction;
        }
        String unit = cutUnit(words);
        String box = unit(unitBox);
        return new StreetAddress(
                house, letter, StreetName.parse(dashless(words)).text(), box.isEmpty() ? unit : box);
    }

    /** The most common case, digits alone, without a pattern. */
    private static boolean isPlainNumber(List<String> words) {
        return !words.isEmpty() && words.get(0).length() <= 9 && Digits.only(words.get(0));
    }

    private static String fraction(List<String> words) {
        boolean fraction = words.size() > 1
                && words.get(0).length() == 3
                && FRACTION.matcher(words.get(0)).matches();
        return fraction ? words.remove(0) : "";
    }

    /** A street's name in its standard spelling. */
    public static String street(String name) {
        return StreetName.parse(dashless(words(name))).text();
    }

    /** A unit in its standard spelling: {@code APT 3}; a bare number or a pound sign gives {@code # 3}. */
    public static String unit(String text) {
        List<String> words = text.isEmpty() ? List.of() : words(text);
        if (words.isEmpty()) {
            return "";
        }
        if (words.size() == 1) {
            return PostalWords.isPlace(words.get(0)) ? PostalWords.place(words.get(0)) : "# " + words.get(0);
        }
        words.removeIf("#"::equals);
        String word = words.remove(0);
        return PostalWords.isUnit(word)
                ? (PostalWords.unit(word) + " " + String.join(" ", words)).strip()
                : ("# " + word + " " + String.join(" ", words)).strip();
    }

    /** Removes the unit's words from the end of the line and gives the unit, or an empty text. */
    private static String cutUnit(List<String> words) {
        for (int i = 1; i < words.size(); i++) {
            if (startsUnit(words, i)) {
                List<String> tail = words.subList(i, words.size());
                String unit = unit(String.join(" ", tail));
                tail.clear();
                return unit;
            }
        }
        return "";
    }

    private static boolean startsUnit(List<String> words, int i) {
        String word = words.get(i);
        boolean last = i + 1 == words.size();
        if ("#".equals(word)) {
            return !last;
        }
        if (PostalWords.isUnit(word)) {
            return !last && isDoor(PostalWords.unit(word), words.get(i + 1));
        }
        if (PostalWords.isPlace(word)) {
            return last;
        }
        return last && isDigit(word.charAt(0)) && endsStreet(words, i - 1) && word.matches("\\d+[A-Z]?");
    }

    /** Lot N may be a street's name and its directional; Apt N is a door. */
    private static boolean isDoor(String unit, String next) {
        boolean way = PostalWords.isWay(next) && !LETTERED.contains(unit);
        return "#".equals(next) || (!way && DOOR.matcher(next).matches());
    }

    /** Whether the street's name is over before a bare number: not so in Highway 61 or County Road 12. */
    private static boolean endsStreet(List<String> words, int at) {
        // Saint is spelled ST like Street, so that the two must part a line alike.
        String word = "SAINT".equals(words.get(at)) ? "ST" : words.get(at);
        boolean numbered = List.of("HWY", "RTE", "RD").contains(PostalWords.suffix(word)) && numbersRoads(words, at);
        return at > 0 && PostalWords.isSuffix(word) && !numbered;
    }

    private static boolean numbersRoads(List<String> words, int at) {
        String before = words.get(at - (at > 0 ? 1 : 0));
        return !"RD".equals(PostalWords.suffix(words.get(at)))
                || List.of("COUNTY", "STATE", "TOWNSHIP", "FOREST", "CO").contains(before);
    }

    private static List<String> words(String text) {
        String upper = isPlain(text) ? text : NameText.withoutMarks(text.toUpperCase(Locale.ROOT));
        List<String> words = new ArrayList<>();
        StringBuilder word = new StringBuilder();
        for (int i = 0; i <= upper.length(); i++) {
            char letter = i == upper.length() ? ' ' : upper(upper.charAt(i));
            if (isKept(letter)) {
                word.append(letter);
            } else if (letter != '.' && letter != '\'') {
                addWord(words, word);
                if (letter == '#') {
                    words.add("#");
                }
            }
        }
        return words;
    }

    private static void addWord(List<String> words, StringBuilder word) {
        boolean anything = false;
        for (int i = 0; i < word.length(); i++) {
            anything |= word.charAt(i) != '-' && word.charAt(i) != '/';
        }
        if (anything) {
            words.add(word.toString());
        }
        word.setLength(0);
    }

    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (text.charAt(i) > 127) {
                return false;
            }
        }
        return true;
    }

    private static char upper(char letter) {
        return letter >= 'a' && letter <= 'z' ? (char) (letter - 'a' + 'A') : letter;
    }

    private static boolean isDigit(char letter) {
        return letter >= '0' && letter <= '9';
    }

    private static boolean isKept(char letter) {
        return (letter >= 'A' && letter <= 'Z') || (letter >= '0' && letter <= '9') || letter == '/' || letter == '-';
    }

    /** Hyphens part words inside a street's name: Foster-Hill and Foster Hill are one. */
    private static List<String> dashless(List<String> words) {
        boolean dashed = false;
        for (String word : words) {
            dashed |= word.indexOf('-') >= 0 || word.indexOf('/') >= 0 || word.equals("#");
        }
        return !dashed
                ? words
                : NameText.words(String.join(" ", words)
                        .replaceAll("[-/#]+", " ")
                        .replaceAll(" +", " ")
                        .strip());
    }
}
