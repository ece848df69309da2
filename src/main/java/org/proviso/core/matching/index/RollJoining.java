package org.proviso.core.matching.index;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.function.IntConsumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.proviso.core.matching.spelling.IntColumn;
import org.proviso.core.matching.spelling.Soundex;
import org.proviso.core.matching.spelling.TextArena;

/** Joins what several threads read of a roll into one index, in the order of the roll. */
final class RollJoining {

    /** How many numbers {@link RollPortion} writes for each voter, and the place of the surname's. */
    private static final int WIDTH = 10;

    private static final int SURNAME = 0;

    private final List<Piece> pieces = new ArrayList<>();
    private final List<RollWords> parts;
    private final List<int[]> surnames = new ArrayList<>();
    private final List<int[]> givens = new ArrayList<>();
    private final List<int[]> middles = new ArrayList<>();
    private final List<int[]> streets = new ArrayList<>();
    private final List<int[]> doors = new ArrayList<>();

    private int[] placesOfIds = new int[0];

    private record Piece(RollPortion.Stretch stretch, int portion) {}

    private RollJoining(List<RollPortion> portions, List<RollWords> others) {
        parts = Stream.concat(portions.stream().map(RollPortion::words), others.stream())
                .toList();
        for (int i = 0; i < portions.size(); i++) {
            for (RollPortion.Stretch stretch : portions.get(i).stretches()) {
                pieces.add(new Piece(stretch, i));
            }
        }
        pieces.sort(Comparator.comparingLong(piece -> piece.stretch().place()));
    }

    static RollIndex of(List<RollPortion> portions) {
        return new RollJoining(portions, List.of()).joined(null);
    }

    /** The index of a few voters that stand in a roll in place of those gone: the counts of its words are the roll's. */
    static RollIndex within(RollIndex roll, RollIndex gone, RollPortion added) {
        RollIndex index = new RollJoining(List.of(added), List.of(roll.words())).joined(new BaseRoll(roll, gone));
        index.words().less(gone.words());
        return index;
    }

    private RollIndex joined(@Nullable BaseRoll surroundings) {
        RollWords words = new RollWords(
                joined(RollWords::surnames, surnames),
                joined(RollWords::givens, givens),
                joined(RollWords::middles, middles),
                joined(RollWords::streets, streets),
                joined(RollWords::doors, doors));
        words.freeze();
        TextArena ids = TextArena.joined(
                pieces.stream().map(piece -> piece.stretch().ids()).toList());
        RollColumns columns = columns(words.surnames());
        return new RollIndex(ids, placesOfIds, words, columns, InvertedLists.of(columns, words), surroundings);
    }

    private TextDictionary joined(Function<RollWords, TextDictionary> column, List<int[]> numbers) {
        return TextDictionary.joined(parts.stream().map(column).toList(), numbers);
    }

    /** Lays the rows by the sounds of their surnames, within a sound in the order of the roll. */
    private RollColumns columns(TextDictionary surnames) {
        int[] starts = new int[pieces.size() + 1];
        boolean anyFormer = false;
        for (int i = 0; i < pieces.size(); i++) {
            starts[i + 1] = starts[i] + pieces.get(i).stretch().former().size();
            anyFormer |= pieces.get(i).stretch().anyFormer();
        }
        int count = starts[pieces.size()];
        placesOfIds = new int[count];
        RollColumns columns = new RollColumns(count, anyFormer);
        int[][] places = new int[pieces.size()][];
        eachPiece(i -> places[i] = counted(pieces.get(i), surnames));
        follow(places);
        eachPiece(i -> lay(pieces.get(i), starts[i], places[i], surnames, columns));
        return columns;
    }

    private void eachPiece(IntConsumer work) {
        AtomicInteger next = new AtomicInteger();
        Runnable thread = () -> {
            for (int i = next.getAndIncrement(); i < pieces.size(); i = next.getAndIncrement()) {
                work.accept(i);
            }
        };
        ParallelWork.run(
                thread, Math.max(1, Math.min(pieces.size(), Runtime.getRuntime().availableProcessors())));
    }

    /** How many of a piece's voters have a surname of each sound. */
    private int[] counted(Piece piece, TextDictionary names) {
        int[] counts = new int[Soundex.NUMBERS];
        IntColumn rows = piece.stretch().cells();
        int[] numbers = surnames.get(piece.portion());
        for (int row = 0; row < rows.size(); row += WIDTH) {
            counts[names.sound(numbers[rows.get(row + SURNAME)])]++;
        }
        return counts;
    }

    /** Turns the counts into the place of the first of each. */
    private static void follow(int[][] counts) {
        int next = 0;
        for (int sound = 0; sound < Soundex.NUMBERS; sound++) {
            for (int[] piece : counts) {
                int count = piece[sound];
                piece[sound] = next;
                next += count;
            }
        }
    }

    private void lay(Piece piece, int start, int[] places, TextDictionary names, RollColumns columns) {
        IntColumn rows = piece.stretch().cells();
        int portion = piece.portion();
        int[] surnameNumbers = surnames.get(portion);
        for (int i = 0; i < rows.size() / WIDTH; i++) {
            int row = i * WIDTH;
            int surname = surnameNumbers[rows.get(row + SURNAME)];
            int voter = places[names.sound(surname)]++;
            placesOfIds[voter] = start + i;
            int given = givens.get(portion)[rows.get(row + 1)];
            int middle = middles.get(portion)[rows.get(row + 2)];
            int former = surnameNumbers[piece.stretch().former().get(i)];
            columns.setName(voter, surname, given, middle, former);
            int street = streets.get(portion)[rows.get(row + 5)];
            int door = doors.get(portion)[rows.get(row + 6)];
            columns.setAddress(voter, rows.get(row + 4), street, door, rows.get(row + 7));
            columns.setNumbers(voter, rows.get(row + 3), rows.get(row + 8), rows.get(row + 9));
        }
        rows.clear();
    }
}
