package org.proviso.files.mapping;

import org.proviso.core.Code;

/** What stands between the cells of a row; fixed width has nothing there, its layout says where each column lies. */
public enum Delimiter implements Code {
    COMMA(','),
    TAB('\t'),
    PIPE('|'),
    SEMICOLON(';'),
    FIXED_WIDTH('\0');

    private final char sign;

    Delimiter(char sign) {
        this.sign = sign;
    }

    char sign() {
        return sign;
    }
}
