package org.proviso.review.ui.desk;

/** Who decided, as a case says it. */
final class DeciderWords {

    private DeciderWords() {}

    static String of(String decider) {
        return switch (decider) {
            case "court" -> "a court";
            case "official" -> "the official";
            case "two_bodies" -> "both bodies";
            default -> "the board";
        };
    }
}
