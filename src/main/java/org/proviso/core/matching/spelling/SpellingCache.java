package org.proviso.core.matching.spelling;

import java.util.Arrays;
import java.util.function.ToIntFunction;

/**
 * What each spelling of a column means, as a number, found by its bytes: a million rows have a few thousand spellings, and
 * each is read as text only once. For one thread.
 */
public final class SpellingCache {

    private static final int FIRST_SLOTS = 1 << 12;

    private final ToIntFunction<String> meaning;
    private int[] slots = new int[FIRST_SLOTS];
    private int[] hashes = new int[1024];
    private int[] ends = new int[1024];
    private int[] meanings = new int[1024];
    private byte[] arena = new byte[1 << 14];
    private int size;

    public SpellingCache(ToIntFunction<String> meaning) {
        this.meaning = meaning;
    }

    public int of(RollLine line, RollLine.Cell cell) {
        byte[] bytes = line.bytes();
        int start = line.start(cell);
        int end = line.end(cell);
        int hash = hash(bytes, start, end);
        int slot = hash & slots.length - 1;
        while (slots[slot] != 0) {
            int known = slots[slot] - 1;
            if (hashes[known] == hash && equal(known, bytes, start, end)) {
                return meanings[known];
            }
            slot = slot + 1 & slots.length - 1;
        }
        int number = meaning.applyAsInt(line.text(cell));
        learn(slot, hash, bytes, start, end, number);
        return number;
    }

    private static int hash(byte[] bytes, int start, int end) {
        long hash = (long) end - start;
        for (int i = start; i < end; i++) {
            hash = (hash ^ bytes[i]) * 0x9E3779B97F4A7C15L;
        }
        return (int) (hash >>> 32);
    }

    private boolean equal(int known, byte[] bytes, int start, int end) {
        int from = known == 0 ? 0 : ends[known - 1];
        return Arrays.equals(arena, from, ends[known], bytes, start, end);
    }

    private void learn(int slot, int hash, byte[] bytes, int start, int end, int number) {
        int from = size == 0 ? 0 : ends[size - 1];
        int to = from + end - start;
        if (size == hashes.length) {
            hashes = Arrays.copyOf(hashes, 2 * size);
            ends = Arrays.copyOf(ends, 2 * size);
            meanings = Arrays.copyOf(meanings, 2 * size);
        }
        if (to > arena.length) {
            arena = Arrays.copyOf(arena, Math.max(to, 2 * arena.length));
        }
        System.arraycopy(bytes, start, arena, from, end - start);
        hashes[size] = hash;
        ends[size] = to;
        meanings[size] = number;
        slots[slot] = ++size;
        if (2 * size > slots.length) {
            grow();
        }
    }

    private void grow() {
        slots = new int[2 * slots.length];
        for (int known = 0; known < size; known++) {
            int slot = hashes[known] & slots.length - 1;
            while (slots[slot] != 0) {
                slot = slot + 1 & slots.length - 1;
            }
            slots[slot] = known + 1;
        }
    }
}
