/** Rows of outside lists that could not be read: shown, left out with a reason, refused with their file, or mended. */
@NullMarked
package org.proviso.setup.aside;

import org.jspecify.annotations.NullMarked;
