package org.proviso.bench;

import java.util.SplittableRandom;

/** Streets, cities and homes: one ZIP code for about twelve thousand voters, each with its own streets. */
final class Town {

    private static final String[] ROOTS = {
        "Ash",
        "Beaver",
        "Birch",
        "Bluff",
        "Canal",
        "Cedar",
        "Cherry",
        "Church",
        "Clay",
        "Court",
        "Depot",
        "Dogwood",
        "Eagle",
        "Elm",
        "Fairview",
        "Falcon",
        "Forest",
        "Garfield",
        "Glen",
        "Grant",
        "Hickory",
        "High",
        "Hill",
        "Hunter",
        "Jackson",
        "Jefferson",
        "Lake",
        "Laurel",
        "Lincoln",
        "Locust",
        "Madison",
        "Magnolia",
        "Main",
        "Maple",
        "Market",
        "Mill",
        "Monroe",
        "Oak",
        "Orchard",
        "Park",
        "Pine",
        "Poplar",
        "Prospect",
        "Quail",
        "Railroad",
        "River",
        "Saint Mary",
        "Spring",
        "Spruce",
        "Sunset",
        "Sycamore",
        "Union",
        "Valley",
        "Walnut",
        "Washington",
        "Water"
    };
    private static final String[] SECONDS = {"Brook", "Creek", "Crest", "Grove", "Hollow", "Point", "Ridge", "View"};
    private static final String[] KINDS = {
        "Street",
        "Street",
        "Street",
        "Avenue",
        "Avenue",
        "Road",
        "Drive",
        "Lane",
        "Court",
        "Boulevard",
        "Place",
        "Terrace",
        "Circle",
        "Trail"
    };
    private static final String[] WAYS = {"", "", "", "", "North ", "South ", "East ", "West "};
    private static final int STREETS_OF_ZIP = 150;
    private static final int VOTERS_OF_ZIP = 12_000;

    private final SplittableRandom random;
    private final String[][] streets;

    Town(SplittableRandom random, int voters) {
        this.random = random;
        streets = new String[1 + voters / VOTERS_OF_ZIP][STREETS_OF_ZIP];
        for (String[] zip : streets) {
            for (int i = 0; i < zip.length; i++) {
                zip[i] = street();
            }
        }
    }

    private String street() {
        String root = random.nextInt(9) == 0 ? ordinal(1 + random.nextInt(99)) : ROOTS[random.nextInt(ROOTS.length)];
        String second = random.nextInt(3) == 0 ? " " + SECONDS[random.nextInt(SECONDS.length)] : "";
        return WAYS[random.nextInt(WAYS.length)] + root + second + " " + KINDS[random.nextInt(KINDS.length)];
    }

    private static String ordinal(int number) {
        boolean teen = number / 10 == 1;
        String ending = teen || number % 10 == 0 || number % 10 > 3
                ? "th"
                : number % 10 == 1 ? "st" : number % 10 == 2 ? "nd" : "rd";
        return number + ending;
    }

    Person.Home home() {
        int zip = random.nextInt(streets.length);
        boolean flat = random.nextInt(4) == 0;
        int house = flat ? 100 * (1 + random.nextInt(30)) : 1 + random.nextInt(random.nextBoolean() ? 999 : 9_999);
        String unit = flat ? "Apt " + (1 + random.nextInt(60)) : "";
        String street = streets[zip][random.nextInt(STREETS_OF_ZIP)];
        return new Person.Home(
                house, street, unit, "Town " + (char) ('A' + zip / 4 % 26) + zip / 104, String.valueOf(30_000 + zip));
    }
}
