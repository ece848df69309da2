package org.proviso.files.mapping;

/**
 * A value that does not fit our column: an unknown code, a date of another form, nothing where every row needs
 * something. {@code count} rows have it, the first on {@code firstLine}. Of what is {@code refused} a load says every
 * row; the rest is read as it came.
 */
public record Misfit(String field, String column, String value, long count, int firstLine, boolean refused) {}
