-- The reports of the contact log, the same as those of the desk's page and of `jarside tally`.

-- Of each entry the version that counts: edited most, then the greater mark.
create view contacts.latest as
  select distinct on (id) * from contacts.entry order by id, edit desc, mark desc;

-- What counts, with the periods it lies in. The federal fiscal year runs from October 1 to September 30
-- and is named by the year in which it ends (31 U.S.C. 1102).
create view contacts.counted as
  select
    *,
    extract(year from date)::integer as calendar_year,
    extract(quarter from date)::integer as quarter,
    extract(year from date + interval '3 months')::integer as fiscal_year
  from contacts.latest
  where state <> 'void';

-- Every contact once in each table of a report.
create view contacts.counted_by as
  select
    counted.date, counted.calendar_year, counted.quarter, counted.fiscal_year,
    by.table_name, by.key, counted.count as people
  from contacts.counted
  cross join lateral (values
    ('method', method),
    ('reach', case when direct then 'direct' else 'indirect' end),
    ('topic', coalesce(tree, topic)),
    ('batch', case when referred then 'referred' else coalesce(batch, 'none') end),
    ('container', coalesce(container, 'none')),
    ('referral', coalesce(referral, 'none')),
    ('language', language),
    ('area', coalesce(area, 'unknown')),
    ('state', state),
    ('sheet', case when sheet then 'yes' else 'no' end),
    ('know-how', coalesce(know_how, 'none'))
  ) as by (table_name, key)
  where kind = 'contact'
  union all
  select
    counted.date, counted.calendar_year, counted.quarter, counted.fiscal_year,
    by.table_name, by.key, by.number
  from contacts.counted
  cross join lateral (values
    ('all', 'contacts', count),
    ('all', 'records', 1),
    ('all', 'minutes', minutes)
  ) as by (table_name, key, number)
  where kind = 'contact'
  union all
  select
    date, calendar_year, quarter, fiscal_year, 'volunteer-minutes', volunteer::text, minutes
  from contacts.counted
  where kind = 'hours';

create view contacts.by_quarter as
  select calendar_year, quarter, table_name, key, sum(people)::bigint as people
  from contacts.counted_by
  group by calendar_year, quarter, table_name, key
  order by calendar_year, quarter, table_name, people desc, key;

create view contacts.by_calendar_year as
  select calendar_year, table_name, key, sum(people)::bigint as people
  from contacts.counted_by
  group by calendar_year, table_name, key
  order by calendar_year, table_name, people desc, key;

create view contacts.by_fiscal_year as
  select fiscal_year, table_name, key, sum(people)::bigint as people
  from contacts.counted_by
  group by fiscal_year, table_name, key
  order by fiscal_year, table_name, people desc, key;

-- Any span of days, both included.
create function contacts.report(first_day date, last_day date)
  returns table (table_name text, key text, people bigint)
  language sql stable
as $$
  select table_name, key, sum(people)::bigint
  from contacts.counted_by
  where date between first_day and last_day
  group by table_name, key
  order by table_name, sum(people) desc, key
$$;

-- Entries with more than one version, for whoever looks after the log.
create view contacts.edited as
  select entry.*, entry.edit = latest.edit and entry.mark = latest.mark as counts
  from contacts.entry
  join contacts.latest using (id)
  where id in (select id from contacts.entry group by id having count(*) > 1)
  order by id, entry.edit desc, entry.mark desc;
