-- Bytes of an image, of any length.
create domain image_bytes as bytea;
