/** Signatures drawn as pictures: a hand, its letters, the pen on paper, and the file the picture is kept in. */
@NullMarked
package org.proviso.sample.signature;

import org.jspecify.annotations.NullMarked;
