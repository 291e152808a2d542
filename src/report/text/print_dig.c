#include "report/text/print.h"
#include "base/number.h"

/* Whether a wall stands deeper in the ground where that rises along it; NULL: it has no level. */
static bool is_on_fall(const struct takeoff *takeoff, const struct wall_level *wall)
{
	return takeoff->levelling.step > 0 && wall && wall->highest != wall->lowest;
}

/* "5 1/2 in deep, 10.2 cu ft"; where the plot has levels "5 1/2 in below finished ground, 10.2
 * cu ft"; of a wall on ground that falls "level, 7 in below the lowest finished ground, ...". */
static const char *depth_words(const struct report *report, const struct dig *dig)
{
	bool is_walls = dig->part == DIG_WALL || dig->part == DIG_INSIDE;
	const char *cut = word_volume(report, earth_sum(&dig->bank));
	const char *deep = word_inches(report, dig->depth);

	if (report->takeoff->levelling.step == 0 || dig->part == DIG_HOLES)
		return say(report, "%s deep, %s", deep, cut);
	if (is_walls && is_on_fall(report->takeoff,
		wall_level_of(&report->takeoff->wall_levels, dig->region)))
		return say(report, "level, %s below the lowest finished ground, %s", deep, cut);
	return dig->depth == 0 ? cut : say(report, "%s below finished ground, %s", deep, cut);
}

/* Of several fences the names of those in a group; each has its holes, the last rows of all. */
static const char *fences_words(const struct report *report, const struct group *group)
{
	const struct fences *fences = &report->takeoff->fences;
	int first = report->takeoff->earthwork.count - fences->count;
	struct text words = TEXT_EMPTY;

	if (fences->count == 1)
		return "Fences";
	for (int i = 0; i < group->count; i++)
		text_print(&words, "%s%s", i ? ", " : "",
			fences->list[group->members[i] - first].name);
	return say_text(report, &words);
}

/* What a group is of. */
static const char *whose_words(const struct report *report, const struct group *group)
{
	const struct dig *dig = &report->takeoff->earthwork.rows[group->members[0]];

	if (dig->region != NO_REGION)
		return group_words(report, &dig_table, report->takeoff->earthwork.rows, group);
	return dig->part == DIG_HOLES ? fences_words(report, group) : "Other ground";
}

/* "B1 and B2: wall and its base, each 22.3 sq ft, 5 1/2 in deep, 10.2 cu ft". */
static void print_groups(const struct report *report)
{
	const struct earthwork *work = &report->takeoff->earthwork;
	struct groups groups = rows_groups(&dig_table, work->rows, work->count);

	for (int i = 0; i < groups.count; i++) {
		const struct group *group = &groups.list[i];
		const struct dig *dig = &work->rows[group->members[0]];

		print_lines(report, 0, 2, "%s: %s, %s%s, %s", whose_words(report, group),
			word_heading(&dig_words[dig->part]), group->count > 1 ? "each " : "",
			word_area(report, dig->area), depth_words(report, dig));
	}
	groups_fini(&groups);
}

/* All in the unit of the sum, so that they can be added up as they are read. */
static const char *volume(const struct report *report, double cubic_metres)
{
	return tied(report, plain_volume_like(report, cubic_metres,
		report->takeoff->earthwork.loose_all));
}

/* "subsoil 1.74 cu yd, loose 2.18 cu yd". */
static const char *kinds_words(const struct report *report)
{
	const struct earthwork *work = &report->takeoff->earthwork;
	const struct { const char *what; double bank, loose; } kinds[] = {
		{ "sod", work->bank.sod, work->loose.sod },
		{ "topsoil", work->bank.topsoil, work->loose.topsoil },
		{ "subsoil", work->bank.subsoil, work->loose.subsoil },
	};
	struct text words = TEXT_EMPTY;

	for (size_t i = 0; i < sizeof kinds / sizeof *kinds; i++)
		if (kinds[i].bank > 0)
			text_print(&words, "%s%s %s, loose %s", words.length ? "; " : "",
				kinds[i].what, volume(report, kinds[i].bank),
				volume(report, kinds[i].loose));
	return say_text(report, &words);
}

static const char *back_words(const struct report *report)
{
	const struct earthwork *work = &report->takeoff->earthwork;
	struct text words = TEXT_EMPTY;

	if (work->backfill_loose > 0)
		text_print(&words, " Put back outside walls and tamped: %s, loose %s.",
			volume(report, work->backfill), volume(report, work->backfill_loose));
	if (work->fill_loose > 0)
		text_print(&words, " Filled in low ground: %s, loose %s.",
			volume(report, work->fill - work->fill_short),
			volume(report, work->fill_loose));
	if (work->reused > 0)
		text_print(&words, " Topsoil reused: loose %s.", volume(report, work->reused));
	return say_text(report, &words);
}

static void print_sums(const struct report *report)
{
	const struct earthwork *work = &report->takeoff->earthwork;

	print_note(report, "In all %s in the ground, loose %s: %s.%s Spoil to haul away: loose %s.",
		volume(report, work->bank_all), volume(report, work->loose_all),
		kinds_words(report), back_words(report), volume(report, work->spoil));
}

/* How deep the ground is dug that one kind of thing stands on. */
struct formation {
	enum dig_part part;
	const char *what;
	nm least, most;
};

/* Fills in the depths; false: there is none of that kind. */
static bool find_formation(struct formation *formation, const struct earthwork *work)
{
	bool is_found = false;

	for (int i = 0; i < work->count; i++) {
		const struct dig *dig = &work->rows[i];

		if (dig->part != formation->part)
			continue;
		formation->least = is_found ? nm_least(formation->least, dig->depth) : dig->depth;
		formation->most = nm_most(formation->most, dig->depth);
		is_found = true;
	}
	return is_found;
}

static void add_back(struct text *words, const struct report *report)
{
	const struct earthwork *work = &report->takeoff->earthwork;

	if (work->backfill_loose > 0)
		text_add_sentence(words, "What is dug outside a wall and has no path, turf or lawn "
			"soil over it is put back and tamped, subsoil first: keep that near.");
	if (work->loosened > 0)
		text_add_sentence(words, "%s of ground within beds is only loosened%s: it is in no "
			"volume.", word_area(report, work->loosened),
			earthwork_sod_kept(work, report->takeoff->allow) > 0 ?
			", and its sod laid back grass down" : "");
}

/* "walls 5 1/2 in to 6 in". */
static const char *depths_words(const struct report *report, const struct formation *formation)
{
	const char *shown = word_inches(report, formation->least);

	return formation->least == formation->most ? say(report, "%s %s", formation->what, shown) :
		say(report, "%s %s to %s", formation->what, shown,
			word_inches(report, formation->most));
}

static bool is_any_on_fall(const struct takeoff *takeoff)
{
	for (int i = 0; i < takeoff->wall_levels.count; i++)
		if (is_on_fall(takeoff, &takeoff->wall_levels.list[i]))
			return true;
	return false;
}

/* Whether all that stands on tamped ground stands at one depth. */
static void print_formation(const struct report *report)
{
	bool is_fall = is_any_on_fall(report->takeoff);
	struct formation kinds[] = { { DIG_WALL, is_fall ? "walls, where it is lowest," :
		"walls", 0, 0 }, { DIG_PATH, "paths", 0, 0 }, { DIG_PAD, "fixtures", 0, 0 } };
	struct text names = TEXT_EMPTY, depths = TEXT_EMPTY;
	nm shallow = 0, deep = 0;
	int count = 0;

	for (size_t i = 0; i < sizeof kinds / sizeof *kinds; i++) {
		if (!find_formation(&kinds[i], &report->takeoff->earthwork))
			continue;
		shallow = count == 0 ? kinds[i].least : nm_least(shallow, kinds[i].least);
		deep = nm_most(deep, kinds[i].most);
		text_print(&names, "%s%s", count == 0 ? "" : ", ", kinds[i].what);
		text_print(&depths, "%s%s", count == 0 ? "" : ", ",
			depths_words(report, &kinds[i]));
		count++;
	}
	if (count > 1 && shallow == deep && !is_fall)
		print_lines(report, 0, 0, "One level: %s, all dug %s below finished ground.",
			names.bytes, word_inches(report, shallow));
	else if (count > 1)
		print_lines(report, 0, 0, "The dig is stepped; below finished ground: %s.",
			depths.bytes);
	text_fini(&names);
	text_fini(&depths);
}

static void print_loads(const struct report *report)
{
	const struct earthwork *work = &report->takeoff->earthwork;

	print_lines(report, 0, 0, "The spoil weighs about %s: %s (%s or %s), %s (%s) or %s (%s or "
		"%s).",
		word_weight(report, work->spoil_weight),
		word_count(report, work->loads.barrow, "barrow", "barrows"),
		allowed_words(report, ALLOW_BARROW_VOLUME),
		allowed_words(report, ALLOW_BARROW_WEIGHT),
		word_count(report, work->loads.pickup, "pickup load", "pickup loads"),
		allowed_words(report, ALLOW_PICKUP_WEIGHT),
		word_count(report, work->loads.truck, "truck load", "truck loads"),
		allowed_words(report, ALLOW_TRUCK_VOLUME),
		allowed_words(report, ALLOW_TRUCK_WEIGHT));
}

void print_dig(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	struct text words = TEXT_EMPTY;

	if (takeoff->earthwork.count == 0)
		return;
	print_groups(report);
	print_sums(report);
	print_loads(report);
	print_formation(report);
	add_back(&words, report);
	if (block_length(takeoff->allow, ALLOW_TOPSOIL) == 0)
		text_add_sentence(&words, "No topsoil is counted: dig a test hole and set in the "
			"plot how deep it lies. What beds and lawns take of it need not be "
			"bought.");
	if (takeoff->work.facts & FACT(WALLS))
		text_add_sentence(&words, "A wall's base reaches past both its faces, and stops "
			"where other base begins.");
	text_add_sentence(&words, "No ground is counted twice%s. In the ground: as it lies; "
		"loose: swollen as it is dug. Where each of these is: the plan (--only front)%s.",
		takeoff->fences.count == 0 ? "" : ", except under post holes",
		takeoff->fences.count == 0 ? "" :
		"; how wide holes are, and where: the fence (--only fence)");
	print_explained(report, "%s", words.bytes);
	text_fini(&words);
}
