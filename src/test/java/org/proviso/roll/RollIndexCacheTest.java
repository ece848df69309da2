package org.proviso.roll;

import static org.assertj.core.api.Assertions.assertThat;
import static org.mockito.ArgumentMatchers.any;
import static org.mockito.ArgumentMatchers.eq;
import static org.mockito.Mockito.doAnswer;
import static org.mockito.Mockito.mock;
import static org.mockito.Mockito.times;
import static org.mockito.Mockito.verify;
import static org.mockito.Mockito.when;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.mockito.invocation.InvocationOnMock;
import org.proviso.core.ElectionId;
import org.proviso.core.PersonName;
import org.proviso.core.VoterId;
import org.proviso.core.matching.index.RollEntry;

/** The index is read once, says so while it is, and is always of the roll it is held for. */
class RollIndexCacheTest {

    private static final String ID = "invented";

    private final RollService roll = mock(RollService.class);
    private final RollIndexCache holder = new RollIndexCache(roll);
    private final List<Boolean> readingWhileRead = new ArrayList<>();

    @Test
    void who_looks_while_the_roll_is_read_sees_that_it_is() {
        when(roll.rollHash(new ElectionId(ID))).thenReturn("a");
        handsOver(3);
        assertThat(holder.isReading()).isFalse();
        assertThat(holder.roll(new ElectionId(ID)).size()).isEqualTo(3);
        assertThat(readingWhileRead).containsExactly(true);
        assertThat(holder.isReading()).isFalse();
        holder.roll(new ElectionId(ID));
        verify(roll, times(1)).entries(eq(new ElectionId(ID)), any());
    }

    @Test
    void a_roll_that_is_replaced_while_it_is_read_is_read_again() {
        when(roll.rollHash(new ElectionId(ID))).thenReturn("a", "a", "b", "b", "b");
        handsOver(3);
        holder.roll(new ElectionId(ID));
        verify(roll, times(2)).entries(eq(new ElectionId(ID)), any());
        when(roll.rollHash(new ElectionId(ID))).thenReturn("b");
        holder.roll(new ElectionId(ID));
        verify(roll, times(2)).entries(eq(new ElectionId(ID)), any());
    }

    @Test
    void a_roll_that_cannot_be_read_is_no_longer_said_to_be() {
        when(roll.rollHash(new ElectionId(ID))).thenReturn("a");
        doAnswer(call -> {
                    throw new IllegalStateException("no database");
                })
                .when(roll)
                .entries(eq(new ElectionId(ID)), any());
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> holder.roll(new ElectionId(ID)))
                .hasMessage("no database");
        assertThat(holder.isReading()).isFalse();
    }

    private void handsOver(int voters) {
        doAnswer(call -> hand(call, voters)).when(roll).entries(eq(new ElectionId(ID)), any());
    }

    private Object hand(InvocationOnMock call, int voters) {
        readingWhileRead.add(holder.isReading());
        Consumer<RollEntry> each = call.getArgument(1);
        for (int i = 0; i < voters; i++) {
            each.accept(new RollEntry(
                    new VoterId("V" + i),
                    new PersonName("Kell", "Ada", "", ""),
                    "",
                    LocalDate.of(1980, 1, 1 + i),
                    "12",
                    "Oak St",
                    "",
                    "49871",
                    "",
                    ""));
        }
        return null;
    }
}
