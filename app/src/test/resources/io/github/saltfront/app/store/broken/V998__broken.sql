alter table saved_plan add column whim text;
insert into no_such_table values (1);
