/**
 * An office's own exports: what is recognized of a file, which of its columns are which of ours, and the same rows in
 * our columns.
 * Every way a list is read starts from there.
 */
@NamedInterface("mapping")
@NullMarked
package org.proviso.files.mapping;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.NamedInterface;
