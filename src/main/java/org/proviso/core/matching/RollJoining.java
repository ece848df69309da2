package org.proviso.core.matching;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.function.IntConsumer;

/** Joins what several threads read of a roll into one index, in the order of the roll. */
final class RollJoining {

    /** The columns that hold numbers of words, by their place in a voter's row. */
    private static final int SURNAME = 0;

    private static final int GIVEN = 1;
    private static final int MIDDLE = 2;
    private static final int STREET = 5;
    private static final int DOOR = 6;

    private final List<Piece> pieces = new ArrayList<>();
    private final List<RollWords> parts;
    private final List<int[]> surnames = new ArrayList<>();
    private final List<int[]> givens = new ArrayList<>();
    private final List<int[]> middles = new ArrayList<>();
    private final List<int[]> streets = new ArrayList<>();
    private final List<int[]> doors = new ArrayList<>();

    private int[] placesOfIds = new int[0];

    private record Piece(RollPortion.Stretch stretch, int portion) {}

    private RollJoining(List<RollPortion> portions) {
        parts = portions.stream().map(RollPortion::words).toList();
        for (int i = 0; i < portions.size(); i++) {
            for (RollPortion.Stretch stretch : portions.get(i).stretches()) {
                pieces.add(new Piece(stretch, i));
            }
        }
        pieces.sort(Comparator.comparingLong(piece -> piece.stretch().place()));
    }

    static RollIndex of(List<RollPortion> portions) {
        return new RollJoining(portions).joined();
    }

    private RollIndex joined() {
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
        return new RollIndex(ids, placesOfIds, words, columns, InvertedLists.of(columns, words));
    }

    private Dictionary joined(Function<RollWords, Dictionary> column, List<int[]> numbers) {
        return Dictionary.joined(parts.stream().map(column).toList(), numbers);
    }

    /** Lays the rows by the sounds of their surnames, within a sound in the order of the roll. */
    private RollColumns columns(Dictionary surnames) {
        int[] starts = new int[pieces.size() + 1];
        boolean anyFormer = false;
        for (int i = 0; i < pieces.size(); i++) {
            starts[i + 1] = starts[i] + pieces.get(i).stretch().former().size();
            anyFormer |= pieces.get(i).stretch().anyFormer();
        }
        int count = starts[pieces.size()];
        placesOfIds = new int[count];
        int[] cells = new int[count * RollColumns.WIDTH];
        int[] former = new int[anyFormer ? count : 0];
        int[][] places = new int[pieces.size()][];
        eachPiece(i -> places[i] = counted(pieces.get(i), surnames));
        follow(places);
        eachPiece(i -> lay(pieces.get(i), starts[i], places[i], surnames, cells, former));
        return new RollColumns(cells, former);
    }

    private void eachPiece(IntConsumer work) {
        AtomicInteger next = new AtomicInteger();
        Runnable thread = () -> {
            for (int i = next.getAndIncrement(); i < pieces.size(); i = next.getAndIncrement()) {
                work.accept(i);
            }
        };
        Workers.run(
                thread,
                Math.max(1, Math.min(pieces.size(), Runtime.getRuntime().availableProcessors())));
    }

    /** How many of a piece's voters have a surname of each sound. */
    private int[] counted(Piece piece, Dictionary names) {
        int[] counts = new int[Soundex.NUMBERS];
        IntColumn rows = piece.stretch().cells();
        int[] numbers = surnames.get(piece.portion());
        for (int row = 0; row < rows.size(); row += RollColumns.WIDTH) {
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

    private void lay(Piece piece, int start, int[] places, Dictionary names, int[] cells, int[] former) {
        IntColumn rows = piece.stretch().cells();
        int portion = piece.portion();
        int[] surnameNumbers = surnames.get(portion);
        for (int i = 0; i < rows.size() / RollColumns.WIDTH; i++) {
            int from = i * RollColumns.WIDTH;
            int surname = surnameNumbers[rows.get(from + SURNAME)];
            int voter = places[names.sound(surname)]++;
            placesOfIds[voter] = start + i;
            int row = voter * RollColumns.WIDTH;
            rows.copyTo(cells, row, from, RollColumns.WIDTH);
            cells[row + SURNAME] = surname;
            cells[row + GIVEN] = givens.get(portion)[cells[row + GIVEN]];
            cells[row + MIDDLE] = middles.get(portion)[cells[row + MIDDLE]];
            cells[row + STREET] = streets.get(portion)[cells[row + STREET]];
            cells[row + DOOR] = doors.get(portion)[cells[row + DOOR]];
            if (former.length > 0) {
                former[voter] = surnameNumbers[piece.stretch().former().get(i)];
            }
        }
        rows.clear();
    }
}
