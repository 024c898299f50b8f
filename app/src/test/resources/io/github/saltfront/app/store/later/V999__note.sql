alter table saved_plan add column note text not null default '';
