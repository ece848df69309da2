package org.proviso.core.adjudication.facts;

import org.proviso.core.Code;

/** One value that a fact may take, with its meaning in the office's words. */
public interface FactWord extends Code {

    String meaning();
}
