/** The notices in the browser: whom the office must still tell, the letters, and what became of them. */
@NullMarked
package org.proviso.notices.ui;

import org.jspecify.annotations.NullMarked;
