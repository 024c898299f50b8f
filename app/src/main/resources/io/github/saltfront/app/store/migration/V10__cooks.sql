create table cook (
  id text primary key,
  title text not null,
  request text not null,
  options text not null,
  program_version text not null,
  started_ms integer not null,
  speed real not null,
  ended_ms integer
);

create table cook_reading (
  number integer primary key,
  cook_id text not null references cook (id),
  probe text not null,
  role text not null,
  time_ms integer not null,
  value real not null,
  unit text not null,
  source text not null,
  received_ms integer not null
);

create unique index cook_reading_once on cook_reading (cook_id, probe, time_ms, value, unit);

create table cook_event (
  number integer primary key,
  cook_id text not null references cook (id),
  kind text not null,
  content text not null,
  received_ms integer not null
);

create index cook_event_cook on cook_event (cook_id);
