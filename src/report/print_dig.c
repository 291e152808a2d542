#include "report/print.h"
#include "report/words.h"
#include "base/show.h"

static int compare_amounts(double a, double b)
{
	return (a > b) - (a < b);
}

/* Alike: the same is dug for, as deep, over as much ground. */
static int compare_digs(const void *a, const void *b, const void *context)
{
	const struct dig *one = a, *other = b;
	int order = (int)one->part - (int)other->part;

	(void)context;
	order = order ? order : compare_amounts((double)one->depth, (double)other->depth);
	return order ? order : compare_amounts(one->area, other->area);
}

static int region_of(const struct takeoff *takeoff, int dig)
{
	return takeoff->earthwork.rows[dig].region;
}

/* What for, as people say it. */
static const char *purpose(enum dig_part part)
{
	static const char *const words[] = {
		[DIG_PATH] = "path", [DIG_WALL] = "wall and its base", [DIG_INSIDE] = "inside of bed",
		[DIG_PAD] = "fixture", [DIG_LAWN] = "lawn", [DIG_BED] = "soil replaced",
		[DIG_HOLES] = "post holes",
	};

	return words[part];
}

/* "B1 and B2: wall and its base, each 22.3 sq ft, 5 1/2 in deep, 10.2 cu ft in the ground". */
static void print_group(const struct sheet *sheet, const struct group *group)
{
	const struct dig *dig = &sheet->takeoff->earthwork.rows[group->members[0]];
	struct text line = TEXT_EMPTY;

	if (dig->region == NO_REGION)
		text_add(&line, "Fences");
	else
		word_group(&line, sheet, group, region_of);
	text_print(&line, ": %s, %s", purpose(dig->part), group->count > 1 ? "each " : "");
	word_area(&line, sheet, dig->area);
	text_add(&line, ", ");
	word_inches(&line, sheet, dig->depth);
	text_add(&line, " deep, ");
	word_volume(&line, sheet, earth_sum(&dig->bank));
	text_add(&line, " in the ground");
	page_paragraph(sheet->out, 0, 2, line.bytes);
	text_fini(&line);
}

static void print_groups(const struct sheet *sheet)
{
	const struct earthwork *work = &sheet->takeoff->earthwork;
	struct groups groups = groups_make(work->rows, work->count, sizeof *work->rows, compare_digs,
		NULL);

	for (int i = 0; i < groups.count; i++)
		print_group(sheet, &groups.list[i]);
	groups_fini(&groups);
}

/* bank under 0: there is none. */
static void sum_row(struct table *table, const struct sheet *sheet, const char *what, double bank,
	double loose)
{
	table_words(table, what);
	if (bank < 0)
		table_words(table, "");
	else
		show_volume(table_cell(table), bank, sheet->units);
	show_volume(table_cell(table), loose, sheet->units);
}

static void print_sums(const struct sheet *sheet)
{
	static const struct table_column columns[] = {
		{ "", COLUMN_LEFT }, { "In the ground", COLUMN_RIGHT }, { "Dug, loose", COLUMN_RIGHT },
	};
	const struct earthwork *work = &sheet->takeoff->earthwork;
	struct table table = table_start(columns, 3, 0);

	text_add(sheet->out, "\n");
	sum_row(&table, sheet, "Sod", work->bank.sod, work->loose.sod);
	sum_row(&table, sheet, "Topsoil", work->bank.topsoil, work->loose.topsoil);
	sum_row(&table, sheet, "Subsoil", work->bank.subsoil, work->loose.subsoil);
	sum_row(&table, sheet, "All", earth_sum(&work->bank), earth_sum(&work->loose));
	if (work->reused > 0)
		sum_row(&table, sheet, "Topsoil reused in beds", -1, work->reused);
	sum_row(&table, sheet, "Spoil to haul away", -1, work->spoil);
	table_print(&table, sheet->out);
}

static void word_allowed(struct text *line, const struct sheet *sheet, enum attribute a)
{
	const struct amount *amount = &block_effective(sheet->takeoff->allow, a)->as.amount;

	if (amount_quantity(amount->unit) == QUANTITY_VOLUME)
		word_volume(line, sheet, amount_si(amount));
	else
		word_weight(line, sheet, amount_si(amount));
}

/* " (6.0 cu ft or 300 lb)". */
static void word_load(struct text *line, const struct sheet *sheet, enum attribute volume,
	enum attribute weight)
{
	text_add(line, " (");
	word_allowed(line, sheet, volume);
	text_add(line, " or ");
	word_allowed(line, sheet, weight);
	text_add(line, ")");
}

/* "The spoil weighs about 2,770 lb: 10 barrows (6.0 cu ft or 300 lb), 2 pickup loads (1,500 lb) or 1
 * truck load (10.00 cu yd or 20,000 lb)." */
static void print_loads(const struct sheet *sheet)
{
	const struct earthwork *work = &sheet->takeoff->earthwork;
	struct text line = TEXT_EMPTY;

	text_add(&line, "The spoil weighs about ");
	word_weight(&line, sheet, work->spoil_weight);
	text_add(&line, ": ");
	word_count(&line, work->loads.barrow, "barrow", "barrows");
	word_load(&line, sheet, ALLOW_BARROW_VOLUME, ALLOW_BARROW_WEIGHT);
	text_add(&line, ", ");
	word_count(&line, work->loads.pickup, "pickup load", "pickup loads");
	text_add(&line, " (");
	word_allowed(&line, sheet, ALLOW_PICKUP_WEIGHT);
	text_add(&line, ") or ");
	word_count(&line, work->loads.truck, "truck load", "truck loads");
	word_load(&line, sheet, ALLOW_TRUCK_VOLUME, ALLOW_TRUCK_WEIGHT);
	text_add(&line, ". The smaller of volume and weight decides.");
	page_note(sheet->out, line.bytes);
	text_fini(&line);
}

static void print_cautions(const struct sheet *sheet)
{
	page_paragraph(sheet->out, 0, 2, "Have services marked before the first spade goes in, and dig "
		"by hand near the marks.");
	page_paragraph(sheet->out, 0, 2, sheet->units == UNITS_IMPERIAL ?
		"No one goes into a hole or trench deeper than 4 ft. Cover holes and trenches when "
		"you leave." :
		"No one goes into a hole or trench deeper than 1.2 m. Cover holes and trenches when "
		"you leave.");
	page_paragraph(sheet->out, 0, 2, "Fill a barrow only as far as you can handle it, and load no "
		"vehicle beyond the payload on its plate.");
}

void print_dig(const struct sheet *sheet)
{
	const struct takeoff *takeoff = sheet->takeoff;

	if (takeoff->earthwork.count == 0)
		return;
	page_heading(sheet->out, takeoff->not_laid_count == 0 ? "Digging" : "Digging (INCOMPLETE)");
	print_cautions(sheet);
	text_add(sheet->out, "\n");
	print_groups(sheet);
	print_sums(sheet);
	print_loads(sheet);
	if (block_length(takeoff->allow, ALLOW_TOPSOIL) == 0)
		page_note(sheet->out, "No topsoil is counted: dig a test hole and set in the plot how "
			"deep it lies there. What beds take of it need not be bought.");
	page_note(sheet->out, takeoff->fencing_count == 0 ?
		"A wall's base reaches past both its faces, and stops where a path, a fixture or "
		"another wall has its base: no ground is counted twice. In the ground: as it lies; "
		"loose: with its swell." :
		"A wall's base reaches past both its faces, and stops where a path, a fixture or "
		"another wall has its base: no ground is counted twice but by post holes, which are "
		"counted from the ground's surface down. In the ground: as it lies; loose: with its "
		"swell.");
}
