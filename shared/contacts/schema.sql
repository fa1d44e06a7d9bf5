-- The shared contact log on PostgreSQL 14 or later. Run once, as the owner of the database:
--   psql -v ON_ERROR_STOP=1 -f schema.sql -f reports.sql -f roles.sql
-- docs/contacts.md says how desks send and coordinators read.

create schema contacts;

-- Every version of every entry. No column takes a sentence, a name or a phone number.
create table contacts.entry (
  kind text not null check (kind in ('contact', 'hours')),
  id uuid not null,
  edit integer not null check (edit between 0 and 9999),
  mark text not null collate "C" check (mark ~ '^[0-9a-f]{8}$'),
  date date not null check (date between '2000-01-01' and '2099-12-31'),
  volunteer integer check (volunteer between 1 and 9999),
  tree text check (tree ~ '^[a-z][a-z0-9]*(-[a-z0-9]+){0,7}$' and length(tree) <= 48),
  edition integer check (edition between 1 and 99999),
  fingerprint text check (fingerprint ~ '^[0-9a-f]{12}$'),
  topic text check (topic in (
    'canning', 'pickling', 'jam-and-jelly', 'freezing', 'drying', 'meat-and-fish', 'storage',
    'equipment', 'other-topic'
  )),
  referred boolean,
  batch text check (batch in (
    'normal-growth', 'quality-only', 'yeast-strands', 'wait-and-recheck', 'ask-specialist',
    'discard-and-sanitize', 'likely-mold', 'possible-toxin'
  )),
  container text check (container in ('pressure-caution', 'pressure-hazard')),
  sheet boolean,
  referral text check (referral in ('state-specialist', 'other-county', 'regulator')),
  method text check (method in ('phone', 'call-back', 'walk-in', 'email', 'event')),
  direct boolean,
  count integer check (count between 1 and 100000),
  minutes integer not null check (minutes between 0 and 1440),
  language text check (language ~ '^[a-z]{2,3}$'),
  area text check (area ~ '^([0-9]{5}|[0-9]{3})$'),
  know_how text check (know_how ~ '^[a-z][a-z0-9]*(-[a-z0-9]+){0,7}$' and length(know_how) <= 48),
  state text not null check (state in ('resolved', 'pending', 'void')),
  review boolean,
  primary key (id, edit, mark),
  -- What is asked about: a tree as it was, or another topic.
  check (kind = 'hours' or (tree is null) <> (topic is null)),
  check ((tree is null) = (edition is null) and (tree is null) = (fingerprint is null)),
  check (tree is not null or (batch is null and container is null)),
  -- Where somebody was sent on, nothing else is told of it.
  check (not coalesce(referred, false)
    or (batch is null and container is null and referral is null and not sheet)),
  check (count is null or count = 1 or method = 'event'),
  check (kind = 'hours' or num_nulls(
    referred, sheet, method, direct, count, language, review
  ) = 0),
  check (kind = 'contact' or (volunteer is not null and minutes > 0 and state <> 'pending'
    and num_nonnulls(
      tree, topic, referred, batch, container, sheet, referral, method, direct, count, language,
      area, know_how, review
    ) = 0))
);
create index entry_date on contacts.entry (date);

-- Where desks put their lines: nothing can be read back from it.
create view contacts.intake as select null::text as line where false;

-- Takes in one line of a desk's file, or refuses the whole file: a refused line is kept nowhere, since
-- nobody knows what is in it.
create function contacts.take_in() returns trigger
  language plpgsql security definer set search_path = pg_catalog, pg_temp
as $$
declare
  given jsonb;
  fields text[];
  wanted text[];
begin
  if new.line is null or btrim(new.line, E' \t\r') = '' then
    return null;
  end if;
  given := new.line::jsonb;
  select array_agg(field order by field collate "C") into fields
    from jsonb_object_keys(given) as field;
  wanted := case given ->> 'kind'
    when 'contact' then array[
      'area', 'batch', 'container', 'count', 'date', 'direct', 'edit', 'edition', 'fingerprint', 'id',
      'kind', 'knowHow', 'language', 'mark', 'method', 'minutes', 'referral', 'referred', 'review',
      'sheet', 'state', 'topic', 'tree', 'volunteer'
    ]
    when 'hours' then array['date', 'edit', 'id', 'kind', 'mark', 'minutes', 'state', 'volunteer']
  end;
  if fields is distinct from wanted then
    raise exception 'This line has other fields than a record of the contact log.';
  end if;
  insert into contacts.entry values (
    given ->> 'kind', (given ->> 'id')::uuid, (given ->> 'edit')::integer, given ->> 'mark',
    (given ->> 'date')::date, (given ->> 'volunteer')::integer, given ->> 'tree',
    (given ->> 'edition')::integer, given ->> 'fingerprint', given ->> 'topic',
    (given ->> 'referred')::boolean, given ->> 'batch', given ->> 'container',
    (given ->> 'sheet')::boolean, given ->> 'referral', given ->> 'method',
    (given ->> 'direct')::boolean, (given ->> 'count')::integer, (given ->> 'minutes')::integer,
    given ->> 'language', given ->> 'area', given ->> 'knowHow', given ->> 'state',
    (given ->> 'review')::boolean
  )
  on conflict (id, edit, mark) do nothing;
  return new;
end
$$;

create trigger take_in instead of insert on contacts.intake
  for each row execute function contacts.take_in();
