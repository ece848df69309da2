-- A vote that another member recorded, for a member without a device: whether that member confirms it as their own.
alter table vote add column confirmed boolean;
alter table vote add column confirmed_at timestamp with time zone;
