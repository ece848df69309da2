package org.proviso.notices;

import org.proviso.core.Code;

/** How a voter was told. */
public enum NoticeChannel implements Code {
    MAIL,
    EMAIL,
    PHONE,
    IN_PERSON
}
