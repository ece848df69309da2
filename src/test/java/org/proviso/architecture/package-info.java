/** The rules of the house, checked on the compiled classes; each is shown to fail on a fixture that breaks it. */
@NullMarked
package org.proviso.architecture;

import org.jspecify.annotations.NullMarked;
