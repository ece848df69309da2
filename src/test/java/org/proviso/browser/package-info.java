/** The office as its people meet it: a whole server, a real browser, and what both can be asked. */
@NullMarked
package org.proviso.browser;

import org.jspecify.annotations.NullMarked;
