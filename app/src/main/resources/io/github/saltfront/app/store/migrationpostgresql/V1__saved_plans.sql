create table saved_plan (
  id text primary key,
  title text not null,
  request text not null,
  program_version text not null,
  created_ms bigint not null,
  changed_ms bigint not null,
  deleted_ms bigint
);

create index saved_plan_changed on saved_plan (changed_ms);
