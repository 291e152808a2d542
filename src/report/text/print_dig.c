#include "report/text/print.h"
#include "report/words/words.h"
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
static void print_group(const struct report *report, const struct group *group)
{
	const struct dig *dig = &report->takeoff->earthwork.rows[group->members[0]];
	struct text line = TEXT_EMPTY;

	if (dig->region == NO_REGION)
		text_add(&line, "Fences");
	else
		word_group(&line, report, group, region_of);
	text_print(&line, ": %s, %s", purpose(dig->part), group->count > 1 ? "each " : "");
	word_area(&line, report, dig->area);
	text_add(&line, ", ");
	word_inches(&line, report, dig->depth);
	text_add(&line, " deep, ");
	word_volume(&line, report, earth_sum(&dig->bank));
	text_add(&line, " in the ground");
	page_paragraph(report->out, 0, 2, line.bytes);
	text_fini(&line);
}

static void print_groups(const struct report *report)
{
	const struct earthwork *work = &report->takeoff->earthwork;
	struct groups groups = groups_make(work->rows, work->count, sizeof *work->rows, compare_digs,
		NULL);

	for (int i = 0; i < groups.count; i++)
		print_group(report, &groups.list[i]);
	groups_fini(&groups);
}

/* bank under 0: there is none. */
static void sum_row(struct table *table, const struct report *report, const char *what, double bank,
	double loose)
{
	table_words(table, what);
	if (bank < 0)
		table_words(table, "");
	else
		show_volume(table_cell(table), bank, report->units);
	show_volume(table_cell(table), loose, report->units);
}

static void print_sums(const struct report *report)
{
	static const struct table_column columns[] = {
		{ "", COLUMN_LEFT }, { "In the ground", COLUMN_RIGHT }, { "Dug, loose", COLUMN_RIGHT },
	};
	const struct earthwork *work = &report->takeoff->earthwork;
	struct table table = table_start(columns, 3, 0);

	text_add(report->out, "\n");
	sum_row(&table, report, "Sod", work->bank.sod, work->loose.sod);
	sum_row(&table, report, "Topsoil", work->bank.topsoil, work->loose.topsoil);
	sum_row(&table, report, "Subsoil", work->bank.subsoil, work->loose.subsoil);
	sum_row(&table, report, "All", earth_sum(&work->bank), earth_sum(&work->loose));
	if (work->reused > 0)
		sum_row(&table, report, "Topsoil reused in beds", -1, work->reused);
	sum_row(&table, report, "Spoil to haul away", -1, work->spoil);
	table_print(&table, report->out);
}

static void word_allowed(struct text *line, const struct report *report, enum attribute a)
{
	const struct amount *amount = &block_effective(report->takeoff->allow, a)->as.amount;

	if (amount_quantity(amount->unit) == QUANTITY_VOLUME)
		word_volume(line, report, amount_si(amount));
	else
		word_weight(line, report, amount_si(amount));
}

/* " (6.0 cu ft or 300 lb)". */
static void word_load(struct text *line, const struct report *report, enum attribute volume,
	enum attribute weight)
{
	text_add(line, " (");
	word_allowed(line, report, volume);
	text_add(line, " or ");
	word_allowed(line, report, weight);
	text_add(line, ")");
}

/* "The spoil weighs about 2,770 lb: 10 barrows (6.0 cu ft or 300 lb), 2 pickup loads (1,500 lb) or 1
 * truck load (10.00 cu yd or 20,000 lb)." */
static void print_loads(const struct report *report)
{
	const struct earthwork *work = &report->takeoff->earthwork;
	struct text line = TEXT_EMPTY;

	text_add(&line, "The spoil weighs about ");
	word_weight(&line, report, work->spoil_weight);
	text_add(&line, ": ");
	word_count(&line, work->loads.barrow, "barrow", "barrows");
	word_load(&line, report, ALLOW_BARROW_VOLUME, ALLOW_BARROW_WEIGHT);
	text_add(&line, ", ");
	word_count(&line, work->loads.pickup, "pickup load", "pickup loads");
	text_add(&line, " (");
	word_allowed(&line, report, ALLOW_PICKUP_WEIGHT);
	text_add(&line, ") or ");
	word_count(&line, work->loads.truck, "truck load", "truck loads");
	word_load(&line, report, ALLOW_TRUCK_VOLUME, ALLOW_TRUCK_WEIGHT);
	text_add(&line, ". The smaller of volume and weight decides.");
	page_note(report->out, line.bytes);
	text_fini(&line);
}

static void print_cautions(const struct report *report)
{
	page_paragraph(report->out, 0, 2, "Have services marked before the first spade goes in, and dig "
		"by hand near the marks.");
	page_paragraph(report->out, 0, 2, report->units == UNITS_IMPERIAL ?
		"No one goes into a hole or trench deeper than 4 ft. Cover holes and trenches when "
		"you leave." :
		"No one goes into a hole or trench deeper than 1.2 m. Cover holes and trenches when "
		"you leave.");
	page_paragraph(report->out, 0, 2, "Fill a barrow only as far as you can handle it, and load no "
		"vehicle beyond the payload on its plate.");
}

void print_dig(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;

	if (takeoff->earthwork.count == 0)
		return;
	page_heading(report->out, takeoff->not_laid_count == 0 ? "Digging" : "Digging (INCOMPLETE)");
	print_cautions(report);
	text_add(report->out, "\n");
	print_groups(report);
	print_sums(report);
	print_loads(report);
	if (block_length(takeoff->allow, ALLOW_TOPSOIL) == 0)
		page_note(report->out, "No topsoil is counted: dig a test hole and set in the plot how "
			"deep it lies there. What beds take of it need not be bought.");
	page_note(report->out, takeoff->fencing_count == 0 ?
		"A wall's base reaches past both its faces, and stops where a path, a fixture or "
		"another wall has its base: no ground is counted twice. In the ground: as it lies; "
		"loose: with its swell." :
		"A wall's base reaches past both its faces, and stops where a path, a fixture or "
		"another wall has its base: no ground is counted twice but by post holes, which are "
		"counted from the ground's surface down. In the ground: as it lies; loose: with its "
		"swell.");
}
