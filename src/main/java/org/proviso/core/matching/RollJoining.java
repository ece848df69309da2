package org.proviso.core.matching;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

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
        RollIndex index = new RollJoining(List.of(added), List.of(roll.words())).joined(new Surroundings(roll, gone));
        index.words().less(gone.words());
        return index;
    }

    private RollIndex joined(@Nullable Surroundings surroundings) {
        RollWords words = new RollWords(
                joined(RollWords::surnames, surnames),
                joined(RollWords::givens, givens),
                joined(RollWords::middles, middles),
                joined(RollWords::streets, streets),
                joined(RollWords::doors, doors));
        words.freeze();
        TextArena ids = TextArena.joined(
                pieces.stream().map(piece -> piece.stretch().ids()).toList());
        RollColumns columns = columns();
        return new RollIndex(ids, words, columns, InvertedLists.of(columns, words), surroundings);
    }

    private Dictionary joined(Function<RollWords, Dictionary> column, List<int[]> numbers) {
        return Dictionary.joined(parts.stream().map(column).toList(), numbers);
    }

    private RollColumns columns() {
        int[] starts = new int[pieces.size() + 1];
        boolean anyFormer = false;
        for (int i = 0; i < pieces.size(); i++) {
            starts[i + 1] = starts[i] + pieces.get(i).stretch().former().size();
            anyFormer |= pieces.get(i).stretch().anyFormer();
        }
        int count = starts[pieces.size()];
        int[] cells = new int[count * RollColumns.WIDTH];
        int[] former = new int[anyFormer ? count : 0];
        AtomicInteger next = new AtomicInteger();
        Runnable work = () -> {
            for (int i = next.getAndIncrement(); i < pieces.size(); i = next.getAndIncrement()) {
                lay(pieces.get(i), starts[i], cells, former);
            }
        };
        Workers.run(
                work, Math.max(1, Math.min(pieces.size(), Runtime.getRuntime().availableProcessors())));
        return new RollColumns(cells, former);
    }

    private void lay(Piece piece, int start, int[] cells, int[] former) {
        IntColumn from = piece.stretch().cells();
        int portion = piece.portion();
        int base = start * RollColumns.WIDTH;
        from.copyTo(cells, base);
        for (int row = base; row < base + from.size(); row += RollColumns.WIDTH) {
            cells[row + SURNAME] = surnames.get(portion)[cells[row + SURNAME]];
            cells[row + GIVEN] = givens.get(portion)[cells[row + GIVEN]];
            cells[row + MIDDLE] = middles.get(portion)[cells[row + MIDDLE]];
            cells[row + STREET] = streets.get(portion)[cells[row + STREET]];
            cells[row + DOOR] = doors.get(portion)[cells[row + DOOR]];
        }
        if (former.length > 0) {
            for (int i = 0; i < piece.stretch().former().size(); i++) {
                former[start + i] =
                        surnames.get(portion)[piece.stretch().former().get(i)];
            }
        }
        from.clear();
    }
}
