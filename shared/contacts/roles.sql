-- Two roles that logins are given: `grant jarside_desk to desk_1;`

-- A desk may add lines, and neither read, change nor delete any.
create role jarside_desk nologin;
grant usage on schema contacts to jarside_desk;
grant insert on contacts.intake to jarside_desk;

-- A coordinator may read everything, and neither add, change nor delete.
create role jarside_coordinator nologin;
grant usage on schema contacts to jarside_coordinator;
grant select on all tables in schema contacts to jarside_coordinator;

revoke all on function contacts.take_in(), contacts.report(date, date) from public;
grant execute on function contacts.report(date, date) to jarside_coordinator;
