-- Labels that were printed, on what, and how true each printer is.
alter table short_code drop constraint short_code_kind;
alter table short_code add constraint short_code_kind check (kind in ('rack', 'shelf', 'mat', 'sowing'));
comment on column short_code.kind is 'What it stands for: a rack, a shelf, a mat or a sowing.';

create table label_stock (
  id uuid not null,
  medium varchar(5) not null,
  name varchar(40) not null,
  page_width_mm numeric(6, 2) not null,
  page_height_mm numeric(6, 2) not null,
  width_mm numeric(6, 2) not null,
  height_mm numeric(6, 2) not null,
  label_columns integer not null,
  label_rows integer not null,
  left_mm numeric(6, 2) not null,
  top_mm numeric(6, 2) not null,
  gap_across_mm numeric(6, 2) not null,
  gap_down_mm numeric(6, 2) not null,
  point_mm numeric(6, 2) not null,
  made_by uuid not null,
  made_at timestamp(3) with time zone not null,
  removed_by uuid,
  removed_at timestamp(3) with time zone,
  constraint label_stock_pk primary key (id),
  constraint label_stock_medium check (medium in ('stick', 'tag', 'roll', 'sheet')),
  constraint label_stock_measures check (page_width_mm > 0 and page_height_mm > 0 and width_mm > 0 and height_mm > 0),
  constraint label_stock_grid check (label_columns >= 1 and label_rows >= 1),
  constraint label_stock_made_by_fk foreign key (made_by) references member (id),
  constraint label_stock_removed_by_fk foreign key (removed_by) references member (id)
);

comment on table label_stock is 'Blank labels of a size of the group’s own, beside the usual sizes that the program knows. All measures in millimetres.';
comment on column label_stock.medium is 'stick, tag, roll or sheet.';
comment on column label_stock.page_width_mm is 'The width of what goes through the printer: the sheet, or of the others one label.';
comment on column label_stock.page_height_mm is 'Its height.';
comment on column label_stock.width_mm is 'The width of a label as it lies on the page.';
comment on column label_stock.height_mm is 'The height of a label as it lies on the page.';
comment on column label_stock.label_columns is 'Labels side by side on a page.';
comment on column label_stock.label_rows is 'Labels one below the other on a page.';
comment on column label_stock.left_mm is 'From the page’s left edge to the first label.';
comment on column label_stock.top_mm is 'From the page’s upper edge to the first label.';
comment on column label_stock.gap_across_mm is 'Between two labels side by side.';
comment on column label_stock.gap_down_mm is 'Between two labels one below the other.';
comment on column label_stock.point_mm is 'How much of a stick’s length goes into the compost, or of a tag’s carries the hole, and is not printed.';
comment on column label_stock.made_by is 'Who measured it.';
comment on column label_stock.removed_by is 'Who took it off the list. Empty: it is offered.';
comment on column label_stock.removed_at is 'When it was taken off the list. Empty: it is offered.';

create table label_printer (
  id uuid not null,
  name varchar(40) not null,
  scale_across numeric(8, 6) not null,
  scale_down numeric(8, 6) not null,
  shift_across_mm numeric(6, 2) not null,
  shift_down_mm numeric(6, 2) not null,
  measured_by uuid not null,
  measured_at timestamp(3) with time zone not null,
  removed_by uuid,
  removed_at timestamp(3) with time zone,
  constraint label_printer_pk primary key (id),
  constraint label_printer_scales check (scale_across > 0 and scale_down > 0),
  constraint label_printer_measured_by_fk foreign key (measured_by) references member (id),
  constraint label_printer_removed_by_fk foreign key (removed_by) references member (id)
);

comment on table label_printer is 'A printer somebody measured a calibration sheet of, so that labels come out true to size on it.';
comment on column label_printer.name is 'What the group calls it.';
comment on column label_printer.scale_across is 'What a millimetre across becomes on it.';
comment on column label_printer.scale_down is 'What a millimetre down becomes on it.';
comment on column label_printer.shift_across_mm is 'By how much all comes out too far right; 0 where that was not measured.';
comment on column label_printer.shift_down_mm is 'By how much all comes out too far down; 0 where that was not measured.';
comment on column label_printer.measured_by is 'Who read the calibration sheet last.';
comment on column label_printer.measured_at is 'When.';
comment on column label_printer.removed_by is 'Who took it off the list. Empty: it is offered.';
comment on column label_printer.removed_at is 'When it was taken off the list. Empty: it is offered.';

create table label_run (
  id uuid not null,
  stock varchar(40) not null,
  printer_id uuid,
  start_at integer not null,
  cutting_lines boolean not null,
  labels integer not null,
  made_by uuid not null,
  made_at timestamp(3) with time zone not null,
  undone_by uuid,
  undone_at timestamp(3) with time zone,
  constraint label_run_pk primary key (id),
  constraint label_run_start check (start_at >= 1),
  constraint label_run_labels check (labels >= 0),
  constraint label_run_printer_fk foreign key (printer_id) references label_printer (id),
  constraint label_run_made_by_fk foreign key (made_by) references member (id),
  constraint label_run_undone_by_fk foreign key (undone_by) references member (id)
);
create index label_run_made_by on label_run (made_by, made_at);

comment on table label_run is 'Labels made at once: printed, or written by hand. What they are for counts as labelled from then on.';
comment on column label_run.stock is 'On what: the id of a row of label-stock.csv or of label_stock, or by-hand where somebody wrote them.';
comment on column label_run.printer_id is 'The printer they were scaled for. Empty: none was measured.';
comment on column label_run.start_at is 'The first label used on the first sheet, counted from 1 along the rows.';
comment on column label_run.cutting_lines is 'Whether lines to cut along were printed.';
comment on column label_run.labels is 'How many labels in all; 0 where they were written by hand.';
comment on column label_run.undone_by is 'Who said that they did not come out. Empty: they did, as far as anybody said.';
comment on column label_run.undone_at is 'When that was said. Empty: it was not.';

create table label_print (
  run_id uuid not null,
  line integer not null,
  kind varchar(6) not null,
  subject_id uuid not null,
  purpose varchar(5) not null,
  copies integer not null,
  constraint label_print_pk primary key (run_id, line),
  constraint label_print_kind check (kind in ('rack', 'shelf', 'mat', 'sowing')),
  constraint label_print_purpose check (purpose in ('bag', 'tray', 'pot', 'place')),
  constraint label_print_copies check (copies >= 0),
  constraint label_print_run_fk foreign key (run_id) references label_run (id)
);
create index label_print_subject on label_print (subject_id);

comment on table label_print is 'What one label, or several alike, of a run are for.';
comment on column label_print.line is 'Its place in the run, from 0.';
comment on column label_print.kind is 'What is labelled: a rack, a shelf, a mat or a sowing.';
comment on column label_print.subject_id is 'Which of these.';
comment on column label_print.purpose is 'What it is stuck on: a bag, a tray, pots or a place.';
comment on column label_print.copies is 'How many alike; 0 where they were written by hand.';

-- A code was made when labels were shown to be printed: what had one counts as labelled, or every old tray would be without.
insert into label_run (id, stock, printer_id, start_at, cutting_lines, labels, made_by, made_at)
select subject_id, 'by-hand', null, 1, false, 0, made_by, made_at from short_code where kind = 'sowing';
insert into label_print (run_id, line, kind, subject_id, purpose, copies)
select subject_id, 0, 'sowing', subject_id, 'bag', 0 from short_code where kind = 'sowing';
insert into label_print (run_id, line, kind, subject_id, purpose, copies)
select subject_id, 1, 'sowing', subject_id, 'tray', 0 from short_code where kind = 'sowing';
