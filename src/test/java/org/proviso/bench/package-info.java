/** The benchmark of matching and storage: invented files, the program itself run cold, and yardsticks beside it. */
@NullMarked
package org.proviso.bench;

import org.jspecify.annotations.NullMarked;
