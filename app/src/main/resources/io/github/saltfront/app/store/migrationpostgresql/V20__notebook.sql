-- A cook as it was noted. The document is the cook file as JSON, with its request inside; planned and evidence are what the program
-- of that day computed from it, so that learning does not change under the cook's hands.
create table noted_cook (
    id text primary key,
    title text not null,
    cooked_on text not null,
    profile text not null,
    document text not null,
    planned text not null,
    evidence text not null,
    readings text not null,
    program_version text not null,
    created_ms bigint not null,
    changed_ms bigint not null,
    deleted_ms bigint
);
create index noted_cook_by_day on noted_cook (cooked_on);

create table noted_cook_tag (
    cook_id text not null references noted_cook (id) on delete cascade,
    tag text not null,
    primary key (cook_id, tag)
);

-- The pictures themselves are files beside the database.
create table noted_cook_photo (
    id text primary key,
    cook_id text not null references noted_cook (id) on delete cascade,
    caption text not null,
    width integer not null,
    height integer not null,
    added_ms bigint not null
);

-- What is older than a reset does not count for the quantity any more.
create table learning_reset (
    profile text not null,
    quantity text not null,
    at_ms bigint not null,
    primary key (profile, quantity)
);

create table instrument_check (
    id text primary key,
    instrument text not null,
    day text not null,
    ice_c double precision not null,
    boiling_c double precision,
    boiling_point_c double precision,
    boiling_bound_k double precision,
    step_k double precision not null,
    note text not null,
    created_ms bigint not null
);

create table trial (
    id text primary key,
    title text not null,
    document text not null,
    created_ms bigint not null,
    deleted_ms bigint
);

-- One token for each taster: it opens this taster's sheet and nothing else.
create table trial_taster (
    token text primary key,
    trial_id text not null references trial (id) on delete cascade,
    taster integer not null,
    unique (trial_id, taster)
);

create table trial_answer (
    trial_id text not null references trial (id) on delete cascade,
    taster integer not null,
    round integer not null,
    code text not null,
    answer text not null,
    note text not null,
    received_ms bigint not null,
    primary key (trial_id, taster, round, code)
);
